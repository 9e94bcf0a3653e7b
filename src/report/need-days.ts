import type { BedDays } from "../engine/bed-day.ts";
import { blankDays, runBed } from "../engine/bed-run.ts";
import { type NeedRun, runToNeed } from "../engine/site-run.ts";
import { netFromGross_mm } from "../engine/watering.ts";
import type { WorkedOut } from "./work-out.ts";

const kept = new WeakMap<WorkedOut, NeedRun>();

/** The run to need with every bed's days and every tank's shares: as it was made, or made once more and kept. */
export function needWithDays(worked: WorkedOut): NeedRun {
  const { need, ready } = worked;
  if (need.shares && need.beds.every(({ days }) => days !== null)) return need;
  let run = kept.get(worked);
  if (!run) {
    run = runToNeed(ready, true, true);
    kept.set(worked, run);
  }
  return run;
}

/** A bed's days under some watering. */
export interface WateredDays {
  days: BedDays;
  net_mm: Float64Array;
  /** What of it a tank gave, gross litres; null where no tank serves the bed. */
  fromTank_L: Float64Array | null;
  stressDays: number;
  drainage_mm: number;
}

/**
 * How a bed's days may be asked for: watered to need as its supply lets it, by today's habit (what of it a tank-only
 * bed's tank can give), or by rain alone.
 */
export type WateredAs = "need" | "today" | "rain";

/** @returns null where today's watering is not known */
export function daysOf(worked: WorkedOut, k: number, as: WateredAs): WateredDays | null {
  const { grown, habit_L } = worked.ready.beds[k]!;
  const { area_m2, watering } = grown.bed;
  const length = grown.rain_mm.length;
  if (as === "need") {
    const { days, supplied, suppliedByDay_L } = needWithDays(worked).beds[k]!;
    const net_mm = suppliedByDay_L.map((litres) => netFromGross_mm(litres, area_m2, watering.efficiency));
    const { stressDays, drainage_mm } = supplied;
    return { days: days!, net_mm, fromTank_L: fromTank_L(worked, k, "need"), stressDays, drainage_mm };
  }
  if (as === "today" && !habit_L) return null;
  const tank_L = as === "today" ? fromTank_L(worked, k, "today") : null;
  const given_L = watering.supply === "tank-only" && tank_L ? tank_L : habit_L!;
  const net_mm =
    as === "rain"
      ? new Float64Array(length)
      : given_L.map((litres) => netFromGross_mm(litres, area_m2, watering.efficiency));
  const days = blankDays(length);
  const { stressDays, drainage_mm } = runBed(grown, null, net_mm, days);
  return { days, net_mm, fromTank_L: tank_L, stressDays, drainage_mm };
}

/** What a bed's tank gave it on each day; null where it has none. */
export function fromTank_L(worked: WorkedOut, k: number, run: "need" | "today"): Float64Array | null {
  const { ready } = worked;
  const { shares } = run === "need" ? needWithDays(worked) : worked.today;
  const bed = ready.beds[k]!;
  for (let t = 0; t < ready.tanks.length; t++) {
    const at = ready.tanks[t]!.beds.indexOf(bed);
    if (at >= 0) return shares?.[t]?.beds_L[at] ?? null;
  }
  return null;
}
