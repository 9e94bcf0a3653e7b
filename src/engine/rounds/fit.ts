import { type Cost, costOf, runFit, weightOf } from "./cost.ts";
import type { FixedMonth } from "./fixed-run.ts";
import { chooseMonth, type FitInput, fixedMonth, giveMore, type MonthFit, neighbours } from "./month-fit.ts";
import { type MonthSums, meanOfMonth } from "./month-need.ts";

export interface FittedTable {
  months: FixedMonth[];
  /** What it gave in each year and month of its group. */
  sums: MonthSums;
  cost: Cost;
  /** Net water that each month asks for, mean over the group, mm. */
  wanted_mm: readonly number[];
}

/** Turns of mending at most; the best table met on the way is kept. */
const turns = 7;
/** Turns without a better table after which mending stops. */
const patience = 3;
/** Good enough to stop at. Ours. */
const goodEnough = 0.02;
/** Years run at most while single months are tried out. */
const polishYears = 60;
/** Tables tried at most while single months are. */
const mostTries = 30;
/** Stress days of a month that call for mending. */
const muchStress = 0.4;

/**
 * A month table for a group of years: each month's need shared out over the rarest days that keep a watering
 * within what the roots may lose, in whole minutes; then run through the engine and mended, month by month,
 * where it stresses the plants or gives more than need.
 */
export function fitTable(input: FitInput, group: readonly number[]): FittedTable {
  const wanted = wantedByMonth(input, group);
  const fits = input.choices.map((_, month) => chooseMonth(input, group, month, wanted[month]!));
  let best: { fits: MonthFit[]; table: Tried } | null = null;
  let sinceBest = 0;
  for (let turn = 0; turn < turns && sinceBest < patience; turn++) {
    const table = tryOut(input, group, fits);
    sinceBest++;
    if (!best || weightOf(table.cost) < weightOf(best.table.cost)) {
      best = { fits: fits.map((fit) => ({ ...fit })), table };
      sinceBest = 0;
    }
    if (weightOf(table.cost) < goodEnough || !mend(input, group, fits, wanted, table.sums)) break;
  }
  return { ...polish(input, group, best!.fits, best!.table), wanted_mm: wanted };
}

type Tried = Omit<FittedTable, "wanted_mm">;

function tryOut(input: FitInput, group: readonly number[], fits: readonly MonthFit[]): Tried {
  const months = fits.map((fit, month) => fixedMonth(input, fit, month));
  const sums = runFit(input, months, group);
  return { months, sums, cost: costOf(input.need, sums, group) };
}

/** Tries single months with a little less, a little more, rarer, oftener, or none, and keeps what costs less. */
function polish(input: FitInput, group: readonly number[], fits: readonly MonthFit[], table: Tried): Tried {
  let best = { fits: [...fits], table };
  let tries = Math.min(mostTries, Math.floor(polishYears / group.length));
  let found = true;
  while (found) {
    found = false;
    for (let month = 0; month < 12; month++)
      for (const other of neighbours(input, best.fits[month]!)) {
        if (tries-- <= 0 || weightOf(best.table.cost) < goodEnough) return best.table;
        const tried = best.fits.map((fit, m) => (m === month ? other : fit));
        const outcome = tryOut(input, group, tried);
        if (weightOf(outcome.cost) >= weightOf(best.table.cost) - 1e-4) continue;
        best = { fits: tried, table: outcome };
        found = true;
      }
  }
  return best.table;
}

/** So many years give a month a shape of its own; with fewer, that of all years has a part in it. Ours. */
const ownShapeYears = 6;

/** Each month's need, mean a year over a group: its own total, its shape joined with that of all years. */
function wantedByMonth({ need, years }: FitInput, group: readonly number[]): number[] {
  const all = years.map((_, k) => k);
  const months = Array.from({ length: 12 }, (_, month) => month);
  const own = months.map((month) => meanOfMonth(need.spread_mm, group, month));
  const usual = months.map((month) => meanOfMonth(need.spread_mm, all, month));
  const total = (figures: readonly number[]) => figures.reduce((sum, mm) => sum + mm, 0);
  const scale = total(usual) > 0 ? total(own) / total(usual) : 0;
  const weight = Math.min(1, group.length / ownShapeYears);
  return months.map((m) => weight * own[m]! + (1 - weight) * scale * usual[m]!);
}

/** Moves every month a step towards need; false where nothing is left to move. */
function mend(
  input: FitInput,
  group: readonly number[],
  fits: MonthFit[],
  wanted: readonly number[],
  given: MonthSums,
): boolean {
  let moved = false;
  for (let month = 0; month < 12; month++) {
    const stress =
      meanOfMonth(given.stressDays, group, month) - meanOfMonth(input.need.stressDays, group, month);
    const got_mm = meanOfMonth(given.net_mm, group, month);
    if (stress > muchStress) {
      const earlier = (month + 11) % 12;
      const short = meanOfMonth(given.net_mm, group, earlier) < wanted[earlier]!;
      moved = giveMore(input, group, fits, month, Math.min(1.25, 1 + 0.03 * stress)) || moved;
      if (short) moved = giveMore(input, group, fits, earlier, 1.1) || moved;
    } else if (got_mm > wanted[month]! && fits[month]!.at >= 0) {
      const fit = fits[month]!;
      fit.minutes = Math.max(1, fit.minutes * Math.max(0.8, (1 + wanted[month]! / got_mm) / 2) - 0.2);
      moved = true;
    }
  }
  return moved;
}
