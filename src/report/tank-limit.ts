import { enoughShare, heldBy, type Limit, more } from "../engine/size-curve.ts";
import type { Claimant } from "../engine/tank-run.ts";
import { runTank } from "../engine/tank-run.ts";
import { tankSeries } from "../engine/tanks.ts";
import { perYear } from "../engine/years.ts";
import { sized, type TrialBench } from "./tank-trial.ts";

/**
 * What holds a tank back, with the runs that show it. What it gives is what it yields less what the mains put in; where
 * the mains give the rest, as much mains water is saved. Litres of a mean year.
 */
export interface TankLimit {
  tank: string;
  by: Limit["by"];
  gives_L_year: number;
  /** More given with a quarter more tank, roof, or demand. */
  moreTank_L_year: number;
  moreRoof_L_year: number;
  moreDemand_L_year: number;
  /** What a tank that never spills would give, and the smallest size that comes within 5 % of it. */
  most_L_year: number;
  enough_L: number;
}

const step_L = 100;

export function tankLimit(bench: TrialBench): TankLimit {
  const { group, inflow_L } = bench;
  const days = inflow_L.length;
  const inYear = (litres: number) => perYear(litres, days);
  const all_L = sum(inflow_L);
  const neverSpills_L = Math.max(group.capacity_L, group.unusable_L + all_L);
  const most_L = gives_L(bench, neverSpills_L);
  const gains = gainsOf(bench);
  return {
    tank: group.id,
    by: heldBy(isAsked(bench), gains, most_L),
    gives_L_year: inYear(gains.saved_L),
    moreTank_L_year: inYear(gains.moreTank_L),
    moreRoof_L_year: inYear(gains.moreRoof_L),
    moreDemand_L_year: inYear(gains.moreDemand_L),
    most_L_year: inYear(most_L),
    enough_L: most_L > 0 ? enough_L(bench, most_L, neverSpills_L) : 0,
  };
}

function gainsOf(bench: TrialBench): Omit<Limit, "by"> {
  const { capacity_L } = bench.group;
  const saved_L = gives_L(bench, capacity_L);
  return {
    saved_L,
    moreTank_L: gives_L(bench, capacity_L * more) - saved_L,
    moreRoof_L: gives_L(bench, capacity_L, more) - saved_L,
    moreDemand_L: gives_L(bench, capacity_L, 1, more) - saved_L,
  };
}

/** Halves the sizes until the smallest that gives its share of all is found. */
function enough_L(bench: TrialBench, most_L: number, most_capacity_L: number): number {
  let low = 0;
  let high = Math.ceil(most_capacity_L / step_L);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (gives_L(bench, middle * step_L) >= enoughShare * most_L) high = middle;
    else low = middle;
  }
  return high * step_L;
}

function isAsked({ claimants }: TrialBench): boolean {
  return claimants().some(
    (claimant) => claimant.kind === "thirsty" || claimant.asks_L.some((litres) => litres > 0),
  );
}

function gives_L(bench: TrialBench, capacity_L: number, roofs = 1, demand = 1): number {
  const { inflow_L } = bench;
  const claimants = bench.claimants().map((claimant) => thirstier(claimant, demand));
  const series = tankSeries(roofs === 1 ? inflow_L : inflow_L.map((litres) => litres * roofs));
  const run = runTank(sized(bench.group, capacity_L), claimants, series, new Float64Array(inflow_L.length));
  return sum(run.series.yield_L) - sum(run.series.topUp_L);
}

function thirstier(claimant: Claimant, demand: number): Claimant {
  if (demand === 1 || claimant.kind === "thirsty") return claimant;
  return { ...claimant, asks_L: claimant.asks_L.map((litres) => litres * demand) };
}

function sum(values: Float64Array): number {
  return values.reduce((all, each) => all + each, 0);
}
