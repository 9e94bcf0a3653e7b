import type { Points } from "./give-up.ts";
import { points } from "./give-up.ts";

/** Mains water given up in each draw of the unknowns, year by year. */
export interface DrawnYears {
  /** For each draw the figure of each year of the record. */
  byDraw: readonly (readonly number[])[];
}

/** 10, 50 and 90 % points over all draws and years together: which year it will be is unknown too. */
export function pooledPoints({ byDraw }: DrawnYears): Points | null {
  return points(byDraw.flat());
}

/** What one unknown brings to the width: the share of the variance that goes with it. */
export interface UnknownShare {
  at: string;
  share: number;
}

/** The name under which the weather of the years stands among the unknowns. */
export const weatherUnknown = "weather";

/**
 * Shares of the variance over draws and years. The years' is what varies within a draw. An unknown's is the square of
 * its correlation with the draw's mean, less what chance alone would give; unknowns are drawn independently, so these
 * add up, but for what only goes with two at once. Largest first.
 * @param places each unknown's place in its range by draw
 */
export function sharesOfWidth(
  { byDraw }: DrawnYears,
  places: ReadonlyMap<string, Float64Array>,
): UnknownShare[] {
  const { within, between, means } = widthOf({ byDraw });
  const all = within + between;
  if (all <= 0) return [];
  const shares = [...places].map(([at, drawn]) => ({
    at,
    share: (between / all) * explained(drawn, means),
  }));
  return [{ at: weatherUnknown, share: within / all }, ...shares]
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}

/** The variance of draws and years in its two parts: that of the years within a draw, and that of the draws' means. */
export function widthOf({ byDraw }: DrawnYears): { within: number; between: number; means: number[] } {
  const means = byDraw.map(mean);
  return { within: mean(byDraw.map(variance)), between: variance(means), means };
}

/** R² of one unknown, adjusted for what as many draws of nothing would give. @source Wherry 1931 */
export function explained(drawn: Float64Array, outcome: readonly number[]): number {
  const used = outcome.flatMap((_, k) => (Number.isNaN(drawn[k]!) ? [] : k));
  const n = used.length;
  if (n < 3) return 0;
  const x = used.map((k) => drawn[k]!);
  const y = used.map((k) => outcome[k]!);
  const spread = variance(x) * variance(y);
  if (spread <= 0) return 0;
  const [meanX, meanY] = [mean(x), mean(y)];
  const together = mean(x.map((each, k) => (each - meanX) * (y[k]! - meanY)));
  const squared = together ** 2 / spread;
  return Math.max(0, 1 - ((1 - squared) * (n - 1)) / (n - 2));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function variance(values: readonly number[]): number {
  const middle = mean(values);
  return mean(values.map((value) => (value - middle) ** 2));
}

/** How often one thing does better than another under the same draws, and how often as well. */
export function winsOver(one: readonly number[], other: readonly number[]): { wins: number; ties: number } {
  let wins = 0;
  let ties = 0;
  one.forEach((value, k) => {
    if (value > other[k]!) wins++;
    if (value === other[k]!) ties++;
  });
  return { wins, ties };
}

/** The chance that one thing does better than another under the same draws; half of the ties count for each. */
export function chanceBetter(one: readonly number[], other: readonly number[]): number {
  const { wins, ties } = winsOver(one, other);
  return (wins + ties / 2) / one.length;
}
