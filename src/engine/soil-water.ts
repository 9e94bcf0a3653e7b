import type { Mulch } from "./grounds.ts";

/**
 * The equations of a bed's daily water: FAO-56 chapters 7 and 8 with the dual coefficient. Depths in mm
 * over the bed, shares 0–1. Each is one line of the daily step, and what a figure's working shows. They compare
 * instead of calling min and max: the step runs hundreds of thousands of times for one answer.
 */

/** Water that roots can take between field capacity and wilting, mm. @source FAO-56 Eq. 82 */
export function totalAvailable_mm(fieldCapacity: number, wiltingPoint: number, rootDepth_m: number): number {
  return 1000 * (fieldCapacity - wiltingPoint) * rootDepth_m;
}

/**
 * Share of evaporation that mulch takes away: its full cut by its cover, less where it is thinner than
 * its full depth.
 * @source FAO-56 chapter 10 (5 % for 10 % covered with organic mulch); depth: common practice
 */
export function mulchCut({ cut, fullDepth_mm, cover, depth_mm }: Mulch): number {
  const depthShare = fullDepth_mm > 0 ? Math.min(1, depth_mm / fullDepth_mm) : 1;
  return cut * cover * depthShare;
}

/** Share of the surface that is both wetted and bare to the sky. @source FAO-56 Eq. 75 */
export function exposedWetted(leafCover: number, wettedShare: number, drip: boolean): number {
  const wetted = drip ? (1 - 0.67 * leafCover) * wettedShare : wettedShare;
  return Math.min(1 - leafCover, wetted);
}

/** Evaporation reduction Kr of a drying surface. @source FAO-56 Eq. 74 */
export function evaporationReduction(depletion_mm: number, tew_mm: number, rew_mm: number): number {
  if (depletion_mm <= rew_mm) return 1;
  return depletion_mm >= tew_mm ? 0 : (tew_mm - depletion_mm) / (tew_mm - rew_mm);
}

/** Soil evaporation coefficient Ke under mulch. @source FAO-56 Eq. 71, less the mulch's cut */
export function evaporationCoefficient(
  mulchCut: number,
  reduction: number,
  kcMax: number,
  kcb: number,
  exposed: number,
): number {
  const energy = reduction * (kcMax - kcb);
  const surface = exposed * kcMax;
  return (1 - mulchCut) * (energy < surface ? energy : surface);
}

/** Depletion fraction p for a day's demand, held to 0.1–0.8. @source FAO-56 Table 22, footnote */
export function adjustedFraction(tableFraction: number, demand_mm: number): number {
  const fraction = tableFraction + 0.04 * (5 - demand_mm);
  if (fraction < 0.1) return 0.1;
  return fraction > 0.8 ? 0.8 : fraction;
}

/** Stress coefficient Ks. @source FAO-56 Eq. 84 */
export function stress(depletion_mm: number, fraction: number, available_mm: number): number {
  if (depletion_mm <= fraction * available_mm) return 1;
  return (available_mm - depletion_mm) / ((1 - fraction) * available_mm);
}
