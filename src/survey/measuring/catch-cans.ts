import { distributionUniformity } from "../../engine/uniformity.ts";
import { type Rng, randomStream } from "../../engine/weather/rng.ts";
import type { Figure } from "./figure.ts";
import { mean } from "./repeats.ts";

export interface Uniformity extends Figure {
  /** 95 % interval by resampling the cans. */
  low: number;
  high: number;
}

const draws = 1000;

/**
 * Distribution uniformity of a catch-can test with its interval: the cans drawn anew with replacement, from a
 * stated seed, and the 2.5 and 97.5 % points of what comes. Few cans make it narrow and a little high.
 * @source percentile bootstrap, Efron 1979, Annals of Statistics 7:1–26
 */
export function uniformityWithInterval(cans_mL: readonly number[], seed = 1): Uniformity {
  const rng = randomStream(seed);
  const drawn = Array.from({ length: draws }, () => distributionUniformity(redrawn(cans_mL, rng)))
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const at = (share: number) => drawn[Math.round(share * (drawn.length - 1))]!;
  const middle = mean(drawn);
  const variance = drawn.reduce((sum, du) => sum + (du - middle) ** 2, 0) / (drawn.length - 1);
  return {
    figure: distributionUniformity(cans_mL),
    standardError: Math.sqrt(variance),
    low: at(0.025),
    high: at(0.975),
  };
}

function redrawn(cans: readonly number[], rng: Rng): number[] {
  return cans.map(() => cans[Math.floor(rng.uniform() * cans.length)]!);
}

/** Depth of water an hour that the cans caught on the mean, mm/h; 1 mL over 1,000 mm² is 1 mm. */
export function precipitationRate_mm_h(
  cans_mL: readonly number[],
  across_mm: number,
  minutes: number,
): number {
  const mouth_mm2 = (Math.PI / 4) * across_mm ** 2;
  return ((1000 * mean(cans_mL)) / mouth_mm2) * (60 / minutes);
}
