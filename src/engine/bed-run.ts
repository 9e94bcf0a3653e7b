import { type BedState, freshState, type PreparedBed, slot, stepBed, wanted_mm } from "./bed-day.ts";

/** Records at least this long are run once over their first year before day 1. */
export const spinUpDays = 365;

/** How a bed is watered in a run: to need with water always there, or by rain alone. */
export type Supplying = "to-need" | "rain-only";

/** Totals of a run over the record. */
export interface BedTotals {
  net_mm: number;
  netByMonth_mm: Float64Array;
  rain_mm: number;
  drainage_mm: number;
  stressDays: number;
}

/** A bed's day, written down: one array a column of the day-by-day table. */
export interface BedDays {
  kcb: Float64Array;
  ke: Float64Array;
  ks: Float64Array;
  etc_mm: Float64Array;
  net_mm: Float64Array;
  drainage_mm: Float64Array;
  rootDepletion_mm: Float64Array;
  surfaceDepletion_mm: Float64Array;
}

export function emptyTotals(): BedTotals {
  return { net_mm: 0, netByMonth_mm: new Float64Array(12), rain_mm: 0, drainage_mm: 0, stressDays: 0 };
}

export function blankDays(days: number): BedDays {
  return {
    kcb: new Float64Array(days),
    ke: new Float64Array(days),
    ks: new Float64Array(days),
    etc_mm: new Float64Array(days),
    net_mm: new Float64Array(days),
    drainage_mm: new Float64Array(days),
    rootDepletion_mm: new Float64Array(days),
    surfaceDepletion_mm: new Float64Array(days),
  };
}

/** Writes down what the step of day i found. */
export function keepDay(days: BedDays, state: BedState, i: number, net_mm: number): void {
  days.kcb[i] = state[slot.kcb]!;
  days.ke[i] = state[slot.ke]!;
  days.ks[i] = state[slot.ks]!;
  days.etc_mm[i] = state[slot.etc]!;
  days.net_mm[i] = net_mm;
  days.drainage_mm[i] = state[slot.drainage]!;
  days.rootDepletion_mm[i] = state[slot.rootDepletion]!;
  days.surfaceDepletion_mm[i] = state[slot.surfaceDepletion]!;
}

/** A surveyed state stands on day 1 in place of the spun-up one, held to what the soil can hold. */
export function placeSurveyed(bed: PreparedBed, state: BedState): void {
  const { initial } = bed.bed;
  if (!initial) return;
  state[slot.rootDepletion] = Math.min(bed.available_mm, Math.max(0, initial.rootDepletion_mm));
  state[slot.surfaceDepletion] = Math.min(bed.tew_mm, Math.max(0, initial.surfaceDepletion_mm));
}

/**
 * Runs a bed over the whole record on its own.
 * @param open days on which it may be watered
 * @param net_mm filled with each day's irrigation where given
 * @param keep filled with each day where given
 */
export function runBed(
  bed: PreparedBed,
  open: Uint8Array,
  supplying: Supplying,
  net_mm: Float64Array | null = null,
  keep: BedDays | null = null,
): BedTotals {
  const days = bed.rain_mm.length;
  const state = freshState();
  const watered = supplying === "to-need";
  if (days >= spinUpDays)
    for (let i = 0; i < spinUpDays; i++)
      stepBed(bed, state, i, watered && open[i] ? wanted_mm(bed, state) : 0);
  placeSurveyed(bed, state);
  const totals = emptyTotals();
  let drainage_mm = 0;
  let rain_mm = 0;
  let stressDays = 0;
  for (let i = 0; i < days; i++) {
    const today_mm = watered && open[i] ? wanted_mm(bed, state) : 0;
    stepBed(bed, state, i, today_mm);
    drainage_mm += state[slot.drainage]!;
    rain_mm += bed.rain_mm[i]!;
    if (state[slot.ks]! < 1) stressDays++;
    if (today_mm > 0) totals.netByMonth_mm[bed.month[i]!]! += today_mm;
    if (net_mm) net_mm[i] = today_mm;
    if (keep) keepDay(keep, state, i, today_mm);
  }
  const net = totals.netByMonth_mm.reduce((sum, month_mm) => sum + month_mm, 0);
  return { ...totals, net_mm: net, rain_mm, drainage_mm, stressDays };
}
