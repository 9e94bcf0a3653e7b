import { dayNumber, isLeap, isRealDate } from "../../engine/weather/dates.ts";
import type { DateMapping, DateOrder } from "./mapping.ts";

const months = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");

/** Hours behind a date: a daily row may carry the time it was read at. */
const clock =
  /(?:[T\s]+|\s*-\s+)\d{1,2}[:h.]\d{2}(?:[:.]\d{2}(?:[.,]\d+)?)?\s*(?:[ap]\.?m\.?)?\s*(?:z|utc|gmt|[+-]\d{2}:?\d{2})?$/i;

/** The three numbers of a date in the order they stand; a month's name fixes the order. */
interface DateTokens {
  parts: readonly [number, number, number];
  /** The only order that the writing allows; null where more are possible. */
  order: DateOrder | null;
}

export function looksLikeDate(cell: string): boolean {
  return dateTokens(cell) !== null;
}

/** Takes a date's text apart; null where it is none. */
export function dateTokens(cell: string): DateTokens | null {
  const text = cell.length > 10 ? cell.replace(clock, "").trim() : cell;
  const split = /^(\d{1,4})[-/. ](\d{1,2})[-/. ](\d{1,4})\.?$/.exec(text);
  if (split) {
    const parts = [Number(split[1]), Number(split[2]), Number(split[3])] as const;
    if (split[1]!.length >= 3) return split[3]!.length <= 2 ? { parts, order: "ymd" } : null;
    return split[3]!.length === 3 ? null : { parts, order: null };
  }
  const joined = /^(\d{4})(\d{2})(\d{2})(?:\d{2}|\d{4}|\d{6})?$/.exec(text);
  if (joined) {
    const parts = [Number(joined[1]), Number(joined[2]), Number(joined[3])] as const;
    return isRealDate(...parts) && parts[0] >= 1700 && parts[0] < 2200 ? { parts, order: "ymd" } : null;
  }
  return namedMonth(text);
}

function namedMonth(text: string): DateTokens | null {
  const words = text.replace(/^(mon|tue|wed|thu|fri|sat|sun)[a-z]*,?\s+/i, "").split(/[-/.,\s]+/);
  if (words.length !== 3) return null;
  const at = words.findIndex((word) => /^[a-z]{3,9}$/i.test(word));
  const month = at < 0 ? 0 : months.indexOf(words[at]!.slice(0, 3).toLowerCase()) + 1;
  const others = words.filter((_, index) => index !== at).map(Number);
  if (month === 0 || !others.every(Number.isInteger)) return null;
  const [first, second] = others as [number, number];
  if (at === 0) return { parts: [month, first, second], order: "mdy" };
  if (at === 1 && words[0]!.length === 4) return { parts: [first, month, second], order: "ymd" };
  return at === 1 ? { parts: [first, month, second], order: "dmy" } : null;
}

/** Day number of a date's tokens read in an order; null where there is no such date. */
export function dayInOrder({ parts, order: fixed }: DateTokens, order: DateOrder): number | null {
  const used = fixed ?? order;
  const [first, second, third] = parts;
  const [year, month, day] =
    used === "ymd"
      ? parts
      : used === "dmy"
        ? ([third, second, first] as const)
        : ([third, first, second] as const);
  const full = fullYear(year);
  return isRealDate(full, month, day) ? dayNumber(full, month, day) : null;
}

/** Two-digit years: 69 to 99 are the 1900s, 00 to 68 the 2000s, as POSIX has it. */
export function fullYear(year: number): number {
  if (year >= 100) return year;
  return year >= 69 ? 1900 + year : 2000 + year;
}

/** Day number of a row by a mapping; null where its cells are no date. */
export function rowDay(row: readonly string[], dates: DateMapping): number | null {
  if (dates.kind === "column") {
    const tokens = dateTokens(row[dates.at] ?? "");
    return tokens ? dayInOrder(tokens, dates.order) : yearAndDay(row[dates.at] ?? "");
  }
  const year = fullYear(whole(row[dates.year]));
  if (dates.kind === "day-of-year") return dayOfYearNumber(year, whole(row[dates.day]));
  const month = monthNumber(row[dates.month] ?? "");
  const day = whole(row[dates.day]);
  return isRealDate(year, month, day) ? dayNumber(year, month, day) : null;
}

/** Year and day of the year in one text: 2012-032 or 2012032. */
export function yearAndDay(cell: string): number | null {
  const match = /^(\d{4})-?(\d{3})$/.exec(cell);
  return match ? dayOfYearNumber(Number(match[1]), Number(match[2])) : null;
}

export function monthNumber(cell: string): number {
  return /^[a-z]/i.test(cell) ? months.indexOf(cell.slice(0, 3).toLowerCase()) + 1 : whole(cell);
}

function dayOfYearNumber(year: number, day: number): number | null {
  return day >= 1 && day <= (isLeap(year) ? 366 : 365) && year > 0 ? dayNumber(year, 1, 1) + day - 1 : null;
}

function whole(cell: string | undefined): number {
  return cell !== undefined && /^\d+(\.0+)?$/.test(cell) ? Number(cell) : Number.NaN;
}
