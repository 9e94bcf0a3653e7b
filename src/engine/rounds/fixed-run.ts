import type { BedState, PreparedBed } from "../bed-day.ts";
import type { Calendar } from "../weather/series.ts";
import { blankSums, type MonthSums, runYear, type YearOfMonths } from "./month-need.ts";
import { fallsOn, type Pattern } from "./pattern.ts";

/** A month's watering as a person keeps it. */
export interface FixedMonth {
  pattern: Pattern;
  minutes: number;
  /** Minutes before they were made whole. */
  exact_min: number;
  net_mm: number;
  /** Part of the watering's water beyond the usual rain that spares it. */
  spares: number;
  /** Rain in the gauge since the last day of the round from which a watering is left out; null: never. */
  leaveAfterRain_mm: number | null;
}

/** The days of each pattern, 31 dates × 7 weekdays: looked up, not worked out on every day. */
const daysOf = new WeakMap<Pattern, Uint8Array>();

export function daysOfPattern(pattern: Pattern): Uint8Array {
  const known = daysOf.get(pattern);
  if (known) return known;
  const falls = new Uint8Array(32 * 7);
  for (let date = 1; date <= 31; date++)
    for (let weekday = 0; weekday < 7; weekday++)
      if (fallsOn(pattern, weekday, date)) falls[date * 7 + weekday] = 1;
  daysOf.set(pattern, falls);
  return falls;
}

/**
 * Net depth of each day of a year by a fixed table: the month's depth on its days, left out where the bed may
 * not be watered, and after rain. Rain counts from the last day of the round, watered or left out.
 */
export function waterByTable(
  table: readonly FixedMonth[],
  bed: PreparedBed,
  open: Uint8Array,
  calendar: Calendar,
  year: YearOfMonths,
  net_mm: Float64Array,
): void {
  let rain_mm = 0;
  for (const { month, from, to } of year.months) {
    const { pattern, net_mm: dose_mm, leaveAfterRain_mm } = table[month]!;
    const leaveAfter_mm = (leaveAfterRain_mm ?? Number.POSITIVE_INFINITY) * bed.bed.rainShare;
    const falls = daysOfPattern(pattern);
    for (let i = from; i < to; i++) {
      net_mm[i] = 0;
      if (open[i] && falls[calendar.dayOfMonth[i]! * 7 + calendar.weekday[i]!]) {
        if (rain_mm < leaveAfter_mm) net_mm[i] = dose_mm;
        rain_mm = 0;
      }
      rain_mm += bed.rain_mm[i]!;
    }
  }
}

/**
 * Runs a fixed table through the engine over some of the record's years, each from the soil that it began with
 * when watered to need.
 * @param net_mm scratch, as long as the record
 */
export function runTable(
  table: readonly FixedMonth[],
  bed: PreparedBed,
  open: Uint8Array,
  calendar: Calendar,
  years: readonly YearOfMonths[],
  group: readonly number[],
  startOfYear: readonly BedState[],
  net_mm: Float64Array,
): MonthSums {
  const sums = blankSums(years.length);
  for (const k of group) {
    waterByTable(table, bed, open, calendar, years[k]!, net_mm);
    runYear(bed, startOfYear[k]!.slice(), net_mm, null, years[k]!, k, sums);
  }
  return sums;
}
