import { dayNumber, fromDay } from "../engine/weather/dates.ts";
import { type ClockPlace, localMinutes } from "./local-time.ts";

const minute_ms = 60_000;
const day_ms = 86_400_000;
const day_min = 1440;

/** A clock reading: a day, and minutes since its midnight. */
export interface WallTime {
  day: number;
  minutes: number;
}

/** A change of a zone's offset from UTC. */
export interface ZoneChange {
  /** The clock's reading as it changes, by the offset before. */
  at: WallTime;
  from_min: number;
  to_min: number;
  isDaylight: boolean;
}

/** Minutes that a place's clock is ahead of UTC at a moment. */
export function offset_min(moment_ms: number, place: ClockPlace): number {
  const day = Math.floor(moment_ms / day_ms);
  return localMinutes(moment_ms, day, place) - Math.floor((moment_ms - day * day_ms) / minute_ms);
}

/** The moment at which a place's clock reads so; where the clock leaps over that reading, the leap itself on. */
export function momentOf({ day, minutes }: WallTime, place: ClockPlace): number {
  const asUtc_ms = day * day_ms + minutes * minute_ms;
  const before = offset_min(asUtc_ms - day_ms / 2, place);
  const first_ms = asUtc_ms - before * minute_ms;
  const second_ms = asUtc_ms - offset_min(first_ms, place) * minute_ms;
  return offset_min(second_ms, place) === offset_min(first_ms, place)
    ? second_ms
    : Math.max(first_ms, second_ms);
}

/** What a place's clock reads at a moment. */
export function wallTimeOf(moment_ms: number, place: ClockPlace): WallTime {
  const local_min = Math.floor(moment_ms / minute_ms) + offset_min(moment_ms, place);
  const day = Math.floor(local_min / day_min);
  return { day, minutes: local_min - day * day_min };
}

/** The changes of a zone's clock about some years, the state that it begins in first. */
export function zoneChanges(place: ClockPlace, fromYear: number, toYear: number): ZoneChange[] {
  const start = dayNumber(fromYear - 1, 1, 1);
  const end = dayNumber(toYear + 2, 1, 1);
  const offsets = new Map<number, number>();
  for (let day = start; day <= end; day++) offsets.set(day, offset_min(day * day_ms, place));
  const first = offsets.get(start)!;
  const least = (day: number) => leastOfYear(offsets, fromDay(day).year);
  const changes: ZoneChange[] = [
    { at: { day: start, minutes: 0 }, from_min: first, to_min: first, isDaylight: first > least(start) },
  ];
  for (let day = start; day < end; day++) {
    const from_min = offsets.get(day)!;
    const to_min = offsets.get(day + 1)!;
    if (from_min === to_min) continue;
    const moment_ms = changeWithin(day * day_ms, (day + 1) * day_ms, place);
    const local_min = Math.round(moment_ms / minute_ms) + from_min;
    const at = { day: Math.floor(local_min / day_min), minutes: local_min % day_min };
    changes.push({ at, from_min, to_min, isDaylight: to_min > least(day) });
  }
  return changes;
}

function leastOfYear(offsets: ReadonlyMap<number, number>, year: number): number {
  const first = dayNumber(year, 1, 1);
  const days = Array.from({ length: 365 }, (_, k) => offsets.get(first + k) ?? Number.POSITIVE_INFINITY);
  return Math.min(...days);
}

/** The minute at which the offset changes. */
function changeWithin(from_ms: number, to_ms: number, place: ClockPlace): number {
  const before = offset_min(from_ms, place);
  let low = from_ms / minute_ms;
  let high = to_ms / minute_ms;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (offset_min(middle * minute_ms, place) === before) low = middle;
    else high = middle;
  }
  return high * minute_ms;
}
