import { type PreparedBed, prepareBed } from "./bed-day.ts";
import { runBed } from "./bed-run.ts";
import type { Frame } from "./frame.ts";
import type { Bed } from "./grounds.ts";
import { grossFromNet_L, habitByDay_L, openDays } from "./watering.ts";

/**
 * How beds are watered: by today's habit, to need, or to need where that takes no more than habit and by habit where
 * it would (no bed gets more than today). Where a habit is not known, need stands in for it.
 */
export type WateredBy = "habit" | "need" | "least";

/** A bed in one of the ways that it can be; its runs are made when first asked for. */
export interface BedVariant {
  bed: Bed;
  prepared: PreparedBed;
  open: Uint8Array;
  /** Gross litres of each day with water always there. */
  need_L(): Float64Array;
  habit_L(): Float64Array | null;
  /** Whether today's habit gives less than the need, mean a year. */
  wantsMoreThanHabit(): boolean;
}

/** @throws ShadeNeedsSky where a shaded bed's record has neither temperatures nor sun */
export function bedVariant(bed: Bed, { weather, absent, shadeOf }: Frame): BedVariant {
  const prepared = prepareBed(bed, weather, false, shadeOf);
  const open = openDays(bed.watering, weather.calendar, absent);
  let need_L: Float64Array | null = null;
  let habit_L: Float64Array | null | undefined;
  const variant: BedVariant = {
    bed,
    prepared,
    open,
    need_L: () => (need_L ??= needByDay_L(prepared, open)),
    habit_L: () => {
      if (habit_L === undefined) habit_L = habitByDay_L(bed, weather.calendar, absent);
      return habit_L;
    },
    wantsMoreThanHabit: () => {
      const habit = variant.habit_L();
      return habit !== null && sum(variant.need_L()) > sum(habit);
    },
  };
  return variant;
}

function needByDay_L(prepared: PreparedBed, open: Uint8Array): Float64Array {
  const asked = new Float64Array(open.length);
  runBed(prepared, open, asked);
  const perMm_L = grossFromNet_L(1, prepared.bed.area_m2, prepared.bed.watering.efficiency);
  for (let i = 0; i < asked.length; i++) asked[i]! *= perMm_L;
  return asked;
}

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

/** Whether a bed's habit stands, or its need. */
export function byHabit(variant: BedVariant, by: WateredBy): boolean {
  if (by === "need" || variant.habit_L() === null) return false;
  return by === "habit" || variant.wantsMoreThanHabit();
}

/** Gross litres asked for on each day. */
export function asked_L(variant: BedVariant, by: WateredBy): Float64Array {
  return byHabit(variant, by) ? variant.habit_L()! : variant.need_L();
}
