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
/** Years run while a bed's single months are tried out: what a site of forty beds leaves it, more with fewer beds. */
const leastPolishYears = 50;
const sharedPolishYears = 14_000;
const fullSite_beds = 40;
/** Years that stand for a group while a table is mended and tried: more where there is time to try them often. */
const leastTrialYears = 10;
const mostTrialYears = 24;
const triesOfEach = 40;
/** Part of a watering by which its minutes are tried longer and shorter, at first and at last. */
const coarseStep = 0.12;
const fineStep = 0.05;
/** Tables tried at most while single months are. */
const mostTries = 160;
/** Stress days of a month that call for mending. */
const muchStress = 0.4;

/** What a table is fitted to. */
export interface FitAim {
  /** Places of the years whose need it shares out. */
  group: readonly number[];
  /** Places of the years that it will be kept in: what it costs there is kept small. */
  judged: readonly number[];
  /** Beds of the site that are fitted likewise, and share the time. */
  beds: number;
}

/**
 * A month table for a group of years: each month's need shared out over the rarest days that keep a watering
 * within what the roots may lose, in whole minutes; then run through the engine and mended, month by month,
 * where it stresses the plants or gives more than need.
 */
export function fitTable(input: FitInput, aim: FitAim): FittedTable {
  const { group } = aim;
  const wanted = wantedByMonth(input, group);
  const fits = input.choices.map((_, month) => chooseMonth(input, group, month, wanted[month]!));
  let best: { fits: MonthFit[]; table: Tried } | null = null;
  let sinceBest = 0;
  const trial = someOf(group, leastTrialYears);
  for (let turn = 0; turn < turns && sinceBest < patience; turn++) {
    const table = tryOut(input, trial, fits);
    sinceBest++;
    if (!best || weightOf(table.cost) < weightOf(best.table.cost)) {
      best = { fits: fits.map((fit) => ({ ...fit })), table };
      sinceBest = 0;
    }
    if (weightOf(table.cost) < goodEnough || !mend(input, trial, fits, wanted, table.sums)) break;
  }
  const fitted = polish(input, aim, best!.fits);
  return { ...tryOut(input, group, fitted), wanted_mm: wanted };
}

/** So many years spread evenly over a group; all of a smaller one. */
function someOf(group: readonly number[], most: number): readonly number[] {
  const step = group.length / most;
  if (step <= 1) return group;
  return Array.from({ length: most }, (_, k) => group[Math.floor((k + 0.5) * step)]!);
}

type Tried = Omit<FittedTable, "wanted_mm">;

function tryOut(input: FitInput, group: readonly number[], fits: readonly MonthFit[]): Tried {
  const months = fits.map((fit, month) => fixedMonth(input, fit, month));
  const sums = runFit(input, months, group);
  return { months, sums, cost: costOf(input.need, sums, group) };
}

/**
 * Tries single months with a little less, a little more, rarer, oftener, or none, the costliest months first, and
 * keeps what costs less.
 */
function polish(
  input: FitInput,
  { judged: all, beds }: FitAim,
  fits: readonly MonthFit[],
): readonly MonthFit[] {
  const years = leastPolishYears + Math.max(0, sharedPolishYears / beds - sharedPolishYears / fullSite_beds);
  const most = Math.floor(Math.min(mostTrialYears, Math.max(leastTrialYears, years / triesOfEach)));
  const judged = someOf(all, most);
  let best = { fits, table: tryOut(input, judged, fits) };
  let tries = Math.min(mostTries, Math.floor(years / judged.length));
  let step: number = coarseStep;
  while (step >= fineStep) {
    let found = false;
    const keepIfCheaper = (tried: readonly MonthFit[]) => {
      const outcome = tryOut(input, judged, tried);
      if (weightOf(outcome.cost) >= weightOf(best.table.cost) - 1e-4) return;
      best = { fits: tried, table: outcome };
      found = true;
    };
    for (const factor of [1 - step / 2, 1 + step / 2])
      if (tries-- > 0) keepIfCheaper(best.fits.map((fit) => longer(fit, factor)));
    for (const month of costliestFirst(input, judged, best.table.sums))
      for (const other of neighbours(input, best.fits[month]!, step)) {
        if (tries-- <= 0 || weightOf(best.table.cost) < goodEnough) return best.fits;
        keepIfCheaper(best.fits.map((fit, m) => (m === month ? other : fit)));
      }
    if (!found) step /= 2;
  }
  return best.fits;
}

function longer(fit: MonthFit, factor: number): MonthFit {
  const minutes = Math.min(fit.choices.mostMinutes, Math.max(1, fit.minutes * factor));
  return fit.at < 0 ? fit : { ...fit, minutes };
}

/** Months by what they cost beside need, in water and stress. */
function costliestFirst({ need }: FitInput, group: readonly number[], given: MonthSums): number[] {
  const costs = Array.from({ length: 12 }, (_, month) => {
    const water_mm = meanOfMonth(given.net_mm, group, month) - meanOfMonth(need.net_mm, group, month);
    const stress = meanOfMonth(given.stressDays, group, month) - meanOfMonth(need.stressDays, group, month);
    return { month, weight: Math.abs(water_mm) + Math.max(0, stress) };
  });
  return costs.sort((a, b) => b.weight - a.weight).map(({ month }) => month);
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
