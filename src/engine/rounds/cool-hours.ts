import { minutesOfDay } from "./site.ts";
import { common, minutesIn, type Stretch } from "./stretches.ts";

/** The sun's times of a day in minutes of its local clock; null where there are none. */
export interface SunMinutes {
  dawn_min: number | null;
  sunrise_min: number | null;
  sunset_min: number | null;
  dusk_min: number | null;
  midnight_min: number;
  polar: "day" | "night" | null;
}

/** Watering is best over two hours after sunrise, when leaves dry soon and the air is cool and still. Common practice. */
const afterSunrise_min = 120;
const beforeDawn_min = 60;
const beforeSunset_min = 60;
const afterDusk_min = 60;

/**
 * The cool and still hours of a day, the best first: about dawn, then about dusk; about the sun's lowest point
 * where it does not set; none to prefer where it does not rise.
 * @param elapsed_min what has to fit; the dawn begins earlier for a long one
 */
export function coolHours(sun: SunMinutes, elapsed_min: number): Stretch[] {
  if (sun.polar === "night") return [{ from: 0, to: minutesOfDay }];
  if (sun.sunrise_min === null || sun.sunset_min === null) {
    const to = Math.min(minutesOfDay, Math.max(elapsed_min, sun.midnight_min + 3 * 60));
    return [{ from: 0, to }];
  }
  const morningEnd = sun.sunrise_min + afterSunrise_min;
  const first = (sun.dawn_min ?? sun.sunrise_min) - beforeDawn_min;
  const morning = { from: Math.min(first, morningEnd - elapsed_min), to: morningEnd };
  const evening = {
    from: sun.sunset_min - beforeSunset_min,
    to: (sun.dusk_min ?? sun.sunset_min) + afterDusk_min,
  };
  return [morning, evening].map(({ from, to }) => ({
    from: Math.max(0, Math.round(from)),
    to: Math.min(minutesOfDay, Math.round(to)),
  }));
}

/** The part of a bed's open hours to propose: the first cool hours that are long enough, else all that are open. */
export function proposedHours(open: readonly Stretch[], sun: SunMinutes, elapsed_min: number): Stretch[] {
  for (const cool of coolHours(sun, elapsed_min)) {
    const both = common(open, [cool]);
    if (both.some(({ from, to }) => to - from >= elapsed_min)) return both;
  }
  return minutesIn(open) > 0 ? [...open] : [];
}
