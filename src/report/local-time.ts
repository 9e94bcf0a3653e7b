import type { SunMinutes } from "../engine/rounds/cool-hours.ts";
import { sunOfDay } from "../engine/rounds/sun.ts";
import { dayNumber } from "../engine/weather/dates.ts";

const minute_ms = 60_000;
const day_min = 1440;

/** A place on the earth and on the clock. */
export interface ClockPlace {
  latitude: number;
  longitude: number;
  /** IANA name; where left out, mean solar time of the place. */
  timeZone?: string;
}

/** Minutes of the local clock since the start of a day; below 0 or above 1440 for moments of other days. */
export function localMinutes(moment_ms: number, day: number, place: ClockPlace): number {
  if (place.timeZone === undefined)
    return Math.round(moment_ms / minute_ms + 4 * place.longitude - day * day_min);
  const parts = clockOf(place.timeZone).formatToParts(moment_ms);
  const part = (type: string) => Number(parts.find((one) => one.type === type)!.value);
  const there = dayNumber(part("year"), part("month"), part("day"));
  return (there - day) * day_min + 60 * (part("hour") % 24) + part("minute");
}

const clocks = new Map<string, Intl.DateTimeFormat>();

function clockOf(timeZone: string): Intl.DateTimeFormat {
  const known = clocks.get(timeZone);
  if (known) return known;
  const clock = new Intl.DateTimeFormat("en-US", {
    timeZone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
  });
  clocks.set(timeZone, clock);
  return clock;
}

/** The sun's times of a day on the local clock. */
export function sunMinutes(day: number, place: ClockPlace): SunMinutes {
  const sun = sunOfDay(day, place.latitude, place.longitude);
  const local = (moment_ms: number | null) =>
    moment_ms === null ? null : localMinutes(moment_ms, day, place);
  return {
    dawn_min: local(sun.dawn_ms),
    sunrise_min: local(sun.sunrise_ms),
    sunset_min: local(sun.sunset_ms),
    dusk_min: local(sun.dusk_ms),
    midnight_min: local(sun.midnight_ms)!,
    polar: sun.polar,
  };
}

/** Minutes from midnight as HH:MM. */
export function clockTime(minutes: number): string {
  const within = Math.max(0, Math.min(day_min, Math.round(minutes)));
  return `${String(Math.floor(within / 60)).padStart(2, "0")}:${String(within % 60).padStart(2, "0")}`;
}
