import type { Bed } from "../grounds.ts";
import { runTime } from "./run-time.ts";
import type { RoundsBed } from "./site.ts";
import type { WeekWatering } from "./week-facts.ts";

/**
 * A bed's waterings of a week cut to the litres that it is given: the first days first, whole minutes, what comes to
 * less than a minute left out.
 */
export function rationWaterings(
  bed: Bed,
  rounds: RoundsBed,
  waterings: readonly WeekWatering[],
  litres: number,
): WeekWatering[] {
  let left_L = litres;
  return waterings.flatMap((watering) => {
    const flow_L_min = watering.litres / watering.minutes;
    const minutes = Math.min(watering.minutes, Math.floor(left_L / flow_L_min + 1e-9));
    if (minutes < 1) return [];
    const run = minutes === watering.minutes ? watering : runTime(bed, rounds, minutes, flow_L_min);
    left_L -= run.litres;
    return [{ ...watering, ...run }];
  });
}
