import type { Bed, Planting, Stand } from "./grounds.ts";

/** Eq. 70 is for coefficients above this. @source FAO-56 Eq. 70 */
const adjustedAbove = 0.45;

/**
 * Density coefficient Kd: how much of a full cover's Kcb a thinner one has.
 * @param leafCover fc, held within 0.01–0.99
 * @param thin ML, what a thin cover can draw for each share of ground: 1.5 here (1.5–2.0)
 * @source Allen and Pereira 2009, Irrigation Science 28:17–34
 */
export function density(leafCover: number, height_m: number, thin = 1.5): number {
  const fc = heldCover(leafCover);
  return Math.min(1, thin * fc, fc ** (1 / (1 + height_m)));
}

/** fc within 0.01–0.99. @source FAO-56 Eq. 74–76 text */
export function heldCover(leafCover: number): number {
  return Math.min(0.99, Math.max(0.01, leafCover));
}

/** Height's part of Eq. 70, within 0.1–10 m. @source FAO-56 Eq. 70 */
export function heightTerm(height_m: number): number {
  return (Math.min(10, Math.max(0.1, height_m)) / 3) ** 0.3;
}

/** Kcb at full cover in a day's climate; `climate` is 0.04 (u2 − 2) − 0.004 (RHmin − 45). @source FAO-56 Eq. 70 */
export function climateAdjustedKcb(kcbFull: number, climate: number, height_m: number): number {
  return kcbFull > adjustedAbove ? kcbFull + climate * heightTerm(height_m) : kcbFull;
}

/** Height's part of Eq. 72, without Eq. 70's limits. @source FAO-56 Eq. 72 */
export function kcMaxHeightTerm(height_m: number): number {
  return (height_m / 3) ** 0.3;
}

/** Upper limit of evaporation and transpiration from any cropped surface. @source FAO-56 Eq. 72 */
export function kcMax(climate: number, heightTerm: number, kcb: number): number {
  const energy = 1.2 + climate * heightTerm;
  const cropped = kcb + 0.05;
  return energy > cropped ? energy : cropped;
}

/**
 * A bed's Kcb by month as `base + slope × climate`: each planting's Kd × (Kcb_full + climate term) × its
 * monthly multiplier, weighted by share. Linear in the weather, so a day costs one multiplication.
 */
export interface KcbByMonth {
  base: Float64Array;
  slope: Float64Array;
}

/** @source Allen and Pereira 2009 (the low end of ML); Kc_min: method of this project */
const usualStand: Stand = { thin: 1.5, kcMin: 0 };

/** @param establishing take each dated planting's establishing figure instead of its grown one */
export function kcbByMonth(bed: Bed, establishing: boolean): KcbByMonth {
  const { thin, kcMin } = bed.stand ?? usualStand;
  const base = new Float64Array(12);
  const slope = new Float64Array(12);
  for (const planting of bed.plantings) {
    const figure = (establishing && planting.establishing) || planting;
    const adjusts = figure.climateAdjusted && figure.kcbFull > adjustedAbove;
    for (let month = 0; month < 12; month++) {
      const kd = density(bed.leafCover[month]!, planting.height_m, thin);
      const weight = planting.share * planting.monthly[month]!;
      base[month]! += weight * (kd * figure.kcbFull + (1 - kd) * Math.min(kcMin, figure.kcbFull));
      if (adjusts) slope[month]! += weight * kd * heightTerm(planting.height_m);
    }
  }
  return { base, slope };
}

/** Mean of a figure over a bed's plantings by share. */
export function shareMean(plantings: readonly Planting[], figure: (planting: Planting) => number): number {
  return plantings.reduce((sum, planting) => sum + planting.share * figure(planting), 0);
}

/** Root depth, depletion fraction and height of a bed: its own, else its plantings' by share. */
export function bedRoots(bed: Bed): { rootDepth_m: number; depletionFraction: number; height_m: number } {
  return {
    rootDepth_m: bed.rootDepth_m ?? shareMean(bed.plantings, (p) => p.rootDepth_m),
    depletionFraction: bed.depletionFraction ?? shareMean(bed.plantings, (p) => p.depletionFraction),
    height_m: shareMean(bed.plantings, (p) => p.height_m),
  };
}
