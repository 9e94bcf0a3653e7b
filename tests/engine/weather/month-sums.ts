import { daysInMonth, fromDay } from "../../../src/engine/weather/dates.ts";
import type { WeatherRecord } from "../../../src/engine/weather/record.ts";

/**
 * Sums of a daily series of whole calendar years by month: for each of the twelve, one sum a year.
 * @param value the day's value by its slot in the record and its month, 0–11
 */
export function monthSums(record: WeatherRecord, value: (slot: number, m: number) => number): number[][] {
  const sums: number[][] = Array.from({ length: 12 }, () => []);
  let slot = 0;
  for (let { year } = fromDay(record.firstDay); slot < record.days; year++) {
    for (const [m, years] of sums.entries()) {
      let sum = 0;
      for (const end = slot + daysInMonth(year, m + 1); slot < end; slot++) sum += value(slot, m);
      years.push(sum);
    }
  }
  return sums;
}

/** How many standard errors the mean of independent values lies off what was to come; 0 where both agree exactly. */
export function standardErrorsOff(values: readonly number[], expected: number): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  const off = mean - expected;
  return Math.abs(off) < 1e-9 ? 0 : off / Math.sqrt(variance / values.length);
}
