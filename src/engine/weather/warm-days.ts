import type { Curve, GeneratorFactors } from "../../tables/weather-generator.ts";
import { logNormal } from "./variates.ts";

/** What is left of tmax and tmin when their means are taken off, over their standard deviations. */
export interface Residuals {
  tmax: number;
  tmin: number;
}

/**
 * The day-to-day course of the residuals: x_i = A x_{i−1} + B e, each of variance 1, with the correlations
 * of the same day (ρ) and of the day before. A = M1 M0⁻¹; B Bᵀ = M0 − A M1ᵀ, B lower triangular.
 * Richardson's third variable, the sun, is left out, and A and B are worked out again for the other two.
 * @param normal draws from the standard normal distribution
 * @source Richardson (1981), Water Resources Research 17:182-190, after Matalas (1967)
 */
export function residualCourse(lag: GeneratorFactors["lag"], normal: () => number): () => Residuals {
  const rho = lag.sameDay;
  const across = 1 - rho * rho;
  const axx = (lag.maxOnMax - rho * lag.maxOnMin) / across;
  const axn = (lag.maxOnMin - rho * lag.maxOnMax) / across;
  const anx = (lag.minOnMax - rho * lag.minOnMin) / across;
  const ann = (lag.minOnMin - rho * lag.minOnMax) / across;
  const bxx = Math.sqrt(1 - axx * lag.maxOnMax - axn * lag.maxOnMin);
  const bnx = (rho - anx * lag.maxOnMax - ann * lag.maxOnMin) / bxx;
  const bnn = Math.sqrt(1 - anx * lag.minOnMax - ann * lag.minOnMin - bnx * bnx);

  let tmax = normal();
  let tmin = rho * tmax + Math.sqrt(across) * normal();
  return () => {
    const ex = normal();
    const en = normal();
    const before = { tmax, tmin };
    tmax = axx * before.tmax + axn * before.tmin + bxx * ex;
    tmin = anx * before.tmax + ann * before.tmin + bnx * ex + bnn * en;
    return { tmax, tmin };
  };
}

/** A day to be given its temperatures. */
export interface DayMeans {
  tmax_c: number;
  tmin_c: number;
  /** Mean range between the two. */
  range_c: number;
  wetShare: number;
  wet: boolean;
}

/** Outside of this a record's temperature is refused. */
const coldest_c = -60;
const warmest_c = 60;

/**
 * Lowest and highest temperature of a wet or a dry day. Wet and dry days stand apart, wet ones by (1 − f) of
 * the difference and dry ones by f, so that the mean over both stays. The middle of the two is normal and
 * their range log-normal, each with the mean and variance that Richardson's bivariate normal gives: so tmin
 * never passes tmax, and neither mean is bent, as it would be by swapping or cutting.
 */
export function dayTemperatures(
  day: DayMeans,
  residuals: Residuals,
  factors: GeneratorFactors,
): { tmin_c: number; tmax_c: number } {
  const dTmax = along(factors.dryLessWetTmax_c, day.tmax_c);
  const dTmin = along(factors.dryLessWetTmin_c, day.tmin_c);
  const apart = day.wet ? day.wetShare - 1 : day.wetShare;
  // At most half the range, or a wet day's could close where the days are nearly even.
  const dRange = Math.min(day.range_c / 2, Math.max(-day.range_c / 2, dTmax - dTmin));
  const range_c = day.range_c + apart * dRange;
  const middle_c = (day.tmax_c + day.tmin_c) / 2 + (apart * (dTmax + dTmin)) / 2;

  const sTmax = along(day.wet ? factors.spreadTmaxWet_c : factors.spreadTmaxDry_c, day.tmax_c);
  const sTmin = along(day.wet ? factors.spreadTminWet_c : factors.spreadTminDry_c, day.tmin_c);
  const offMax = sTmax * residuals.tmax;
  const offMin = sTmin * residuals.tmin;
  const spreadOfRange = Math.sqrt(sTmax ** 2 + sTmin ** 2 - 2 * factors.lag.sameDay * sTmax * sTmin);
  const drawnRange_c =
    range_c > 0 ? range_c * logNormal(spreadOfRange / range_c, (offMax - offMin) / spreadOfRange) : 0;
  const drawnMiddle_c = middle_c + (offMax + offMin) / 2;
  return {
    tmin_c: Math.max(coldest_c, Math.min(warmest_c, drawnMiddle_c - drawnRange_c / 2)),
    tmax_c: Math.max(coldest_c, Math.min(warmest_c, drawnMiddle_c + drawnRange_c / 2)),
  };
}

/** The value of a curve at a temperature. */
export function along(curve: Curve, at_c: number): number {
  const { at_c: points, value } = curve;
  let next = 0;
  while (next < points.length && points[next]! <= at_c) next++;
  if (next === 0) return value[0]!;
  if (next === points.length) return value[next - 1]!;
  const from = points[next - 1]!;
  const share = (at_c - from) / (points[next]! - from);
  return value[next - 1]! + share * (value[next]! - value[next - 1]!);
}
