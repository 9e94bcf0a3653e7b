/**
 * Radiation of a day on level ground, after FAO-56 chapter 3. Radiation in MJ/m² a day, latitudes in
 * degrees (south negative), day of year 1–366.
 */

const solarConstant_MJ_m2_min = 0.082;
const stefanBoltzmann_MJ_K4_m2 = 4.903e-9;
const zeroCelsius_K = 273.16;
/** Albedo of the reference grass. @source FAO-56 Eq. 38 */
const albedo = 0.23;

/** Solar declination, radians. @source FAO-56 Eq. 24 */
export function declination_rad(dayOfYear: number): number {
  return 0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39);
}

/** Inverse relative distance to the sun. @source FAO-56 Eq. 23 */
export function inverseDistance(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
}

/** Sunset hour angle, radians; 0 where the sun stays down, π where it stays up. @source FAO-56 Eq. 25 */
export function sunsetAngle_rad(latitude_deg: number, dayOfYear: number): number {
  const cosine = -Math.tan((latitude_deg * Math.PI) / 180) * Math.tan(declination_rad(dayOfYear));
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}

/** Daylight hours N. @source FAO-56 Eq. 34 */
export function daylight_h(latitude_deg: number, dayOfYear: number): number {
  return (24 / Math.PI) * sunsetAngle_rad(latitude_deg, dayOfYear);
}

/** Extraterrestrial radiation Ra. @source FAO-56 Eq. 21 */
export function extraterrestrial_MJ_m2(latitude_deg: number, dayOfYear: number): number {
  const latitude_rad = (latitude_deg * Math.PI) / 180;
  const delta = declination_rad(dayOfYear);
  const sunset = sunsetAngle_rad(latitude_deg, dayOfYear);
  const ra =
    ((24 * 60) / Math.PI) *
    solarConstant_MJ_m2_min *
    inverseDistance(dayOfYear) *
    (sunset * Math.sin(latitude_rad) * Math.sin(delta) +
      Math.cos(latitude_rad) * Math.cos(delta) * Math.sin(sunset));
  return Math.max(0, ra);
}

/** Solar radiation from hours of sunshine, as 0.25 and as + bs = 0.75. @source FAO-56 Eq. 35 */
export function solarFromSunshine_MJ_m2(sun_h: number, daylight_h: number, ra_MJ_m2: number): number {
  return daylight_h > 0 ? (0.25 + (0.5 * sun_h) / daylight_h) * ra_MJ_m2 : 0;
}

/** kRs of Eq. 50. @source FAO-56 chapter 3, interior 0.16 and coastal 0.19 */
export const temperatureRangeFactor = { inland: 0.16, coastal: 0.19 } as const;

/** Solar radiation from the day's range of temperature. @source FAO-56 Eq. 50 */
export function solarFromTemperature_MJ_m2(
  tmin_c: number,
  tmax_c: number,
  ra_MJ_m2: number,
  kRs: number,
): number {
  return kRs * Math.sqrt(tmax_c - tmin_c) * ra_MJ_m2;
}

/** Clear-sky radiation Rso. @source FAO-56 Eq. 37 */
export function clearSky_MJ_m2(elevation_m: number, ra_MJ_m2: number): number {
  return (0.75 + 2e-5 * elevation_m) * ra_MJ_m2;
}

/** Rs/Rso, never above 1; 1 where there is no sun at all. @source FAO-56, limit of Eq. 39 */
export function relativeShortwave(solar_MJ_m2: number, clearSky_MJ_m2: number): number {
  return clearSky_MJ_m2 > 0 ? Math.min(1, solar_MJ_m2 / clearSky_MJ_m2) : 1;
}

/** Net short-wave radiation. @source FAO-56 Eq. 38 */
export function netShortwave_MJ_m2(solar_MJ_m2: number): number {
  return (1 - albedo) * solar_MJ_m2;
}

/** Net outgoing long-wave radiation. @source FAO-56 Eq. 39 */
export function netLongwave_MJ_m2(
  tmin_c: number,
  tmax_c: number,
  vapour_kPa: number,
  relativeShortwave: number,
): number {
  const fourthPowers = ((tmax_c + zeroCelsius_K) ** 4 + (tmin_c + zeroCelsius_K) ** 4) / 2;
  return (
    stefanBoltzmann_MJ_K4_m2 *
    fourthPowers *
    (0.34 - 0.14 * Math.sqrt(vapour_kPa)) *
    (1.35 * relativeShortwave - 0.35)
  );
}

/** Soil heat flux of a month from its neighbours' mean temperatures. @source FAO-56 Eq. 43 */
export function monthlySoilHeat_MJ_m2(previous_c: number, next_c: number): number {
  return 0.07 * (next_c - previous_c);
}
