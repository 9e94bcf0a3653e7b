import { hargreaves_mm } from "../et0.ts";
import { quantile } from "../give-up.ts";
import { extraterrestrial_MJ_m2 } from "../radiation.ts";
import { dayOfYear } from "../weather/dates.ts";
import type { WeatherSeries } from "../weather/series.ts";
import { sameDates } from "./members.ts";

/** How a week compares with its usual, or its temperatures as typed. */
export type Heat = "cooler" | "usual" | "hotter" | { tmin_c: number; tmax_c: number };

/** A hotter week is one in ten of the record's about that date, a cooler one likewise. Ours. */
const rare = 0.1;
const week_days = 7;
const leastFactor = 0.3;
const mostFactor = 2.5;

/**
 * What the usual ET0 about a date is multiplied by in a week of this heat: the record's own weeks for a word,
 * Hargreaves for temperatures.
 * @source FAO-56 Eq. 52 for temperatures
 */
export function heatFactor(heat: Heat, weather: WeatherSeries, day: number): number {
  if (heat === "usual") return 1;
  const weeks = weeksAbout(weather, day);
  if (weeks.length === 0) return 1;
  const usual = quantile(weeks, 0.5);
  if (usual <= 0) return 1;
  const wanted =
    heat === "hotter"
      ? quantile(weeks, 1 - rare)
      : heat === "cooler"
        ? quantile(weeks, rare)
        : hargreaves_mm(heat.tmin_c, heat.tmax_c, raOf(weather, day));
  return Math.min(mostFactor, Math.max(leastFactor, wanted / usual));
}

/** Mean ET0 of the record's weeks about a date, in order. */
function weeksAbout({ calendar, et0_mm }: WeatherSeries, day: number): number[] {
  const means = [-week_days, 0, week_days].flatMap((shift) =>
    sameDates(calendar, day + shift, 0, week_days).map((at) => {
      let sum = 0;
      for (let i = at; i < at + week_days; i++) sum += et0_mm[i]!;
      return sum / week_days;
    }),
  );
  return means.sort((a, b) => a - b);
}

function raOf({ place }: WeatherSeries, day: number): number {
  return extraterrestrial_MJ_m2(place.latitude_deg, dayOfYear(day));
}
