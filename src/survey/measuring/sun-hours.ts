import type { Obstruction } from "../../engine/grounds.ts";
import { blockedShare, horizon, skylineAt_deg, skyView, sunPath } from "../../engine/shade.ts";

/** The sun on the 15th of a month from where the bed is. */
export interface MonthOfSun {
  /** 1–12 */
  month: number;
  /** Hours that the sun is above a level horizon. */
  open_h: number;
  /** Hours that it stands above the skyline. */
  sun_h: number;
  /** Share of the clear-sky beam that the skyline takes; null where the sun stays down. */
  blocked: number | null;
}

const hoursAStep = 1 / 6;

/** Hours of sun by month past a skyline, from the sun's path every ten minutes. */
export function sunByMonth(
  latitude_deg: number,
  longitude_deg: number,
  obstructions: readonly Obstruction[],
): MonthOfSun[] {
  const pieces = horizon(obstructions);
  return Array.from({ length: 12 }, (_, m) => {
    const path = sunPath(latitude_deg, longitude_deg, m + 1);
    const clear = path.filter(
      ({ azimuth_deg, altitude_deg }) => altitude_deg >= skylineAt_deg(pieces, azimuth_deg),
    );
    return {
      month: m + 1,
      open_h: path.length * hoursAStep,
      sun_h: clear.length * hoursAStep,
      blocked: blockedShare(pieces, path),
    };
  });
}

/** Share of the sky's diffuse light that the skyline leaves. */
export function skyLeft(obstructions: readonly Obstruction[]): number {
  return skyView(horizon(obstructions));
}
