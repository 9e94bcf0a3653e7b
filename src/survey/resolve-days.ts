import { type Weekday, weekdays } from "./words.ts";

/** One flag a weekday from Monday; every day where the survey names none. */
export function weekdayFlags(days: readonly Weekday[] | undefined): boolean[] {
  return weekdays.map((day) => days?.includes(day) ?? true);
}

/** One flag a month from January; every month where the survey names none. */
export function monthFlags(months: readonly number[] | undefined): boolean[] {
  return Array.from({ length: 12 }, (_, month) => months?.includes(month + 1) ?? true);
}
