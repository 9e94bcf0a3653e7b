import type { MainsYear } from "./outcome.ts";

/** The 10, 50 and 90 % points of a set of figures. */
export interface Points {
  p10: number;
  p50: number;
  p90: number;
}

/** Quantile linear between order statistics. @source Hyndman and Fan 1996, American Statistician 50:361–365, type 7 */
export function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const below = Math.floor(at);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below]! + (at - below) * (sorted[above]! - sorted[below]!);
}

/** 10, 50 and 90 % points; null of nothing. */
export function points(figures: readonly number[]): Points | null {
  if (figures.length === 0) return null;
  const sorted = [...figures].sort((a, b) => a - b);
  return { p10: quantile(sorted, 0.1), p50: quantile(sorted, 0.5), p90: quantile(sorted, 0.9) };
}

/** Mains water given up in each whole year: today's less the plan's, litres. */
export function giveUpByYear_L(byYear: readonly MainsYear[]): number[] {
  return byYear.map((year) => year.today_L - year.plan_L);
}

/** The whole years whose need is nearest its own 90 % and 10 % points; of two as near, the earlier. */
export function dryAndWetYear(byYear: readonly MainsYear[]): {
  dryYear: number | null;
  wetYear: number | null;
} {
  const need = points(byYear.map((year) => year.need_L));
  if (!need) return { dryYear: null, wetYear: null };
  return { dryYear: nearestYear(byYear, need.p90), wetYear: nearestYear(byYear, need.p10) };
}

/** The whole year whose need is nearest its own middle; of two as near, the earlier. */
export function middleYear(byYear: readonly MainsYear[]): number | null {
  const need = points(byYear.map((year) => year.need_L));
  return need && nearestYear(byYear, need.p50);
}

function nearestYear(byYear: readonly MainsYear[], need_L: number): number {
  const tie_L = 1e-6;
  let best = byYear[0]!;
  for (const year of byYear)
    if (Math.abs(year.need_L - need_L) < Math.abs(best.need_L - need_L) - tie_L) best = year;
  return best.year;
}
