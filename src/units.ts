import type { Unit } from "./quantities.ts";

/**
 * SI to the units shown, and units typed to SI: here and nowhere else.
 * Exact definitions: inch 25.4 mm, foot 0.3048 m, mile 1,609.344 m, US gallon 231 cubic inches,
 * acre 43,560 square feet, thermochemical calorie 4.184 J.
 * @source NIST Special Publication 811, appendix B (from memory)
 */
export interface Scale {
  /** SI = shown × perShown + offset. */
  perShown: number;
  offset?: number;
}

const gallon_L = 3.785411784;
const foot_m = 0.3048;
const cubicFoot_L = 28.316846592;

const length = { m: 1, cm: 0.01, mm: 0.001, km: 1000, ft: foot_m, in: 0.0254, yd: 0.9144, mi: 1609.344 };
const over = (unit_m: number) =>
  Object.fromEntries(Object.entries(length).map(([name, m]) => [name, { perShown: m / unit_m }]));

/** For each SI unit of quantities, the units that people may type for it. */
const typed: Partial<Record<Unit, Readonly<Record<string, Scale>>>> = {
  m: over(1),
  mm: { mm: { perShown: 1 }, cm: { perShown: 10 }, in: { perShown: 25.4 }, ft: { perShown: 304.8 } },
  "m²": {
    "m²": { perShown: 1 },
    ha: { perShown: 10_000 },
    "ft²": { perShown: foot_m ** 2 },
    "yd²": { perShown: 0.9144 ** 2 },
    acre: { perShown: 43_560 * foot_m ** 2 },
  },
  L: volume(1),
  "L a day": volume(1),
  kL: volume(1000),
  "L/min": {
    "L/min": { perShown: 1 },
    "L/h": { perShown: 1 / 60 },
    "L/s": { perShown: 60 },
    "m³/h": { perShown: 1000 / 60 },
    "gal/min": { perShown: gallon_L },
    "gal/h": { perShown: gallon_L / 60 },
  },
  "mm/h": { "mm/h": { perShown: 1 }, "in/h": { perShown: 25.4 } },
  "°C": {
    "°C": { perShown: 1 },
    "°F": { perShown: 5 / 9, offset: -160 / 9 },
    K: { perShown: 1, offset: -273.15 },
  },
  "m/s": {
    "m/s": { perShown: 1 },
    "km/h": { perShown: 1 / 3.6 },
    "km/d": { perShown: 1 / 86.4 },
    mph: { perShown: 0.44704 },
    kn: { perShown: 1852 / 3600 },
    "ft/s": { perShown: foot_m },
  },
  "MJ/m²": {
    "MJ/m²": { perShown: 1 },
    "W/m²": { perShown: 0.0864 },
    "kWh/m²": { perShown: 3.6 },
    "J/cm²": { perShown: 0.01 },
    langley: { perShown: 0.04184 },
  },
  kPa: {
    kPa: { perShown: 1 },
    hPa: { perShown: 0.1 },
    mbar: { perShown: 0.1 },
    mmHg: { perShown: 0.133322387415 },
  },
  h: { h: { perShown: 1 }, min: { perShown: 1 / 60 } },
  min: { min: { perShown: 1 }, h: { perShown: 60 }, s: { perShown: 1 / 60 } },
  share: { share: { perShown: 1 }, "%": { perShown: 0.01 } },
  "%": { "%": { perShown: 1 }, share: { perShown: 100 } },
  // a price is per volume: the dearer the larger the volume
  "money/kL": {
    "money/kL": { perShown: 1 },
    "money/m³": { perShown: 1 },
    "money/1000 gal": { perShown: 1 / gallon_L },
    "money/100 ft³": { perShown: 10 / cubicFoot_L },
  },
};

function volume(unit_L: number): Record<string, Scale> {
  const litres = {
    mL: 0.001,
    L: 1,
    kL: 1000,
    ML: 1_000_000,
    "m³": 1000,
    m3: 1000,
    gal: gallon_L,
    "1000 gal": 1000 * gallon_L,
    "1000gal": 1000 * gallon_L,
    "ft³": cubicFoot_L,
    ft3: cubicFoot_L,
    "100 ft³": 100 * cubicFoot_L,
    "100ft3": 100 * cubicFoot_L,
  };
  return Object.fromEntries(Object.entries(litres).map(([name, L]) => [name, { perShown: L / unit_L }]));
}

/** The units that may be typed for a quantity in this SI unit, itself first. */
export function unitsFor(si: Unit): readonly string[] {
  const names = Object.keys(typed[si] ?? {});
  return [si, ...names.filter((name) => name !== si)];
}

/** A figure in a unit that people use, in SI; undefined where the unit is none of the quantity's. */
export function toSI(shown: number, unit: string, si: Unit): number | undefined {
  const scale = scaleOf(unit, si);
  return scale && shown * scale.perShown + (scale.offset ?? 0);
}

/** A figure in SI in a unit that people use; undefined where the unit is none of the quantity's. */
export function fromSI(value: number, si: Unit, unit: string): number | undefined {
  const scale = scaleOf(unit, si);
  return scale && (value - (scale.offset ?? 0)) / scale.perShown;
}

function scaleOf(unit: string, si: Unit): Scale | undefined {
  if (unit === si) return { perShown: 1 };
  const scales = typed[si];
  return scales && Object.hasOwn(scales, unit) ? scales[unit] : undefined;
}

export type UnitSystem = "metric" | "us";

/** The US customary unit that an SI unit is shown in; SI units not named here stay. */
const customary: Partial<Record<Unit, string>> = {
  m: "ft",
  mm: "in",
  "m²": "ft²",
  L: "gal",
  "L a day": "gal",
  kL: "1000 gal",
  "L/min": "gal/min",
  "mm/h": "in/h",
  "°C": "°F",
  "m/s": "mph",
  "money/kL": "money/1000 gal",
};

/** The unit that a system shows an SI unit in. */
export function shownUnit(si: Unit, system: UnitSystem): string {
  return system === "us" ? (customary[si] ?? si) : si;
}

/** A figure in SI as a system shows it. */
export function shown(value: number, si: Unit, system: UnitSystem): { value: number; unit: string } {
  const unit = shownUnit(si, system);
  return { value: fromSI(value, si, unit) ?? value, unit };
}
