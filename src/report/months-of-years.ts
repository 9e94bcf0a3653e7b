import type { Calendar } from "../engine/weather/series.ts";

/** Sums of a daily series by whole year and calendar month; a row a year, twelve to the row. */
export interface YearMonths {
  years: readonly number[];
  /** Twelve sums a year, and the days that each month has. */
  sums: Float64Array;
  days: Float64Array;
}

/** @param years the whole years of the calendar, rising */
export function yearMonths(
  values: ArrayLike<number>,
  calendar: Calendar,
  years: readonly number[],
): YearMonths {
  const sums = new Float64Array(years.length * 12);
  const days = new Float64Array(years.length * 12);
  const row = new Map(years.map((year, at) => [year, at]));
  for (let i = 0; i < calendar.days; i++) {
    const at = row.get(calendar.year[i]!);
    if (at === undefined) continue;
    const k = at * 12 + calendar.month[i]!;
    sums[k]! += values[i]!;
    days[k]!++;
  }
  return { years, sums, days };
}

/** What a week of each month of a year has; nothing (null) of a year that is not there. */
export function weeksOf({ years, sums, days }: YearMonths, year: number): number[] | null {
  const at = years.indexOf(year);
  if (at < 0) return null;
  return Array.from({ length: 12 }, (_, m) => (sums[at * 12 + m]! / days[at * 12 + m]!) * 7);
}

/** The sum of each year. */
export function yearSums({ years, sums }: YearMonths): number[] {
  return years.map((_, at) => sums.subarray(at * 12, at * 12 + 12).reduce((sum, each) => sum + each, 0));
}
