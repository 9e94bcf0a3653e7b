import type { WeatherColumn } from "../../engine/weather/record.ts";

/** A unit that a file may use, and the way from it to the record's: value × factor + offset. */
export interface SourceUnit {
  id: string;
  factor: number;
  offset: number;
  /** Whether values in it are whole numbers by nature (tenths, as station archives write them). */
  whole: boolean;
  system: "metric" | "us" | null;
  /** Other ways to write it, in the form that `plain` gives. */
  names: readonly string[];
  /** How common the unit is in daily files, before any value is seen: our judgement. */
  prior: number;
}

export type Quantity = "depth" | "temperature" | "pressure" | "humidity" | "speed" | "radiation" | "time";

export const quantityOf: Readonly<Record<WeatherColumn, Quantity>> = {
  rain_mm: "depth",
  et0_mm: "depth",
  tmin_c: "temperature",
  tmax_c: "temperature",
  tdew_c: "temperature",
  vp_kpa: "pressure",
  rhmin_pct: "humidity",
  rhmax_pct: "humidity",
  rhmean_pct: "humidity",
  wind_ms: "speed",
  solar_MJ_m2: "radiation",
  sun_h: "time",
};

type Row = [
  id: string,
  factor: number,
  offset: number,
  prior: number,
  system: "metric" | "us" | null,
  names: string,
];

/** The first unit of each quantity is the record's own. */
const rows: Readonly<Record<Quantity, readonly Row[]>> = {
  depth: [
    ["mm", 1, 0, 0.8, "metric", "millimetre millimetres millimeter millimeters l/m2 kg/m2"],
    ["inch", 25.4, 0, 0.15, "us", 'in inches "'],
    ["cm", 10, 0, 0.02, "metric", "centimetre centimetres centimeter centimeters"],
    ["0.1mm", 0.1, 0, 0.05, "metric", "tenth-mm tenthmm tenthsmm tenthsofmm tenthsofamm 1/10mm mm/10"],
  ],
  temperature: [
    ["C", 1, 0, 0.7, "metric", "celsius centigrade ℃"],
    ["F", 5 / 9, -160 / 9, 0.27, "us", "fahrenheit ℉"],
    ["K", 1, -273.15, 0.02, "metric", "kelvin"],
    [
      "0.1C",
      0.1,
      0,
      0.05,
      "metric",
      "tenth-c tenthc tenthsc tenthsofc tenthscelsius tenthsofcelsius 1/10c c/10",
    ],
  ],
  pressure: [
    ["kPa", 1, 0, 0.45, "metric", "kilopascal kilopascals"],
    ["hPa", 0.1, 0, 0.5, "metric", "mbar mb millibar millibars hectopascal hectopascals"],
    ["mmHg", 0.133322, 0, 0.05, null, "torr"],
  ],
  humidity: [
    ["%", 1, 0, 0.95, null, "pct percent percentage %rh"],
    ["share", 100, 0, 0.05, null, "fraction ratio 0-1 1"],
  ],
  speed: [
    ["m/s", 1, 0, 0.42, "metric", "ms ms-1 m/sec mps metres/second meters/second"],
    ["km/h", 1 / 3.6, 0, 0.3, "metric", "kmh kmh-1 kph km/hr kmph kilometres/hour kilometers/hour"],
    ["mph", 0.44704, 0, 0.15, "us", "mi/h mi/hr miles/hour"],
    ["knots", 1852 / 3600, 0, 0.12, null, "knot kt kts kn"],
    [
      "0.1m/s",
      0.1,
      0,
      0.04,
      "metric",
      "tenth-m/s tenthsm/s tenthsofm/s tenthsofmeters/second 1/10m/s m/s/10",
    ],
  ],
  radiation: [
    ["MJ/m2", 1, 0, 0.5, "metric", "mjm-2 mjm2 mj/m*m mj/sqm megajoules/squaremetre"],
    ["W/m2", 0.0864, 0, 0.25, "metric", "wm-2 wm2 w/m*m w/sqm watt/m2 watts/m2"],
    ["langley", 0.04184, 0, 0.06, "us", "langleys ly cal/cm2 calcm-2"],
    ["kWh/m2", 3.6, 0, 0.12, "metric", "kwhm-2 kwhm2 kwh/m*m kw-hr/m2 kw-hr/m^2 kwh/sqm"],
    ["J/cm2", 0.01, 0, 0.06, "metric", "jcm-2 jcm2"],
    ["kJ/m2", 0.001, 0, 0.03, "metric", "kjm-2 kjm2"],
    ["Wh/m2", 0.0036, 0, 0.04, "metric", "whm-2 whm2"],
    ["J/m2", 1e-6, 0, 0.02, "metric", "jm-2 jm2"],
  ],
  time: [
    ["h", 1, 0, 0.7, null, "hr hrs hour hours"],
    ["min", 1 / 60, 0, 0.2, null, "mins minute minutes"],
    ["s", 1 / 3600, 0, 0.05, null, "sec secs second seconds"],
    ["0.1h", 0.1, 0, 0.05, null, "tenth-h tenthsh tenthsofh tenthsofhours 1/10h h/10"],
  ],
};

const table = new Map(
  (Object.entries(rows) as [Quantity, readonly Row[]][]).map(([quantity, units]) => [
    quantity,
    units.map(([id, factor, offset, prior, system, names]): SourceUnit => {
      const whole = id.startsWith("0.1");
      return { id, factor, offset, prior, system, whole, names: [plain(id), ...names.split(" ")] };
    }),
  ]),
);

/** The units that a column of the record may come in, the record's own first. */
export function unitsOf(column: WeatherColumn): readonly SourceUnit[] {
  return table.get(quantityOf[column])!;
}

/** The unit that a text names for a column; null where it names none. */
export function unitNamed(column: WeatherColumn, text: string): SourceUnit | null {
  const wanted = plain(text);
  return wanted === "" ? null : (unitsOf(column).find((unit) => unit.names.includes(wanted)) ?? null);
}

/** A unit's text without what varies in writing it: case, degree signs, raised figures, spaces, "per day". */
export function plain(text: string): string {
  return text
    .toLowerCase()
    .replaceAll("²", "2")
    .replaceAll("⁻", "-")
    .replaceAll("¹", "1")
    .replaceAll("·", "")
    .replace(/\bper\b/g, "/")
    .replace(/degrees?|deg\.?|[°º^_\s]|\*\*/g, "")
    .replace(/\/(?:day|dy|d|24h)$|(?:day|d)-1$/, "")
    .replace(/\.$/, "");
}
