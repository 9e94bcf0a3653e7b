import { formatIso } from "../../engine/weather/dates.ts";
import type { UnfillableGap } from "../../engine/weather/gaps.ts";
import { unfillableGap } from "./weather.ts";

/** A refusal with its path, for any edge to show. */
export interface Refusal {
  path: string;
  sentence: string;
}

/**
 * What the engine refuses although survey and record are each right, in words; null where the error is none of
 * those.
 */
export function refusalsOf(error: unknown, bedIds: readonly string[]): Refusal[] | null {
  if (!(error instanceof Error)) return null;
  if (error.name === "UnfillableGap")
    return (error as UnfillableGap).gaps.map(({ column, fromDay, toDay }) => ({
      path: `weather, ${column}`,
      sentence: unfillableGap(column, formatIso(fromDay), formatIso(toDay)),
    }));
  if (error.name === "ShadeNeedsSky") {
    const { bed } = error as Error & { bed: string };
    return [{ path: `beds[${bedIds.indexOf(bed)}].obstructions`, sentence: shadeNeedsSky }];
  }
  return null;
}

const shadeNeedsSky =
  "The shade of this bed cannot be worked out: the weather record has neither temperatures nor sun. Add tmin_c and tmax_c, solar_MJ_m2 or sun_h to the record, or take the obstructions out.";
