import { type BedDays, type BedTotals, blankDays, runBed } from "./bed-run.ts";
import type { ReadyBed, ReadyDraw, ReadyGrounds, ReadyTank } from "./prepare.ts";
import { type Claimant, runTank, type TankRun, type ThirstyBed, thirstyBed } from "./tank-run.ts";
import { tankSeries } from "./tanks.ts";
import { grossFromNet_L } from "./watering.ts";

/** A bed watered to need: with water always there, and as its supply lets it. */
export interface BedRun {
  ready: ReadyBed;
  need: BedTotals;
  needByDay_L: Float64Array;
  supplied: BedTotals;
  supplied_L: number;
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
  const mains_L = new Float64Array(ready.weather.calendar.days).fill(ready.grounds.leaks_L_day);
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
    for (const [bed, { totals, supplied_L }] of thirsty)
      Object.assign(runOf.get(bed)!, { supplied: totals, supplied_L });
    return run;
  });
  return { beds, tanks, mains_L };
}

/** Waters as today: by habit where it is known, to need where it is not. */
export function runAsToday(ready: ReadyGrounds, need: NeedRun): SiteRun {
  const mains_L = new Float64Array(ready.weather.calendar.days).fill(ready.grounds.leaks_L_day);
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
  const needByDay_L = new Float64Array(grown.rain_mm.length);
  const supply = supplyOf(ready);
  const days = keepDays ? blankDays(needByDay_L.length) : null;
  const dependsOnSupply = supply === "none" || supply === "tank-only";
  const need = runBed(grown, open, "to-need", needByDay_L, dependsOnSupply ? null : days);
  const perMm_L = grossFromNet_L(1, grown.bed.area_m2, grown.bed.watering.efficiency);
  for (let i = 0; i < needByDay_L.length; i++) needByDay_L[i]! *= perMm_L;
  const supplied = supply === "none" ? runBed(grown, open, "rain-only", null, days) : need;
  return {
    ready,
    need,
    needByDay_L,
    supplied,
    supplied_L: supply === "none" ? 0 : need.net_mm * perMm_L,
    days,
  };
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
