import type { PreparedBed } from "../bed-day.ts";
import { elapsed_min, minutesFor, minutesWithin, type RunTime, runTime } from "./run-time.ts";
import type { RoundsBed } from "./site.ts";
import { minutesIn, type Stretch } from "./stretches.ts";

/** Runs that one day's watering is split into at most, while a third of a full dose is given. Ours. */
const mostCycles = 6;

/**
 * Whole minutes that refill what is missing, within the method's limit and the day's hours, in not too many runs:
 * what is left then is the next open day's; null where none fit.
 */
export function openRun(
  { bed, trigger_mm }: PreparedBed,
  rounds: RoundsBed,
  missing_mm: number,
  flow_L_min: number,
  stretches: readonly Stretch[],
): RunTime | null {
  if (flow_L_min <= 0) return null;
  const open_min = minutesIn(stretches);
  const comfortable_min = Math.max(
    minutesWithin(bed, rounds, mostCycles, flow_L_min),
    minutesFor(bed, trigger_mm / 3, flow_L_min),
  );
  const most = Math.floor(Math.min(bed.watering.maxMinutes, open_min, comfortable_min));
  let minutes = Math.min(most, Math.floor(minutesFor(bed, missing_mm, flow_L_min)));
  while (minutes > 0 && elapsed_min(runTime(bed, rounds, minutes, flow_L_min)) > open_min) minutes--;
  return minutes > 0 ? runTime(bed, rounds, minutes, flow_L_min) : null;
}
