import {
  type BedDays,
  type BedState,
  freshState,
  type PreparedBed,
  runDays,
  slot,
  wanted_mm,
} from "./bed-day.ts";
import { beginRecord, spinUpDays } from "./bed-run.ts";
import { runTankDays, startLevel_L, type TankGroup, type TankSeries } from "./tanks.ts";
import { grossFromNet_L, netFromGross_mm } from "./watering.ts";

/** Something that asks a tank for water; claimants stand in the order in which a short day serves them. */
export type Claimant = KnownClaimant | ThirstyBed;

/** A draw, or a bed whose request does not hang on what it gets. */
export interface KnownClaimant {
  kind: "known";
  asks_L: Float64Array;
  /** What the tank cannot give comes from the mains; else it is not given. */
  restFromMains: boolean;
  /** Where it is kept, what the tank gives on each day: to begin with all that it asks for. */
  got_L?: Float64Array;
}

/** A bed that only the tank waters: what it does not get, its soil feels, and it asks again. */
export interface ThirstyBed {
  kind: "thirsty";
  bed: PreparedBed;
  open: Uint8Array;
  state: BedState;
  /** What it got on each day. */
  net_mm: Float64Array;
  /** What was asked for and neither got nor rained away yet: counted as draw once. */
  outstanding_L: number;
  asks_L: number;
  gets_L: number;
  keep: BedDays | null;
}

export function thirstyBed(bed: PreparedBed, open: Uint8Array, keep: BedDays | null): ThirstyBed {
  return {
    kind: "thirsty",
    bed,
    open,
    state: freshState(),
    net_mm: new Float64Array(open.length),
    outstanding_L: 0,
    asks_L: 0,
    gets_L: 0,
    keep,
  };
}

/** A tank's record: totals in litres, days counted. */
export interface TankRun {
  series: TankSeries;
  /** New draw: each litre asked for counted once. */
  newDraw_L: number;
  drawDays: number;
  shortDays: number;
}

/**
 * Runs a tank over its record together with the beds that hang on it alone, day by day.
 * @param series inflow given; the rest is filled
 * @param mains_L what claimants are short of and top-up are added to each day
 */
export function runTank(
  tank: TankGroup,
  claimants: readonly Claimant[],
  series: TankSeries,
  mains_L: Float64Array,
): TankRun {
  const days = series.inflow_L.length;
  const known_L = knownByDay_L(claimants, days);
  const thirsty = claimants.filter((c) => c.kind === "thirsty");
  const run: TankRun = { series, newDraw_L: 0, drawDays: 0, shortDays: 0 };
  if (thirsty.length === 0) runKnown(tank, series, known_L);
  else run.newDraw_L = runWithThirsty(tank, claimants, thirsty, series, known_L, mains_L);
  const { draw_L, yield_L, topUp_L } = series;
  for (let i = 0; i < days; i++) {
    run.newDraw_L += known_L[i]!;
    mains_L[i]! += topUp_L[i]!;
    if (draw_L[i]! > 0) run.drawDays++;
    if (yield_L[i]! >= draw_L[i]!) continue;
    run.shortDays++;
    if (thirsty.length === 0) shareOut(claimants, i, yield_L[i]!, mains_L);
  }
  showWholeLevel(tank, series);
  return run;
}

/** A tank whose draw does not hang on what it gave: spun up, then run over the record in one go. */
function runKnown(tank: TankGroup, series: TankSeries, known_L: Float64Array): void {
  const days = known_L.length;
  series.draw_L = known_L;
  if (!tank.inUse) return;
  const spunUp_L = days >= spinUpDays ? runTankDays(tank, series, 0, spinUpDays, tank.half_L) : null;
  runTankDays(tank, series, 0, days, startLevel_L(tank, spunUp_L));
}

/** The same together with the beds that hang on it, day by day; returns their new draw. */
function runWithThirsty(
  tank: TankGroup,
  claimants: readonly Claimant[],
  thirsty: readonly ThirstyBed[],
  series: TankSeries,
  known_L: Float64Array,
  mains_L: Float64Array,
): number {
  const days = known_L.length;
  const spunUp = days >= spinUpDays;
  let level_L = tank.half_L;
  if (spunUp)
    for (let i = 0; i < spinUpDays; i++) {
      level_L = dayOfTank(tank, claimants, thirsty, series, known_L, i, level_L, null);
      for (const bed of thirsty) waterThirsty(bed, i, null);
    }
  level_L = startLevel_L(tank, spunUp ? level_L : null);
  for (const bed of thirsty) {
    beginRecord(bed.bed, bed.state);
    bed.outstanding_L = 0;
  }
  let newDraw_L = 0;
  for (let i = 0; i < days; i++) {
    level_L = dayOfTank(tank, claimants, thirsty, series, known_L, i, level_L, mains_L);
    for (const bed of thirsty) newDraw_L += keepThirsty(bed, i);
  }
  return newDraw_L;
}

