import type { Unit } from "../quantities.ts";
import { fromSI, shown, type UnitSystem } from "../units.ts";

/** What workings need of a formatter; the page's own has all of it. */
export interface Say {
  system: UnitSystem;
  number(x: number, digits?: number): string;
  month(index: number, form?: "long" | "short" | "narrow"): string;
  /** Day, month and year of a day number. */
  date(day: number): string;
  list(items: readonly string[]): string;
  /** To the cent, in the survey's currency; left out where there is none. */
  money?(amount: number): string;
}

/** Units of a term: the glossary's, and those that live inside one equation only. */
export type TermUnit = Unit | "kPa/°C" | "rad" | "year";

const NBSP = "\u00A0";
const dimensionless: readonly string[] = ["share", "year"];

/** Figures shown of a number in a working. */
const figures = 4;

/** Numbers by Intl alone, for where there is no page: the terminal, a printed sheet. */
export function plainSay(system: UnitSystem, locale: string): Say {
  const dates = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(locale, { ...options, timeZone: "UTC" });
  const date = dates({ day: "numeric", month: "long", year: "numeric" });
  const months = {
    long: dates({ month: "long" }),
    short: dates({ month: "short" }),
    narrow: dates({ month: "narrow" }),
  };
  const list = new Intl.ListFormat(locale, { type: "conjunction" });
  const numbers = Array.from({ length: 11 }, (_, digits) => {
    return new Intl.NumberFormat(locale, { maximumFractionDigits: digits });
  });
  return {
    system,
    number: (x, digits = 3) => numbers[digits]!.format(x),
    month: (index, form = "long") => months[form].format(Date.UTC(2021, index, 15)),
    date: (day) => date.format(day * 86_400_000),
    list: (items) => list.format(items),
  };
}

/** A bare number: whole from 1,000 on, four figures below. A year is not grouped. */
export function bare(value: number, unit: TermUnit, say: Say): string {
  if (unit === "year") return String(value);
  const size = Math.abs(value);
  const digits = size === 0 ? 0 : Math.min(10, Math.max(0, figures - 1 - Math.floor(Math.log10(size))));
  return say.number(value === 0 ? 0 : value, digits).replace(/^-/, "−");
}

/** A number with its SI unit, and with the unit that people there use beside it. */
export function amount(value: number, unit: TermUnit, say: Say): string {
  const number = bare(value, unit, say);
  if (dimensionless.includes(unit)) return number;
  if (unit === "money") return moneyOf(value, say);
  if (unit === "money/kL") return price(value, say);
  const si = `${number}${gap(unit)}${unit}`;
  const other = customary(value, unit, say);
  return other ? `${si} (${other})` : si;
}

function moneyOf(value: number, say: Say): string {
  return say.money?.(value) ?? bare(value, "money", say);
}

/** What a kL costs, and beside it what people there buy their water by. */
function price(value: number, say: Say): string {
  const perKL = `${moneyOf(value, say)}/kL`;
  const there = shown(value, "money/kL", say.system);
  if (there.unit === "money/kL") return perKL;
  return `${perKL} (${moneyOf(there.value, say)}${there.unit.slice("money".length)})`;
}

function customary(value: number, unit: TermUnit, say: Say): string | null {
  if (say.system === "metric" || unit === "kPa/°C" || unit === "rad" || unit === "year") return null;
  if (unit === "kL") return `${bare(fromSI(value, "kL", "gal")!, "L", say)}${NBSP}gal`;
  const there = shown(value, unit, say.system);
  return there.unit === unit ? null : `${bare(there.value, unit, say)}${gap(there.unit)}${there.unit}`;
}

function gap(unit: string): string {
  return unit === "°" || unit === "%" ? "" : NBSP;
}
