import { dayNumber, fromDay, isRealDate } from "../weather/dates.ts";
import type { Calendar } from "../weather/series.ts";

/**
 * Places in a record that share a day's date, one a year: the weather that this day may have. 29 February takes
 * 28 February in other years.
 * @param before days that must lie before it in the record
 * @param after days from it on, itself included
 */
export function sameDates(calendar: Calendar, day: number, before: number, after: number): number[] {
  const { month, day: dayOfMonth } = fromDay(day);
  const first = calendar.year[0]!;
  const last = calendar.year[calendar.days - 1]!;
  const places: number[] = [];
  for (let year = first; year <= last; year++) {
    const date = isRealDate(year, month, dayOfMonth) ? dayOfMonth : 28;
    const at = dayNumber(year, month, date) - calendar.firstDay;
    if (at >= before && at + after <= calendar.days) places.push(at);
  }
  return places;
}
