import { fromSI, shownUnit, type UnitSystem } from "../../src/units.ts";
import { entryWords, gardenEntry, roofEntry, tankEntry, todayEntry } from "../../src/words/en/first.ts";
import { readQuantity, unitsOf } from "../fields/writing/quantity.ts";

/** The figures that a first answer asks for, each with its unit and bounds. */
const sizes = {
  garden: { unit: "m²", low: 0.1, high: 50_000, label: gardenEntry.label, wanted: gardenEntry.wanted },
  roof: {
    unit: "m²",
    low: 0.1,
    high: 100_000,
    mayBeZero: true,
    label: roofEntry.label,
    wanted: roofEntry.wanted,
  },
  tank: {
    unit: "L",
    low: 0,
    high: 10_000_000,
    label: tankEntry.label,
    wanted: (_: string, high: string) => tankEntry.wanted(high),
  },
  minutes: {
    unit: "min",
    low: 0,
    high: 10_080,
    label: todayEntry.minutes,
    wanted: () => todayEntry.minutesWanted,
  },
  summer: {
    unit: "kL",
    low: 0,
    high: 50_000,
    label: todayEntry.summer,
    wanted: (_: string, high: string) => todayEntry.billWanted(high),
  },
  winter: {
    unit: "kL",
    low: 0,
    high: 50_000,
    label: todayEntry.winter,
    wanted: (_: string, high: string) => todayEntry.billWanted(high),
  },
  months: { unit: "", low: 1, high: 12, label: todayEntry.months, wanted: () => todayEntry.monthsWanted },
} as const;

export type SizeName = keyof typeof sizes;

/** The unit that stands behind a field. */
export function sizeUnit(name: SizeName, system: UnitSystem): string {
  const { unit } = sizes[name];
  return unit === "" ? "" : unitsOf({ unit, system }).shown;
}

/** What was typed, in SI: blank, a figure, or a sentence that says what is wanted. */
export function readSize(
  name: SizeName,
  text: string,
  system: UnitSystem,
): { value: number | undefined } | { wrong: string } {
  const size: {
    unit: string;
    low: number;
    high: number;
    mayBeZero?: boolean;
    label: string;
    wanted(low: string, high: string): string;
  } = sizes[name];
  const read = readQuantity(text, { unit: size.unit, system });
  if ("wrong" in read) return { wrong: `${entryWords.unreadable} ${wantedOf(name, system)}` };
  const { value } = read;
  if (typeof value !== "number") return { value: undefined };
  const isIn = (value >= size.low && value <= size.high) || (size.mayBeZero && value === 0);
  return isIn ? { value } : { wrong: `${wantedOf(name, system)} ${entryWords.entered(text.trim())}` };
}

function wantedOf(name: SizeName, system: UnitSystem): string {
  const { unit, low, high, wanted } = sizes[name];
  const number = new Intl.NumberFormat(undefined, { maximumSignificantDigits: 3 });
  const shown = (si: number) => {
    if (unit === "") return String(si);
    const there = shownUnit(unit, system);
    return `${number.format(fromSI(si, unit, there) ?? si)}\u00A0${there}`;
  };
  return wanted(shown(low), shown(high));
}

/** A text as it was typed, with the unit that it was typed in where another is shown now. */
export function shownText(
  name: SizeName,
  typed: Readonly<Record<string, string>>,
  system: UnitSystem,
): string {
  const text = typed[name] ?? "";
  const before = typed[`${name}-in`] === "us" ? "us" : "metric";
  if (text.trim() === "" || before === system || /[\p{L}]/u.test(text)) return text;
  return `${text} ${sizeUnit(name, before)}`;
}
