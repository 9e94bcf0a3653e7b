import { wholeYears } from "../engine/years.ts";
import { daysOf, type WateredAs } from "./need-days.ts";
import type { WorkedOut } from "./work-out.ts";

/** One bed through one year, day by day; depths over the bed. Plain data that can cross from a worker. */
export interface BedYear {
  bed: string;
  year: number;
  as: WateredAs;
  firstDay: number;
  /** What the roots can reach between full and wilted. */
  available_mm: number;
  /** Down by this much, the bed is watered. */
  trigger_mm: number;
  /** Water that the roots can reach at the end of each day. */
  stored_mm: Float64Array;
  rain_mm: Float64Array;
  /** What of each day's watering reached the roots, and what of that a tank gave. */
  watered_mm: Float64Array;
  fromTank_mm: Float64Array;
  drained_mm: Float64Array;
  used_mm: Float64Array;
  /** 1 on a day on which the plants could not take what they would have. */
  stressed: Uint8Array;
  /** Litres let out for each mm that reaches the roots. */
  letOut_L_mm: number;
  /** Whether what the tank does not give is the mains'. */
  ownWater: boolean;
}

/**
 * @param k the bed's place in the survey
 * @returns null of a year that the record does not hold whole, or today's where that is not known
 */
export function bedYear(worked: WorkedOut, k: number, year: number, as: WateredAs): BedYear | null {
  const { calendar } = worked.weather;
  const span = wholeYears(calendar).find((each) => each.year === year);
  const run = span && daysOf(worked, k, as);
  if (!span || !run) return null;
  const { grown } = worked.ready.beds[k]!;
  const { id, area_m2, watering } = grown.bed;
  const part = (values: Float64Array) => values.slice(span.from, span.to);
  const letOut_L_mm = area_m2 / watering.efficiency;
  const watered_mm = part(run.net_mm);
  return {
    bed: id,
    year,
    as,
    firstDay: calendar.firstDay + span.from,
    available_mm: grown.available_mm,
    trigger_mm: grown.trigger_mm,
    stored_mm: part(run.days.rootDepletion_mm).map((down_mm) => grown.available_mm - down_mm),
    rain_mm: part(grown.rain_mm),
    watered_mm,
    fromTank_mm: run.fromTank_L
      ? part(run.fromTank_L).map((litres) => litres / letOut_L_mm)
      : new Float64Array(watered_mm.length),
    drained_mm: part(run.days.drainage_mm),
    used_mm: part(run.days.etc_mm),
    stressed: Uint8Array.from(part(run.days.ks), (ks) => (ks < 1 ? 1 : 0)),
    letOut_L_mm,
    ownWater: watering.supply === "other",
  };
}
