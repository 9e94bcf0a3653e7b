import { getTimes } from "suncalc";

const day_ms = 86_400_000;

/** The sun's times of one local day, milliseconds of UTC; null where it does not rise, set or dip so far. */
export interface SunOfDay {
  dawn_ms: number | null;
  sunrise_ms: number | null;
  sunset_ms: number | null;
  dusk_ms: number | null;
  /** The sun's lowest point, in the night that begins the day. */
  midnight_ms: number;
  /** "day": the sun does not set; "night": it does not rise. */
  polar: "day" | "night" | null;
}

/**
 * The sun on a day at a place: dawn and dusk are civil ones, 6° below the horizon.
 * @param noon_ms noon of that day by the place's clock
 */
export function sunOfDay(noon_ms: number, latitude_deg: number, longitude_deg: number): SunOfDay {
  const times = getTimes(new Date(noon_ms), latitude_deg, longitude_deg);
  const at = (time: Date | null) => (time === null ? null : time.getTime());
  return {
    dawn_ms: at(times.dawn),
    sunrise_ms: at(times.sunrise),
    sunset_ms: at(times.sunset),
    dusk_ms: at(times.dusk),
    midnight_ms: nearest(times.nadir.getTime(), noon_ms - day_ms / 2),
    polar: times.alwaysUp ? "day" : times.alwaysDown ? "night" : null,
  };
}

/** The same time of day within half a day of a moment. */
function nearest(time_ms: number, wanted_ms: number): number {
  return time_ms + Math.round((wanted_ms - time_ms) / day_ms) * day_ms;
}
