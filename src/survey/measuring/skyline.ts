import type { Obstruction } from "../../engine/grounds.ts";
import { type Figure, propagate } from "./figure.ts";

const degrees = 180 / Math.PI;

/** Angle that a fist takes at arm's length, from its width and the distance from the eye: about 10° (common practice). */
export function fist_deg(width_m: Figure, arm_m: Figure): Figure {
  return propagate(([width, arm]) => 2 * Math.atan(width! / (2 * arm!)) * degrees, [width_m, arm_m]);
}

/** Angle up to the top of something so high and so far, both from where the plants are. */
export function elevation_deg(height_m: Figure, distance_m: Figure): Figure {
  return propagate(([height, distance]) => Math.atan2(height!, distance!) * degrees, [height_m, distance_m]);
}

/** A stretch of skyline as read: compass bearings of its left and right end, and its height. */
export interface SkylineReading {
  from_deg: number;
  to_deg: number;
  elevation_deg: number;
}

/**
 * Stretches of skyline as the survey has them: bearings from true north.
 * @param declination_deg how far the compass needle points east of true north; 0 where bearings are true ones
 */
export function obstructionsFrom(
  readings: readonly SkylineReading[],
  declination_deg: number,
): Obstruction[] {
  return readings
    .filter(({ elevation_deg }) => elevation_deg > 0)
    .map(({ from_deg, to_deg, elevation_deg }) => ({
      fromAzimuth_deg: within360(from_deg + declination_deg),
      toAzimuth_deg: within360(to_deg + declination_deg),
      elevation_deg: Math.min(90, elevation_deg),
    }));
}

function within360(azimuth_deg: number): number {
  return ((azimuth_deg % 360) + 360) % 360;
}
