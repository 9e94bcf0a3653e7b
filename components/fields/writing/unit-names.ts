/** Other ways in which people write units, in small letters, by the one that units.ts knows. */
const spellings: Readonly<Record<string, string>> = {
  "m²": "m2 m^2 sqm sq.m qm metres² meters²",
  "ft²": "ft2 ft^2 sqft sq.ft sf feet² feet2",
  "yd²": "yd2 yd^2 sqyd sq.yd",
  ha: "hectare hectares",
  acre: "acres ac",
  m: "metre metres meter meters",
  cm: "centimetre centimetres centimeter centimeters",
  mm: "millimetre millimetres millimeter millimeters",
  ft: "foot feet ' ′",
  in: 'inch inches " ″',
  yd: "yard yards",
  km: "kilometre kilometres kilometer kilometers",
  mi: "mile miles",
  L: "l litre litres liter liters ltr",
  kL: "kl kilolitre kilolitres kiloliter kiloliters m3 m³ m^3 cubicmetres cubicmeters",
  "m³": "m3 m^3 cubicmetre cubicmetres cubicmeter cubicmeters",
  gal: "gallon gallons usgal",
  "1000 gal": "1000gal kgal",
  "ft³": "ft3 ft^3 cuft cu.ft cf",
  "100 ft³": "100ft3 ccf hcf",
  "L/min": "l/min lpm l/minute lperminute litresaminute litresperminute lmin l/m",
  "L/s": "l/s lps l/sec",
  "L/h": "l/h lph l/hr l/hour",
  "m³/h": "m3/h m^3/h m3/hr m³/hr",
  "gal/min": "gpm gal/minute gallons/min gallonsaminute gallonsperminute",
  "gal/h": "gph gal/hr gal/hour",
  "mm/h": "mm/hr mm/hour mmh",
  "in/h": "in/hr in/hour inch/h inches/h",
  "°C": "c degc celsius ℃",
  "°F": "f degf fahrenheit ℉",
  "°": "deg degree degrees",
  min: "mins minute minutes",
  h: "hr hrs hour hours",
  s: "sec secs second seconds",
  "%": "percent pct",
};

/** The unit meant among those known for a field: as it is written there, or in another common way. */
export function unitMeant(typed: string, units: readonly string[]): string | null {
  const exact = units.find((unit) => unit === typed);
  if (exact !== undefined) return exact;
  const plain = typed.replace(/[\s.]+/g, "").toLowerCase();
  return (
    units.find((unit) => unit.replace(/\s+/g, "").toLowerCase() === plain) ??
    units.find((unit) =>
      (spellings[unit] ?? "").split(" ").some((one) => one.replace(/\./g, "") === plain),
    ) ??
    null
  );
}
