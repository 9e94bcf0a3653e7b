import type { BedDays } from "./bed-day.ts";
import { type BedTotals, blankDays, runBed, totalsOf } from "./bed-run.ts";
import type { ReadyBed, ReadyDraw, ReadyGrounds, ReadyTank } from "./prepare.ts";
import { type Claimant, runTank, type TankRun, type ThirstyBed, thirstyBed } from "./tank-run.ts";
import { tankSeries } from "./tanks.ts";
import { grossFromNet_L } from "./watering.ts";

/** A bed watered to need: with water always there, and as its supply lets it. */
export interface BedRun {
  ready: ReadyBed;
  need: BedTotals;
  /** Gross litres asked for on each day with water always there. */
  needByDay_L: Float64Array;
  supplied: BedTotals;
  /** Gross litres that the bed got on each day. */
  suppliedByDay_L: Float64Array;
  /** Each day as supplied; null where it was not asked for. */
  days: BedDays | null;
}

/** The whole site watered to need, or as today. */
export interface SiteRun {
  tanks: TankRun[];
  /** Mains water of each day: beds, draws, top-up and leaks. */
  mains_L: Float64Array;
}

export interface NeedRun extends SiteRun {
  beds: BedRun[];
}

/**
 * Waters every bed to need.
 * @param keepDays write down every bed's days for the day-by-day table
 */
export function runToNeed(ready: ReadyGrounds, keepDays: boolean): NeedRun {
  const beds = ready.beds.map((bed) => bedToNeed(bed, keepDays));
  const mains_L = ready.always_L.slice();
  const runOf = new Map(beds.map((run) => [run.ready, run]));
  for (const { ready: bed, needByDay_L } of beds)
    if (supplyOf(bed) === "mains-only") add(mains_L, needByDay_L);
  const tanks = ready.tanks.map((tank) => {
    const thirsty = new Map<ReadyBed, ThirstyBed>();
    const run = runReadyTank(tank, mains_L, (bed) => {
      if (supplyOf(bed) !== "tank-only") return knownNeed(runOf.get(bed)!.needByDay_L);
      const claimant = thirstyBed(bed.grown, bed.open, runOf.get(bed)!.days);
      thirsty.set(bed, claimant);
      return claimant;
    });
    for (const [bed, { state, net_mm }] of thirsty)
      Object.assign(runOf.get(bed)!, {
        supplied: totalsOf(bed.grown, state, net_mm),
        suppliedByDay_L: scale(
          net_mm,
          grossFromNet_L(1, bed.grown.bed.area_m2, bed.grown.bed.watering.efficiency),
        ),
      });
    return run;
  });
  return { beds, tanks, mains_L };
}

/** Waters as today: by habit where it is known, to need where it is not. */
export function runAsToday(ready: ReadyGrounds, need: NeedRun): SiteRun {
  const mains_L = ready.always_L.slice();
  const todayByDay_L = new Map(need.beds.map((run) => [run.ready, run.ready.habit_L ?? run.needByDay_L]));
  for (const bed of ready.beds) if (supplyOf(bed) === "mains-only") add(mains_L, todayByDay_L.get(bed)!);
  const tanks = ready.tanks.map((tank) =>
    runReadyTank(tank, mains_L, (bed) => {
      if (supplyOf(bed) === "tank-only" && !bed.habit_L) return thirstyBed(bed.grown, bed.open, null);
      return { kind: "known", asks_L: todayByDay_L.get(bed)!, restFromMains: supplyOf(bed) !== "tank-only" };
    }),
  );
  return { tanks, mains_L };
}

function bedToNeed(ready: ReadyBed, keepDays: boolean): BedRun {
  const { grown, open } = ready;
  const length = open.length;
  const supply = supplyOf(ready);
  const days = keepDays ? blankDays(length) : null;
  const needByDay_mm = new Float64Array(length);
  const need = runBed(grown, open, needByDay_mm, supply === "none" || supply === "tank-only" ? null : days);
  const perMm_L = grossFromNet_L(1, grown.bed.area_m2, grown.bed.watering.efficiency);
  const needByDay_L = scale(needByDay_mm, perMm_L);
  if (supply !== "none")
    return { ready, need, needByDay_L, supplied: need, suppliedByDay_L: needByDay_L, days };
  const nothing = new Float64Array(length);
  return {
    ready,
    need,
    needByDay_L,
    supplied: runBed(grown, null, nothing, days),
    suppliedByDay_L: nothing,
    days,
  };
}

/** Multiplies in place: a depth over a bed becomes litres without a second array. */
function scale(values: Float64Array, factor: number): Float64Array {
  for (let i = 0; i < values.length; i++) values[i]! *= factor;
  return values;
}

function runReadyTank(tank: ReadyTank, mains_L: Float64Array, claim: (bed: ReadyBed) => Claimant): TankRun {
  const claimants = [...tank.before.map(knownDraw), ...tank.beds.map(claim), ...tank.after.map(knownDraw)];
  return runTank(tank.group, claimants, tankSeries(tank.inflow_L), mains_L);
}

function knownDraw({ asks_L }: ReadyDraw): Claimant {
  return { kind: "known", asks_L, restFromMains: true };
}

function knownNeed(asks_L: Float64Array): Claimant {
  return { kind: "known", asks_L, restFromMains: true };
}

function supplyOf({ grown }: ReadyBed) {
  return grown.bed.watering.supply;
}

function add(total: Float64Array, more: Float64Array): void {
  for (let i = 0; i < total.length; i++) total[i]! += more[i]!;
}
