/**
 * Air: pressure, vapour and wind as FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and
 * Smith 1998), chapter 3, has them. Temperatures in °C, pressures in kPa, wind in m/s.
 */

/** Atmospheric pressure at a height above sea level. @source FAO-56 Eq. 7 */
export function pressure_kPa(elevation_m: number): number {
  return 101.3 * ((293 - 0.0065 * elevation_m) / 293) ** 5.26;
}

/** Psychrometric constant, kPa/°C. @source FAO-56 Eq. 8 */
export function psychrometric_kPa_C(pressure_kPa: number): number {
  return 0.665e-3 * pressure_kPa;
}

/** Saturation vapour pressure e°(T). @source FAO-56 Eq. 11 */
export function saturation_kPa(temperature_c: number): number {
  return 0.6108 * Math.exp((17.27 * temperature_c) / (temperature_c + 237.3));
}

/** Mean saturation vapour pressure of a day. @source FAO-56 Eq. 12 */
export function meanSaturation_kPa(tmin_c: number, tmax_c: number): number {
  return (saturation_kPa(tmax_c) + saturation_kPa(tmin_c)) / 2;
}

/** Slope of the saturation curve Δ, kPa/°C. @source FAO-56 Eq. 13 */
export function saturationSlope_kPa_C(temperature_c: number): number {
  return (4098 * saturation_kPa(temperature_c)) / (temperature_c + 237.3) ** 2;
}

/** Actual vapour pressure from a wet- and dry-bulb pair. @source FAO-56 Eq. 15 and 16 */
export function vapourFromBulbs_kPa(
  dry_c: number,
  wet_c: number,
  pressure_kPa: number,
  coefficient_C: number,
): number {
  return saturation_kPa(wet_c) - coefficient_C * pressure_kPa * (dry_c - wet_c);
}

/** Actual vapour pressure from both ends of the day's relative humidity. @source FAO-56 Eq. 17 */
export function vapourFromRange_kPa(
  tmin_c: number,
  tmax_c: number,
  rhmin_pct: number,
  rhmax_pct: number,
): number {
  return ((saturation_kPa(tmin_c) * rhmax_pct) / 100 + (saturation_kPa(tmax_c) * rhmin_pct) / 100) / 2;
}

/** Actual vapour pressure from mean relative humidity. @source FAO-56 Eq. 19 */
export function vapourFromMean_kPa(tmin_c: number, tmax_c: number, rhmean_pct: number): number {
  return (rhmean_pct / 100) * meanSaturation_kPa(tmin_c, tmax_c);
}

/** Least relative humidity of a day, from its vapour pressure. @source FAO-56 Eq. 10, at Tmax */
export function leastHumidity_pct(vapour_kPa: number, tmax_c: number): number {
  return (100 * vapour_kPa) / saturation_kPa(tmax_c);
}

/** Wind at 2 m from wind at another height over grass. @source FAO-56 Eq. 47 */
export function windAt2m_ms(wind_ms: number, height_m: number): number {
  return (wind_ms * 4.87) / Math.log(67.8 * height_m - 5.42);
}
