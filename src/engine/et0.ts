import { meanSaturation_kPa, pressure_kPa, psychrometric_kPa_C, saturationSlope_kPa_C } from "./air.ts";
import { netLongwave_MJ_m2, netShortwave_MJ_m2, relativeShortwave } from "./radiation.ts";

/** MJ/m² of water evaporated to mm. @source FAO-56 Eq. 20 */
export const mmPerMJ_m2 = 0.408;

/** Eq. 6 takes no less wind than this. @source FAO-56 chapter 3, text on low wind */
export const leastWind_ms = 0.5;

export interface Et0Day {
  tmin_c: number;
  tmax_c: number;
  vapour_kPa: number;
  /** At 2 m. */
  wind_ms: number;
  /** Net radiation Rn. */
  net_MJ_m2: number;
  /** Soil heat flux G: 0 for a day (Eq. 42). */
  soilHeat_MJ_m2: number;
  elevation_m: number;
}

/** Reference evapotranspiration in mm a day; may come out below 0. @source FAO-56 Eq. 6 */
export function penmanMonteith_mm(day: Et0Day): number {
  const mean_c = (day.tmin_c + day.tmax_c) / 2;
  const slope = saturationSlope_kPa_C(mean_c);
  const gamma = psychrometric_kPa_C(pressure_kPa(day.elevation_m));
  const wind_ms = Math.max(leastWind_ms, day.wind_ms);
  const deficit_kPa = meanSaturation_kPa(day.tmin_c, day.tmax_c) - day.vapour_kPa;
  const energy = mmPerMJ_m2 * slope * (day.net_MJ_m2 - day.soilHeat_MJ_m2);
  const drying = ((gamma * 900) / (mean_c + 273)) * wind_ms * deficit_kPa;
  return (energy + drying) / (slope + gamma * (1 + 0.34 * wind_ms));
}

/** Reference evapotranspiration in mm a day from temperature alone. @source FAO-56 Eq. 52 */
export function hargreaves_mm(tmin_c: number, tmax_c: number, ra_MJ_m2: number): number {
  const mean_c = (tmin_c + tmax_c) / 2;
  return 0.0023 * (mean_c + 17.8) * Math.sqrt(tmax_c - tmin_c) * mmPerMJ_m2 * ra_MJ_m2;
}

/**
 * Eq. 6 for a day of solar radiation `solar_MJ_m2`, of which the share `received` reaches the ground.
 * The long-wave term keeps the sky's own Rs/Rso, so that shade does not count as cloud.
 */
export function penmanMonteithUnderSky_mm(
  air: { tmin_c: number; tmax_c: number; vapour_kPa: number; wind_ms: number; elevation_m: number },
  sun: { solar_MJ_m2: number; clearSky_MJ_m2: number },
  received: number,
): number {
  const longwave = netLongwave_MJ_m2(
    air.tmin_c,
    air.tmax_c,
    air.vapour_kPa,
    relativeShortwave(sun.solar_MJ_m2, sun.clearSky_MJ_m2),
  );
  return penmanMonteith_mm({
    tmin_c: air.tmin_c,
    tmax_c: air.tmax_c,
    vapour_kPa: air.vapour_kPa,
    wind_ms: air.wind_ms,
    net_MJ_m2: netShortwave_MJ_m2(received * sun.solar_MJ_m2) - longwave,
    soilHeat_MJ_m2: 0,
    elevation_m: air.elevation_m,
  });
}
