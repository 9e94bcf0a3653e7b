/** Columns that a daily weather record may have; the contract's names. */
export const weatherColumns = [
  "rain_mm",
  "et0_mm",
  "tmin_c",
  "tmax_c",
  "tdew_c",
  "vp_kpa",
  "rhmin_pct",
  "rhmax_pct",
  "rhmean_pct",
  "wind_ms",
  "solar_MJ_m2",
  "sun_h",
] as const;

export type WeatherColumn = (typeof weatherColumns)[number];

/**
 * A daily record as read: one slot a calendar day from the first date to the last, NaN where nothing
 * was recorded (a blank cell, or a date the file leaves out). A column that the record does not have,
 * or that is blank throughout, is absent.
 */
export interface WeatherRecord {
  /** Day number of the first slot, days since 1970-01-01 UTC. */
  firstDay: number;
  days: number;
  columns: Partial<Record<WeatherColumn, Float64Array>> & { rain_mm: Float64Array };
}
