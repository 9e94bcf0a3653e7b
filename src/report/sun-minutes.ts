import type { SunMinutes } from "../engine/rounds/cool-hours.ts";
import { sunOfDay } from "../engine/rounds/sun.ts";
import { type ClockPlace, localMinutes } from "./local-time.ts";
import { momentOf } from "./time-zone.ts";

/** The sun's times of a day on the local clock. */
export function sunMinutes(day: number, place: ClockPlace): SunMinutes {
  const sun = sunOfDay(momentOf({ day, minutes: 720 }, place), place.latitude, place.longitude);
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
