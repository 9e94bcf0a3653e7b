import { mostProven } from "./frontier.ts";

/** What is done in which year. */
export interface YearStep {
  /** 1 is the first year. */
  year: number;
  measures: number[];
  /** Spent up to and with this year. */
  spent: number;
  /** Saved a year from then on. */
  saved: number;
}

/**
 * The order in which measures bought from a yearly budget save most over the years. What a year leaves over is kept for
 * the next, and a measure saves from the year on in which it can be paid for. All orders are weighed, by the sets that
 * they pass through. @source Held and Karp 1962, Journal of the SIAM 10:196–210, dynamic programming over sets
 * @param saved a year with a set done; sets are bit patterns
 * @returns null where no order can be weighed: no budget, or more measures than can be counted out
 */
export function bestOrder(
  costs: readonly number[],
  budgetPerYear: number,
  years: number,
  saved: (mask: number) => number,
): YearStep[] | null {
  if (budgetPerYear <= 0 || costs.length > mostProven) return null;
  const all = 2 ** costs.length;
  const yearOf = Array.from({ length: all }, (_, mask) => {
    const cost = costs.reduce((sum, each, i) => sum + ((mask >> i) & 1 ? each : 0), 0);
    return Math.max(1, Math.ceil(cost / budgetPerYear - 1e-9));
  });
  const values = Float64Array.from({ length: all }, (_, mask) => saved(mask));
  const until = new Float64Array(all).fill(Number.NEGATIVE_INFINITY);
  const last = new Int8Array(all).fill(-1);
  until[0] = 0;
  const yearsFrom = (mask: number) => Math.min(yearOf[mask]!, years + 1);
  for (let mask = 1; mask < all; mask++)
    for (let i = 0; i < costs.length; i++) {
      if (!((mask >> i) & 1)) continue;
      const before = mask & ~(1 << i);
      const value =
        until[before]! + values[before]! * (yearsFrom(mask) - (before === 0 ? 1 : yearsFrom(before)));
      if (value > until[mask]! + 1e-9 * Math.abs(value)) {
        until[mask] = value;
        last[mask] = i;
      }
    }
  const worth = (mask: number) =>
    until[mask]! + values[mask]! * (years + 1 - (mask === 0 ? 1 : yearsFrom(mask)));
  let end = 0;
  for (let mask = 1; mask < all; mask++)
    if (yearOf[mask]! <= years && worth(mask) > worth(end) + 1e-9 * Math.abs(worth(mask))) end = mask;
  return stepsTo(end, last, yearOf, costs, values);
}

function stepsTo(
  end: number,
  last: Int8Array,
  yearOf: readonly number[],
  costs: readonly number[],
  values: Float64Array,
): YearStep[] {
  const order: number[] = [];
  for (let mask = end; mask > 0; mask &= ~(1 << last[mask]!)) order.unshift(last[mask]!);
  const steps: YearStep[] = [];
  let mask = 0;
  let spent = 0;
  for (const i of order) {
    mask |= 1 << i;
    spent += costs[i]!;
    const year = yearOf[mask]!;
    const now = steps.at(-1);
    if (now?.year === year)
      Object.assign(now, { measures: [...now.measures, i], spent, saved: values[mask]! });
    else steps.push({ year, measures: [i], spent, saved: values[mask]! });
  }
  return steps;
}
