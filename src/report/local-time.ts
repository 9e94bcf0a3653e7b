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

/** Minutes from midnight as HH:MM. */
export function clockTime(minutes: number): string {
  const within = Math.max(0, Math.min(day_min, Math.round(minutes)));
  return `${String(Math.floor(within / 60)).padStart(2, "0")}:${String(within % 60).padStart(2, "0")}`;
}
