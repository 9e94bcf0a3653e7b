import type { FixedMonth } from "./fixed-run.ts";
import { runTable } from "./fixed-run.ts";
import type { FitInput } from "./month-fit.ts";
import type { MonthSums, NeedOfBed } from "./month-need.ts";

/** What a table costs beside watering to need, means a year over the years that it was made for. */
export interface Cost {
  need_mm: number;
  given_mm: number;
  needStressDays: number;
  stressDays: number;
}

/** A day of stress weighs as much as 1.5 % of the water. Ours. */
const stressWeight = 0.015;
/** Beyond this much more water, or so many more days of stress, each weighs three times as much. Ours. */
const much_water = 0.06;
const much_stress = 6;
const beyondWeight = 3;

/** Runs a table over a group of years. */
export function runFit(input: FitInput, months: readonly FixedMonth[], group: readonly number[]): MonthSums {
  const { bed, open, calendar, years, need, scratch_mm } = input;
  return runTable(months, bed, open, calendar, years, group, need.startOfYear, scratch_mm);
}

/** What a run cost, mean a year over a group. */
export function costOf(need: NeedOfBed, given: MonthSums, group: readonly number[]): Cost {
  const mean = (sums: Float64Array) => {
    let total = 0;
    for (const k of group) for (let month = 0; month < 12; month++) total += sums[12 * k + month]!;
    return total / group.length;
  };
  return {
    need_mm: mean(need.net_mm),
    given_mm: mean(given.net_mm),
    needStressDays: mean(need.stressDays),
    stressDays: mean(given.stressDays),
  };
}

/** Water beyond need as a share of it, and stress beyond need's in days, on one scale. */
export function weightOf({ need_mm, given_mm, needStressDays, stressDays }: Cost): number {
  const water = need_mm > 0 ? Math.max(0, given_mm / need_mm - 1) : given_mm > 0 ? 1 : 0;
  const stress = Math.max(0, stressDays - needStressDays);
  return dearer(water, much_water) + stressWeight * dearer(stress, much_stress);
}

function dearer(cost: number, much: number): number {
  return cost + (beyondWeight - 1) * Math.max(0, cost - much);
}
