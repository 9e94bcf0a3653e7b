import { fromSI, type UnitSystem } from "../../units.ts";
import { count } from "./count.ts";

/** Amounts of a round as a keeper reads them: whole litres and millimetres, or gallons and inches. */
export interface RoundAmounts {
  litres(L: number): string;
  litresEach(L: number): string;
  depth(mm: number): string;
  /** Two depths with their unit once; one where they read alike. */
  depths(low_mm: number, high_mm: number, between: string): string;
  /** How deep water goes into the soil. */
  deep(m: number): string;
  can: string;
  rainUnit: string;
  volumeWord: string;
  volumeUnit: string;
  lengthUnit: string;
}

const tenths = new Intl.NumberFormat("en", { maximumFractionDigits: 1 });
const hundredths = new Intl.NumberFormat("en", { maximumFractionDigits: 2 });

const metric: RoundAmounts = {
  litres: (L) => `${count(Math.round(L))} L`,
  litresEach: (L) => `${tenths.format(L)} L`,
  depth: (mm) => `${count(Math.round(mm))} mm`,
  depths: (low, high, between) => joined(count(Math.round(low)), count(Math.round(high)), between, "mm"),
  deep: (m) => `${count(Math.round(100 * m))} cm`,
  can: "10 L",
  rainUnit: "mm",
  volumeWord: "litres",
  volumeUnit: "L",
  lengthUnit: "cm",
};

const gallons = (L: number) => fromSI(L, "L", "gal")!;
const inches = (mm: number) => hundredths.format(fromSI(mm, "mm", "in")!);
const gallonWords = (L: number) =>
  `${gallons(L) < 9.95 ? tenths.format(gallons(L)) : count(Math.round(gallons(L)))} gal`;

const us: RoundAmounts = {
  litres: gallonWords,
  litresEach: (L) => `${tenths.format(gallons(L))} gal`,
  depth: (mm) => `${inches(mm)} in`,
  depths: (low, high, between) => joined(inches(low), inches(high), between, "in"),
  deep: (m) => `${count(Math.round(fromSI(m, "m", "in")!))} in`,
  can: "2.6 gal",
  rainUnit: "in",
  volumeWord: "gallons",
  volumeUnit: "gal",
  lengthUnit: "in",
};

function joined(low: string, high: string, between: string, unit: string): string {
  return low === high ? `${low} ${unit}` : `${low}${between}${high} ${unit}`;
}

export function roundAmounts(units: UnitSystem): RoundAmounts {
  return units === "us" ? us : metric;
}
