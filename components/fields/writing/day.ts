import { readTime } from "./time.ts";
import { blank, isBlank, type Reading, type Writing } from "./writing.ts";

/** Which days a field takes: one date; that, or a day of every year; a date with or without a time. */
export type DayForm = "date" | "date-or-month-day" | "date-or-time";

/** A day as people write it: 31 March, March 31 2026, 31.3.2026, 2026-03-31, 03-31. */
export function dayWriting(form: DayForm, locale?: string): Writing {
  return {
    read: (text) => (isBlank(text) ? blank : readDay(text, form, locale)),
    show: (value) => (typeof value === "string" ? showDay(value, locale) : String(value ?? "")),
    unit: "",
    inputMode: "text",
    width: form === "date-or-time" ? 26 : 20,
  };
}

function readDay(text: string, form: DayForm, locale?: string): Reading {
  const unreadable: Reading = { wrong: "unreadable" };
  let date = text.trim();
  let time = "";
  if (form === "date-or-time") {
    if (/^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}\S+$/.test(date)) return { value: date.replace(" ", "T") };
    const [, day = date, clock] = /^(.*?)[T,\s]+(\d{1,2}[:.h]\d{2}(?:\s*[ap]\.?m\.?)?)$/i.exec(date) ?? [];
    if (clock !== undefined) {
      const read = readTime(clock);
      if (read === null) return unreadable;
      [date, time] = [day, `T${read}`];
    }
  }
  const found = partsOf(date, locale);
  if (!found || !isDay(found) || (found.year === null && form !== "date-or-month-day")) return unreadable;
  const two = (n: number) => String(n).padStart(2, "0");
  const year = found.year === null ? "" : `${found.year}-`;
  return { value: `${year}${two(found.month)}-${two(found.day)}${time}` };
}

interface DayParts {
  year: number | null;
  month: number;
  day: number;
}

function partsOf(text: string, locale?: string): DayParts | null {
  const iso = /^(?:(\d{4})-)?(\d{2})-(\d{2})$/.exec(text);
  if (iso)
    return { year: iso[1] === undefined ? null : Number(iso[1]), month: Number(iso[2]), day: Number(iso[3]) };
  const pieces = text
    .split(/[\s.,/-]+/u)
    .filter((piece) => piece !== "" && !/^(de|of|the|den)$/i.test(piece));
  const month = pieces.findIndex((piece) => monthNamed(piece, locale) !== null);
  const numbers = pieces.filter((_, at) => at !== month).map((piece) => numberOf(piece));
  if (numbers.includes(null)) return null;
  const all = numbers as number[];
  if (month !== -1) return named(monthNamed(pieces[month]!, locale)!, all);
  return byNumbers(all, locale);
}

/** 31, 31st, 2026. */
function numberOf(piece: string): number | null {
  const found = /^(\d{1,4})(?:st|nd|rd|th|º)?$/.exec(piece);
  return found ? Number(found[1]) : null;
}

function named(month: number, numbers: readonly number[]): DayParts | null {
  const [first, second] = numbers;
  if (first === undefined || numbers.length > 2) return null;
  if (second === undefined) return first > 31 ? null : { year: null, month, day: first };
  return first > 31 ? { year: first, month, day: second } : { year: fullYear(second), month, day: first };
}

/** Numbers alone, in the order that the locale writes a date in; another where only that is a day. */
function byNumbers(numbers: readonly number[], locale?: string): DayParts | null {
  const [a, b, c] = numbers;
  if (a === undefined || b === undefined || numbers.length > 3) return null;
  if (c !== undefined && a > 31) return { year: a, month: b, day: c };
  const year = c === undefined ? null : fullYear(c);
  const isMonthFirst = b > 12 || (a <= 12 && monthFirst(locale));
  return isMonthFirst ? { year, month: a, day: b } : { year, month: b, day: a };
}

function fullYear(year: number): number {
  return year < 100 ? 2000 + year : year;
}

function monthFirst(locale?: string): boolean {
  const order = new Intl.DateTimeFormat(locale, { timeZone: "UTC" }).formatToParts(0).map(({ type }) => type);
  return order.indexOf("month") < order.indexOf("day");
}

function isDay({ year, month, day }: DayParts): boolean {
  const date = new Date(Date.UTC(year ?? 2024, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

const monthsByLocale = new Map<string, readonly string[][]>();

/** Month, 1–12, by its name or the start of it, three letters or more, in the locale or in English. */
function monthNamed(piece: string, locale?: string): number | null {
  const plain = piece.toLowerCase().replace(/\.$/, "");
  if (!/^[\p{L}\p{M}]+$/u.test(plain)) return null;
  const means = (name: string) => name === plain || (plain.length >= 3 && name.startsWith(plain));
  const at = monthNames(locale).findIndex((names) => names.some(means));
  return at === -1 ? null : at + 1;
}

function monthNames(locale?: string): readonly string[][] {
  const key = locale ?? "";
  const kept = monthsByLocale.get(key);
  if (kept) return kept;
  const named = (language: string | undefined, month: number) =>
    new Intl.DateTimeFormat(language, { day: "numeric", month: "long", timeZone: "UTC" })
      .formatToParts(Date.UTC(2021, month, 15))
      .find(({ type }) => type === "month")!
      .value.toLowerCase();
  const names = Array.from({ length: 12 }, (_, month) => [named(locale, month), named("en", month)]);
  monthsByLocale.set(key, names);
  return names;
}

/** "31 March", "31 March 2026", "31 March 2026, 07:30"; what is written otherwise, as it is. */
export function showDay(text: string, locale?: string): string {
  const found = /^(?:(\d{4})-)?(\d{2})-(\d{2})(?:[T ](\d{2}:\d{2}))?$/.exec(text);
  if (!found) return text;
  const [, year, month, day, time] = found;
  const date = new Date(Date.UTC(Number(year ?? 2024), Number(month) - 1, Number(day)));
  const format = new Intl.DateTimeFormat(locale, {
    day: "numeric",
    month: "long",
    ...(year !== undefined && { year: "numeric" }),
    timeZone: "UTC",
    numberingSystem: "latn",
  });
  return `${format.format(date)}${time === undefined ? "" : `, ${time}`}`;
}
