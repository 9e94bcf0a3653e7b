import type { Frame } from "./frame.ts";
import { byYear_L, type Tally, tallyOf, total_L } from "./tally.ts";
import type { TankInputs } from "./tank-inputs.ts";
import { runTank, type TankRun } from "./tank-run.ts";
import { sumTank } from "./tank-sum.ts";
import { type TankGroup, tankGroups, tankSeries } from "./tanks.ts";

/** What a tank of one size does over a record. */
export interface SizePoint {
  capacity_L: number;
  /** Mains water that it takes the place of: with no tank less with this one. */
  saved: Tally;
  /** Mains water that its claimants and its top-up take. */
  mains: Tally;
  yield_L: number;
  drawDays: number;
  shortDays: number;
  /** Share of the days with a draw on which all of it was met. */
  reliability: number;
  emptyDays: number;
}

/** Runs one tank of a group at other sizes, all else as it stands in the inputs. */
export function sizeCurve(
  inputs: TankInputs,
  tankId: string,
  sizes_L: readonly number[],
  frame: Frame,
): SizePoint[] {
  const none = sumOf(inputs, tankId, 0, frame).mains;
  return sizes_L.map((capacity_L) => {
    const { mains, yield_L, drawDays, shortDays, emptyDays } = sumOf(inputs, tankId, capacity_L, frame);
    const saved = none.map((litres, k) => litres - mains[k]!);
    const reliability = drawDays > 0 ? 1 - shortDays / drawDays : 1;
    return { capacity_L, saved, mains, yield_L, drawDays, shortDays, reliability, emptyDays };
  });
}

interface Sum {
  mains: Tally;
  yield_L: number;
  drawDays: number;
  shortDays: number;
  emptyDays: number;
}

function sumOf(inputs: TankInputs, tankId: string, capacity_L: number, frame: Frame): Sum {
  const group = resized(inputs.group, tankId, capacity_L);
  if (inputs.known_L) return sumTank(group, inputs.inflow_L, inputs.known_L, frame);
  const mains_L = new Float64Array(inputs.inflow_L.length);
  const run = runTank(group, inputs.claimants(), tankSeries(inputs.inflow_L), mains_L);
  return { ...run, mains: tallyOf(mains_L, frame), yield_L: yieldOf(run), emptyDays: emptyOf(run, group) };
}

/**
 * The group with one of its tanks at another size. Where no level was surveyed it begins its first year empty, as a new
 * tank does: half full, the largest would be given most water to begin with.
 */
export function resized(group: TankGroup, tankId: string, capacity_L: number): TankGroup {
  const members = group.members.map((tank) => (tank.id === tankId ? { ...tank, capacity_L } : tank));
  return { ...tankGroups(members)[0]!, half_L: 0 };
}

function yieldOf({ series }: TankRun): number {
  return series.yield_L.reduce((sum, litres) => sum + litres, 0);
}

function emptyOf({ series }: TankRun, { unusable_L }: TankGroup): number {
  return series.level_L.reduce((days, level_L) => days + (level_L <= unusable_L ? 1 : 0), 0);
}

/** Of all that its roofs and its draw let a tank save, a size that saves this share is called enough. */
export const enoughShare = 0.95;

/** What a tank that never spills would save, and the smallest size that comes within 5 % of it. */
export interface Enough {
  /** Mains water over the record. */
  most_L: number;
  capacity_L: number;
}

/** @param step_L sizes are whole steps of this */
export function enoughSize(inputs: TankInputs, tankId: string, frame: Frame, step_L = 100): Enough {
  const all_L = inputs.inflow_L.reduce((sum, litres) => sum + litres, 0);
  const none_L = total_L(sumOf(inputs, tankId, 0, frame).mains);
  const saved_L = (capacity_L: number) => none_L - total_L(sumOf(inputs, tankId, capacity_L, frame).mains);
  let high = Math.max(1, Math.ceil(all_L / step_L));
  const most_L = saved_L(high * step_L);
  if (most_L <= 0) return { most_L: Math.max(0, most_L), capacity_L: 0 };
  let low = 0;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (saved_L(middle * step_L) >= enoughShare * most_L) high = middle;
    else low = middle;
  }
  return { most_L, capacity_L: high * step_L };
}

/** Which of tank, roof and demand holds a tank's saving back, with the runs that show it. Litres over the record. */
export interface Limit {
  by: "tank" | "roof" | "demand" | "nothing-asked";
  saved_L: number;
  /** More saved with a quarter more tank, roof, or demand. */
  moreTank_L: number;
  moreRoof_L: number;
  moreDemand_L: number;
}

/** A quarter more of tank, roof or demand shows what holds it back. */
export const more = 1.25;

/** @param most_L what it would save were it never to spill */
export function limitOf(inputs: TankInputs, tankId: string, most_L: number, frame: Frame): Limit {
  const at_L = inputs.group.members.find(({ id }) => id === tankId)!.capacity_L;
  const saved = (of: TankInputs, capacity_L: number) =>
    total_L(sumOf(of, tankId, 0, frame).mains) - total_L(sumOf(of, tankId, capacity_L, frame).mains);
  const saved_L = saved(inputs, at_L);
  const moreTank_L = saved(inputs, at_L * more) - saved_L;
  const moreRoof_L = saved({ ...inputs, inflow_L: scaled(inputs.inflow_L) }, at_L) - saved_L;
  const moreDemand_L = saved(thirstier(inputs), at_L) - saved_L;
  const gains = { saved_L, moreTank_L, moreRoof_L, moreDemand_L };
  const isAsked = inputs.known_L === null || inputs.known_L.some((litres) => litres > 0);
  return { by: heldBy(isAsked, gains, most_L), ...gains };
}

/**
 * A tank that is large enough is held back by its roof or by its demand, whichever adds more.
 * @param most_L what a tank that never spills would save
 */
export function heldBy(isAsked: boolean, gains: Omit<Limit, "by">, most_L: number): Limit["by"] {
  const { saved_L, moreTank_L, moreRoof_L, moreDemand_L } = gains;
  if (!isAsked) return "nothing-asked";
  if (saved_L >= enoughShare * most_L) return moreRoof_L >= moreDemand_L ? "roof" : "demand";
  return moreRoof_L >= moreTank_L ? "roof" : "tank";
}

function scaled(litres: Float64Array): Float64Array {
  return litres.map((each) => each * more);
}

function thirstier(inputs: TankInputs): TankInputs {
  return {
    ...inputs,
    known_L: inputs.known_L && scaled(inputs.known_L),
    claimants: () =>
      inputs
        .claimants()
        .map((claimant) =>
          claimant.kind === "known" ? { ...claimant, asks_L: scaled(claimant.asks_L) } : claimant,
        ),
  };
}

/** Saved by year, in the frame's order, kL. */
export function savedByYear_kL({ saved }: SizePoint): number[] {
  return Array.from(byYear_L(saved), (litres) => litres / 1000);
}
