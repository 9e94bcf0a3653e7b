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

/** A week of each month in each year; a row a year, twelve to the row. */
export function weekRows({ sums, days }: YearMonths): Float64Array {
  return sums.map((sum, k) => (sum / days[k]!) * 7);
}

/** A year's place in the rows for one month, and its part of a point between two years. */
export interface RowPart {
  row: number;
  part: number;
}

/**
 * The years between which a point of one calendar month lies, linear between order statistics. What those years have of
 * another series, in the same parts, stays in proportion to it: parts of one whole stay parts of it.
 * @param m 0–11
 * @param share 0.5 is the middle
 */
export function pointOfMonth(rows: ArrayLike<number>, m: number, share: number): RowPart[] {
  const years = Array.from({ length: rows.length / 12 }, (_, y) => y * 12 + m);
  const inOrder = years.sort((a, b) => rows[a]! - rows[b]!);
  const at = share * (inOrder.length - 1);
  const above = at - Math.floor(at);
  return [
    { row: inOrder[Math.floor(at)]!, part: 1 - above },
    { row: inOrder[Math.ceil(at)]!, part: above },
  ];
}

export function valueAt(rows: ArrayLike<number>, parts: readonly RowPart[]): number {
  return parts.reduce((sum, { row, part }) => sum + part * rows[row]!, 0);
}

/** The sum of each year. */
export function yearSums({ years, sums }: YearMonths): number[] {
  return years.map((_, at) => sums.subarray(at * 12, at * 12 + 12).reduce((sum, each) => sum + each, 0));
}
