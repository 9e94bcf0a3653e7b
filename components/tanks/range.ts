import type { RoofBrings } from "../../src/report/roofs-bring.ts";
import type { TankStory } from "../../src/report/tanks-view.ts";

/** A ruler's ends and its step, in the units of what it sets. */
export interface Range {
  most: number;
  step: number;
}

/** The largest of 1, 2, 5 × 10ⁿ not above x. */
function roundStep(x: number): number {
  const size = 10 ** Math.floor(Math.log10(Math.max(x, 1e-9)));
  return Math.max(...[1, 2, 5].map((k) => k * size).filter((step) => step <= x * (1 + 1e-9)));
}

function rangeTo(least_most: number, now: number): Range {
  const step = Math.max(1, roundStep(least_most / 150));
  // the place where it stands now is one of its steps, or it could not be put back
  const fine = Number.isInteger(now / step) ? step : Math.max(1, roundStep(step / 10));
  const whole = Number.isInteger(now / fine) ? fine : 1;
  return { most: Math.ceil(least_most / whole) * whole, step: whole };
}

/** Four times the tank, or enough to try one where there is none worth the name. */
export function sizeRange({ capacity_L }: TankStory): Range {
  return rangeTo(Math.max(4 * capacity_L, 10_000), capacity_L);
}

/** All roofs of the site, or twice the tank's own where those are all. */
export function roofRange({ roof_m2 }: TankStory, roofs: readonly RoofBrings[]): Range {
  const all_m2 = roofs.reduce((sum, { area_m2 }) => sum + area_m2, 0);
  return rangeTo(Math.max(all_m2, 2 * roof_m2, 100), roof_m2);
}
