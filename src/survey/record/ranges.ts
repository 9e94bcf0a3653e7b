import type { WeatherColumn } from "../../engine/weather/record.ts";

/**
 * What a strict record accepts in each column, ends included. Temperatures, rain, humidity shares and sun hours
 * are the method's; the other upper ends lie beyond anything measured over a day, so that a value in another
 * unit, or a mark for a missing one, does not pass for weather.
 */
export const acceptedRanges: Readonly<Record<WeatherColumn, readonly [low: number, high: number]>> = {
  rain_mm: [0, 2000],
  et0_mm: [-20, 60],
  tmin_c: [-60, 60],
  tmax_c: [-60, 60],
  tdew_c: [-60, 60],
  vp_kpa: [0, 20],
  rhmin_pct: [0, 100],
  rhmax_pct: [0, 100],
  rhmean_pct: [0, 100],
  wind_ms: [0, 120],
  solar_MJ_m2: [0, 60],
  sun_h: [0, 24],
};

/** Rows and span that one record may have at most. */
export const recordLimits = { rows: 75_000, years: 200 } as const;

/** Columns of which the first must not lie above the second. */
export const orderedPairs: readonly (readonly [low: WeatherColumn, high: WeatherColumn])[] = [
  ["tmin_c", "tmax_c"],
  ["rhmin_pct", "rhmax_pct"],
];