function knownByDay_L(claimants: readonly Claimant[], days: number): Float64Array {
  const total_L = new Float64Array(days);
  for (const claimant of claimants) {
    if (claimant.kind !== "known") continue;
    const { asks_L } = claimant;
    for (let i = 0; i < days; i++) total_L[i]! += asks_L[i]!;
  }
  return total_L;
}

/** Asks for and yields day i's water, and tells each thirsty bed what it gets; returns the level above the outlet. */
function dayOfTank(
  tank: TankGroup,
  claimants: readonly Claimant[],
  thirsty: readonly ThirstyBed[],
  series: TankSeries,
  known_L: Float64Array,
  i: number,
  before_L: number,
  mains_L: Float64Array | null,
): number {
  let draw_L = known_L[i]!;
  for (const claimant of thirsty) {
    const { bed, open, state } = claimant;
    const net_mm = open[i] ? wanted_mm(state[slot.rootDepletion]!, bed.trigger_mm, bed.mostNet_mm) : 0;
    claimant.asks_L = grossFromNet_L(net_mm, bed.bed.area_m2, bed.bed.watering.efficiency);
    claimant.gets_L = claimant.asks_L;
    draw_L += claimant.asks_L;
  }
  series.draw_L[i] = draw_L;
  const level_L = tank.inUse ? runTankDays(tank, series, i, i + 1, before_L) : before_L;
  if (series.yield_L[i]! < draw_L) shareOut(claimants, i, series.yield_L[i]!, mains_L);
  return level_L;
}

/** Shares a short day's yield in the order of the claimants; what is short comes from the mains, or not at all. */
function shareOut(
  claimants: readonly Claimant[],
  i: number,
  yield_L: number,
  mains_L: Float64Array | null,
): void {
  let left_L = yield_L;
  for (const claimant of claimants) {
    const asks_L = claimant.kind === "known" ? claimant.asks_L[i]! : claimant.asks_L;
    const gets_L = Math.min(asks_L, left_L);
    left_L -= gets_L;
    if (claimant.kind === "thirsty") claimant.gets_L = gets_L;
    else if (mains_L) {
      if (claimant.restFromMains) mains_L[i]! += asks_L - gets_L;
      if (claimant.got_L) claimant.got_L[i] = gets_L;
    }
  }
}

/** Puts what a thirsty bed got on it and runs its day. */
function waterThirsty({ bed, state, net_mm, gets_L }: ThirstyBed, i: number, keep: BedDays | null): void {
  net_mm[i] = netFromGross_mm(gets_L, bed.bed.area_m2, bed.bed.watering.efficiency);
  runDays(bed, state, net_mm, null, i, i + 1, keep);
}

/** Runs a thirsty bed's day and returns its new draw: the request less what stood out already. */
function keepThirsty(claimant: ThirstyBed, i: number): number {
  const { bed, state, asks_L, gets_L, outstanding_L } = claimant;
  waterThirsty(claimant, i, claimant.keep);
  const refill_L = grossFromNet_L(state[slot.rootDepletion]!, bed.bed.area_m2, bed.bed.watering.efficiency);
  claimant.outstanding_L = standsOut_L(outstanding_L, asks_L, gets_L, refill_L);
  return newDraw_L(asks_L, outstanding_L);
}

/** A request less what stood out of earlier ones already: each litre is asked for once. */
export function newDraw_L(asks_L: number, outstanding_L: number): number {
  return Math.max(0, asks_L - outstanding_L);
}

/** What stands out after a day: not got, and no more than would refill the bed at its end. */
export function standsOut_L(outstanding_L: number, asks_L: number, gets_L: number, refill_L: number): number {
  return Math.min(Math.max(outstanding_L, asks_L) - gets_L, refill_L);
}

/** Levels shown include the water below the outlet; a tank out of use stands where it stood. */
function showWholeLevel(tank: TankGroup, { level_L }: TankSeries): void {
  if (!tank.inUse) level_L.fill(startLevel_L(tank, null));
  if (tank.unusable_L > 0) for (let i = 0; i < level_L.length; i++) level_L[i]! += tank.unusable_L;
}
