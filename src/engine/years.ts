import type { Calendar } from "./weather/series.ts";

/** A stretch of a record by index, `to` not included. */
export interface YearSpan {
  year: number;
  from: number;
  to: number;
}

/** The full calendar years of a record, in order. */
export function wholeYears({ year, month, dayOfMonth, days }: Calendar): YearSpan[] {
  const spans: YearSpan[] = [];
  let from = -1;
  for (let i = 0; i < days; i++) {
    if (month[i] === 0 && dayOfMonth[i] === 1) from = i;
    if (from >= 0 && month[i] === 11 && dayOfMonth[i] === 31) {
      spans.push({ year: year[i]!, from, to: i + 1 });
      from = -1;
    }
  }
  return spans;
}

export function sumOver(values: Float64Array, { from, to }: { from: number; to: number }): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]!;
  return sum;
}

/** Mean of a year, from a total over a record's days. */
export function perYear(total: number, days: number): number {
  return (total / days) * 365.25;
}
