import type { BedDays } from "./bed-day.ts";
import { type BedTotals, blankDays, runBed, totalsOf } from "./bed-run.ts";
import type { ReadyBed, ReadyDraw, ReadyGrounds, ReadyTank } from "./prepare.ts";
import {
  type Claimant,
  type KnownClaimant,
  runTank,
  type TankRun,
  type ThirstyBed,
  thirstyBed,
} from "./tank-run.ts";
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

/** What a tank gave on each day to those who ask it for water, each list in the order of the ready tank's own. */
export interface TankShares {
  before_L: Float64Array[];
  beds_L: Float64Array[];
  after_L: Float64Array[];
}

/** The whole site watered to need, or as today. */
export interface SiteRun {
  tanks: TankRun[];
  /** Who got how much of each tank's water; null where it was not asked for. */
  shares: TankShares[] | null;
  /** Mains water of each day: beds, draws, top-up and leaks. */
  mains_L: Float64Array;
}

export interface NeedRun extends SiteRun {
  beds: BedRun[];
}

/**
 * Waters every bed to need.
 * @param keepDays write down every bed's days for the day-by-day table
 * @param keepShares write down what each of those who ask a tank got from it
 */
export function runToNeed(ready: ReadyGrounds, keepDays: boolean, keepShares = false): NeedRun {
  const beds = ready.beds.map((bed) => bedToNeed(bed, keepDays));
  const mains_L = ready.always_L.slice();
  const runOf = new Map(beds.map((run) => [run.ready, run]));
  for (const { ready: bed, needByDay_L } of beds)
    if (supplyOf(bed) === "mains-only") add(mains_L, needByDay_L);
  const shares: TankShares[] | null = keepShares ? [] : null;
  const tanks = ready.tanks.map((tank) => {
    const thirsty = new Map<ReadyBed, ThirstyBed>();
    const run = runReadyTank(tank, mains_L, shares, (bed) => {
      if (supplyOf(bed) !== "tank-only") return known(runOf.get(bed)!.needByDay_L, true);
      const claimant = thirstyBed(bed.grown, bed.open, runOf.get(bed)!.days);
      thirsty.set(bed, claimant);
      return claimant;
    });
    for (const [bed, { state, net_mm }] of thirsty)
      Object.assign(runOf.get(bed)!, {
        supplied: totalsOf(bed.grown, state, net_mm),
        suppliedByDay_L: grossByDay_L(bed, net_mm),
      });
    return run;
  });
  return { beds, tanks, shares, mains_L };
}

/** Waters as today: by habit where it is known, to need where it is not. */
export function runAsToday(ready: ReadyGrounds, need: NeedRun, keepShares = false): SiteRun {
  const mains_L = ready.always_L.slice();
  const todayByDay_L = new Map(need.beds.map((run) => [run.ready, run.ready.habit_L ?? run.needByDay_L]));
  for (const bed of ready.beds) if (supplyOf(bed) === "mains-only") add(mains_L, todayByDay_L.get(bed)!);
  const shares: TankShares[] | null = keepShares ? [] : null;
  const tanks = ready.tanks.map((tank) =>
    runReadyTank(tank, mains_L, shares, (bed) => {
      if (supplyOf(bed) === "tank-only" && !bed.habit_L) return thirstyBed(bed.grown, bed.open, null);
      return known(todayByDay_L.get(bed)!, supplyOf(bed) !== "tank-only");
    }),
  );
  return { tanks, shares, mains_L };
}

function bedToNeed(ready: ReadyBed, keepDays: boolean): BedRun {
  const { grown, open } = ready;
  const length = open.length;
  const supply = supplyOf(ready);
  const days = keepDays ? blankDays(length) : null;
  const needByDay_mm = new Float64Array(length);
  const need = runBed(grown, open, needByDay_mm, supply === "none" || supply === "tank-only" ? null : days);
  const needByDay_L = grossByDay_L(ready, needByDay_mm);
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

/** Net depths over a bed become gross litres, in place. */
function grossByDay_L({ grown: { bed } }: ReadyBed, net_mm: Float64Array): Float64Array {
  const perMm_L = grossFromNet_L(1, bed.area_m2, bed.watering.efficiency);
  for (let i = 0; i < net_mm.length; i++) net_mm[i]! *= perMm_L;
  return net_mm;
}

/** @param shares given what each got, where it is kept */
function runReadyTank(
  tank: ReadyTank,
  mains_L: Float64Array,
  shares: TankShares[] | null,
  claim: (bed: ReadyBed) => Claimant,
): TankRun {
  const before = tank.before.map(knownDraw);
  const beds = tank.beds.map(claim);
  const after = tank.after.map(knownDraw);
  const claimants = [...before, ...beds, ...after];
  if (shares)
    for (const claimant of claimants) if (claimant.kind === "known") claimant.got_L = claimant.asks_L.slice();
  const run = runTank(tank.group, claimants, tankSeries(tank.inflow_L), mains_L);
  shares?.push({
    before_L: before.map(({ got_L }) => got_L!),
    beds_L: beds.map((claimant, k) =>
      claimant.kind === "known" ? claimant.got_L! : grossByDay_L(tank.beds[k]!, claimant.net_mm.slice()),
    ),
    after_L: after.map(({ got_L }) => got_L!),
  });
  return run;
}

function knownDraw({ asks_L }: ReadyDraw): KnownClaimant {
  return known(asks_L, true);
}

function known(asks_L: Float64Array, restFromMains: boolean): KnownClaimant {
  return { kind: "known", asks_L, restFromMains };
}

function supplyOf({ grown }: ReadyBed) {
  return grown.bed.watering.supply;
}

function add(total: Float64Array, more: Float64Array): void {
  for (let i = 0; i < total.length; i++) total[i]! += more[i]!;
}
