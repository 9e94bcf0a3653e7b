import type { GeneratorFactors } from "../../tables/weather-generator.ts";

/** Rain of a calendar month, day by day. */
export interface RainMonth {
  /** Share of days that are wet. */
  wetShare: number;
  /** Mean rain of a wet day. */
  wetDay_mm: number;
  /** Least rain of a wet day. */
  least_mm: number;
  /** Shape of the gamma distribution above the least. */
  shape: number;
}

/** Mean lengths of the months; February's over the leap cycle to a day in a hundred. */
const meanMonthLengths = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Rain of a wet day where normals have rain but no day to put it on. */
const unknownWetDay_mm = 5;

/**
 * A month's chain and amounts from its normals: rain and wet days. More wet days than the month has count as
 * all of them; wet days without rain count as dry, rain without wet days falls on days of 5 mm.
 * Amounts start from what the normals count as wet (half the mean, where that is less), so that wet days come
 * back as the normals count them; the mean is kept.
 * @param month 1–12
 * @param threshold_mm least rain of a day that the normals count as wet
 * @source Geng, Penning de Vries and Supit (1986), Agricultural and Forest Meteorology 36:363-376
 */
export function rainMonth(
  month: number,
  normals: { rain_mm: readonly number[]; rainDays: readonly number[] },
  threshold_mm: number,
  factors: GeneratorFactors,
): RainMonth {
  const rain_mm = normals.rain_mm[month - 1]!;
  const length = meanMonthLengths[month - 1]!;
  if (rain_mm <= 0) return { wetShare: 0, wetDay_mm: 0, least_mm: 0, shape: 1 };
  const days = normals.rainDays[month - 1]! > 0 ? normals.rainDays[month - 1]! : rain_mm / unknownWetDay_mm;
  const wetShare = Math.min(1, days / length);
  const wetDay_mm = rain_mm / (wetShare * length);
  const least_mm = Math.min(threshold_mm, wetDay_mm / 2);
  return { wetShare, wetDay_mm, least_mm, shape: gammaShape(wetDay_mm, factors) };
}

/**
 * Shape of the gamma distribution of wet days' rain: mean over scale, the scale a line in the mean.
 * Where the line gives no scale above zero the shape is the most it may be.
 */
export function gammaShape(wetDay_mm: number, factors: GeneratorFactors): number {
  const scale_mm = factors.gammaScaleAtZero_mm + factors.gammaScalePerMm * wetDay_mm;
  if (scale_mm <= 0) return factors.gammaShapeMost;
  return Math.min(factors.gammaShapeMost, Math.max(factors.gammaShapeLeast, wetDay_mm / scale_mm));
}

/**
 * Chance that a day is wet after a dry and after a wet one, such that its share of wet days is `today` where
 * yesterday's was `yesterday`. Within a month that is P(wet after dry) = (1 − λ) f and P(wet after wet) =
 * λ + (1 − λ) f with λ the persistence; across a month's end the persistence gives way where it must,
 * or the new month's first days would keep the old one's weather and its mean would not come back.
 */
export function wetChances(
  yesterday: number,
  today: number,
  persistence: number,
): { afterDry: number; afterWet: number } {
  if (yesterday >= 1) return { afterDry: today, afterWet: today };
  const least = (today - yesterday) / (1 - yesterday);
  const afterDry = Math.max(0, today - persistence * yesterday, least);
  const afterWet = yesterday > 0 ? (today - afterDry * (1 - yesterday)) / yesterday : today;
  return { afterDry, afterWet };
}
