/** A week's watering: minutes on each day, Monday first. */
export type WeekOfMinutes = readonly number[];

const days = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;
export type DayName = (typeof days)[number];

/** What a week's log says of the habit: mean minutes of a watering, and on which days. */
export function habitOf(week: WeekOfMinutes): { minutes: number; days: DayName[] } {
  const on = days.filter((_, i) => (week[i] ?? 0) > 0);
  const all = week.reduce((sum, minutes) => sum + minutes, 0);
  return { minutes: on.length === 0 ? 0 : all / on.length, days: on };
}

/** Minutes a week logged, over minutes a week as told; null where it was told that there is no watering. */
export function loggedOverTold(
  week: WeekOfMinutes,
  told: { minutes: number; days: readonly string[] },
): number | null {
  const toldMinutes = told.minutes * told.days.length;
  return toldMinutes === 0 ? null : week.reduce((sum, minutes) => sum + minutes, 0) / toldMinutes;
}
