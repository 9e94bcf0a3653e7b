import { type BedDays, type BedState, freshState, type PreparedBed, runDays, slot } from "./bed-day.ts";

/** Records at least this long are run once over their first year before day 1. */
export const spinUpDays = 365;

/** Totals of a bed's run over the record. */
export interface BedTotals {
  net_mm: number;
  netByMonth_mm: Float64Array;
  rain_mm: number;
  drainage_mm: number;
  stressDays: number;
}

export function blankDays(days: number): BedDays {
  return {
    kcb: new Float64Array(days),
    ke: new Float64Array(days),
    ks: new Float64Array(days),
    etc_mm: new Float64Array(days),
    drainage_mm: new Float64Array(days),
    rootDepletion_mm: new Float64Array(days),
    surfaceDepletion_mm: new Float64Array(days),
    start: new Float64Array(slot.rain),
  };
}

/**
 * A spun-up state made day 1's: sums cleared, and a surveyed state in place of the spun-up one, held to what
 * the soil can hold.
 */
export function beginRecord({ bed, available_mm, tew_mm }: PreparedBed, state: BedState): void {
  state.fill(0, slot.rain);
  if (!bed.initial) return;
  state[slot.rootDepletion] = Math.min(available_mm, Math.max(0, bed.initial.rootDepletion_mm));
  state[slot.surfaceDepletion] = Math.min(tew_mm, Math.max(0, bed.initial.surfaceDepletion_mm));
}

/**
 * Runs a bed over the whole record on its own.
 * @param open days on which it is watered to need; null: by rain alone
 * @param net_mm filled with each day's irrigation
 * @param keep filled with each day where given
 */
export function runBed(
  bed: PreparedBed,
  open: Uint8Array | null,
  net_mm = new Float64Array(bed.rain_mm.length),
  keep: BedDays | null = null,
): BedTotals {
  const days = net_mm.length;
  const state = freshState();
  if (days >= spinUpDays) runDays(bed, state, net_mm, open, 0, spinUpDays, null);
  beginRecord(bed, state);
  runDays(bed, state, net_mm, open, 0, days, keep);
  return totalsOf(bed, state, net_mm);
}

/** Sums of a run that has ended. */
export function totalsOf({ month }: PreparedBed, state: BedState, net_mm: Float64Array): BedTotals {
  const netByMonth_mm = new Float64Array(12);
  for (let i = 0; i < net_mm.length; i++) if (net_mm[i]! > 0) netByMonth_mm[month[i]!]! += net_mm[i]!;
  return {
    net_mm: netByMonth_mm.reduce((sum, month_mm) => sum + month_mm, 0),
    netByMonth_mm,
    rain_mm: state[slot.rain]!,
    drainage_mm: state[slot.drainage]!,
    stressDays: state[slot.stressDays]!,
  };
}
