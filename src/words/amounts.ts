import { fromSI, type UnitSystem } from "../units.ts";
import { rough } from "./format.ts";

const whole = new Intl.NumberFormat("en", { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat("en", { maximumFractionDigits: 1 });
const hundredth = new Intl.NumberFormat("en", { maximumFractionDigits: 2 });

/** Amounts in sentences and tables that people sign: no finer than such a figure is known, in their units. */
export interface Amounts {
  /** A year's water with its unit: 383 kL, 4.2 kL, 101,000 gallons. */
  water(kL: number): string;
  /** The same without its unit. */
  bare(kL: number): string;
  unit: string;
  /** Litres with their unit: 5,000 L, 1,321 gal. */
  size(litres: number): string;
  area(m2: number): string;
  /** A year's rain, without its unit. */
  depth(mm: number): string;
  depthUnit: string;
  /** A layer of mulch: 75 mm, 3 in. */
  layer(mm: number): string;
  /** Depth to a fraction of a millimetre. */
  fineDepth(mm: number): string;
  /** What water is bought by, as words have it after "cost of". */
  volume: string;
  /** A price of a kL as a price of that volume. */
  perVolume(perKL: number): number;
}

export function amountsIn(units: UnitSystem): Amounts {
  return units === "us" ? customary : metric;
}

const oneKL = (kL: number) => (Math.abs(kL) < 20 ? tenth : whole).format(kL === 0 ? 0 : kL);

const metric: Amounts = {
  water: (kL) => `${oneKL(kL)} kL`,
  bare: oneKL,
  unit: "kL",
  size: (litres) => `${whole.format(litres)} L`,
  area: (m2) => `${whole.format(m2)} m²`,
  depth: (mm) => whole.format(mm),
  depthUnit: "mm",
  layer: (mm) => `${whole.format(mm)} mm`,
  fineDepth: (mm) => `${tenth.format(mm)} mm`,
  volume: "a kL",
  perVolume: (perKL) => perKL,
};

const gallons = (kL: number) => whole.format(rough(fromSI(kL, "kL", "gal")!));
const inches = (mm: number) => fromSI(mm, "mm", "in")!;

const customary: Amounts = {
  water: (kL) => `${gallons(kL)} gallons`,
  bare: gallons,
  unit: "gal",
  size: (litres) => `${whole.format(fromSI(litres, "L", "gal")!)} gal`,
  area: (m2) => `${whole.format(rough(fromSI(m2, "m²", "ft²")!))} ft²`,
  depth: (mm) => tenth.format(inches(mm)),
  depthUnit: "inches",
  layer: (mm) => `${whole.format(inches(mm))} in`,
  fineDepth: (mm) => `${hundredth.format(inches(mm))} in`,
  volume: "1,000 gallons",
  perVolume: (perKL) => fromSI(perKL, "money/kL", "money/1000 gal")!,
};
