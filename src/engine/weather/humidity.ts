import { leastHumidity_pct, saturation_kPa, vapourFromMean_kPa, vapourFromRange_kPa } from "../air.ts";
import type { WeatherColumn } from "./record.ts";

type Columns = Partial<Record<WeatherColumn, Float64Array>>;
/** Actual vapour pressure ea of day i, kPa. */
export type VapourOfDay = (i: number) => number;

/**
 * ea by the first humidity column that the record has, in the order tdew, vp, both ends, mean
 * (FAO-56 Eq. 14, as given, 17, 19); null where the record has none that can be used.
 */
export function vapourFromRecord(columns: Columns): VapourOfDay | null {
  const { tdew_c, vp_kpa, rhmin_pct, rhmax_pct, rhmean_pct, tmin_c, tmax_c } = columns;
  if (tdew_c) return (i) => saturation_kPa(tdew_c[i]!);
  if (vp_kpa) return (i) => vp_kpa[i]!;
  if (!tmin_c || !tmax_c) return null;
  if (rhmin_pct && rhmax_pct)
    return (i) => vapourFromRange_kPa(tmin_c[i]!, tmax_c[i]!, rhmin_pct[i]!, rhmax_pct[i]!);
  if (rhmean_pct) return (i) => vapourFromMean_kPa(tmin_c[i]!, tmax_c[i]!, rhmean_pct[i]!);
  return null;
}

/** ea where the record has no humidity: the dew point is taken as Tmin. @source FAO-56 Eq. 48 */
export function vapourFromTmin(tmin_c: Float64Array): VapourOfDay {
  return (i) => saturation_kPa(tmin_c[i]!);
}

/** Least relative humidity of each day, as recorded or 100 ea/e°(Tmax); null where neither can be had. */
export function leastHumidityFromRecord(columns: Columns): ((i: number) => number) | null {
  const { rhmin_pct, tmax_c } = columns;
  if (rhmin_pct) return (i) => rhmin_pct[i]!;
  const vapour = vapourFromRecord(columns);
  return vapour && tmax_c ? (i) => leastHumidity_pct(vapour(i), tmax_c[i]!) : null;
}
