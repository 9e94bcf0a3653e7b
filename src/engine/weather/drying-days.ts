import type { GeneratorFactors } from "../../tables/weather-generator.ts";
import { logNormal } from "./variates.ts";

/**
 * Reference evapotranspiration by day where normals have nothing but its monthly mean: less on wet days than on
 * dry ones by a set ratio, log-normal round that, each day leaning on the one before. The mean is kept.
 * @param normal draws from the standard normal distribution
 * @returns ET0 of the next day, mm, from its mean, the share of wet days and whether it is wet
 */
export function dryingCourse(
  factors: GeneratorFactors,
  normal: () => number,
): (mean_mm: number, wetShare: number, wet: boolean) => number {
  const ratio = factors.et0WetOverDry;
  const lag = factors.et0OnDayBefore;
  const fresh = Math.sqrt(1 - lag * lag);
  let residual = normal();
  return (mean_mm, wetShare, wet) => {
    residual = lag * residual + fresh * normal();
    const dry_mm = mean_mm / (ratio * wetShare + 1 - wetShare);
    return (wet ? ratio * dry_mm : dry_mm) * logNormal(factors.et0Spread, residual);
  };
}
