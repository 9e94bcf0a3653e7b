import type { SurveyBed, SurveyMeasure, SurveyWatering } from "../survey.ts";
import type { Acting } from "./acting.ts";

/** A bed with a set's measures done, one after another in the survey's order. */
export function changedBed(bed: SurveyBed, { measures, tanks }: Acting): SurveyBed {
  return measures.reduce((changed, measure) => withMeasure(changed, measure, tanks), bed);
}

function withMeasure(bed: SurveyBed, measure: SurveyMeasure, tanks: ReadonlySet<string>): SurveyBed {
  const { mulch, replant, changeWatering, useTank } = measure;
  if (mulch?.beds.includes(bed.id)) {
    const { beds: _, ...laid } = mulch;
    return { ...bed, mulch: laid };
  }
  if (replant?.beds.includes(bed.id)) {
    const { plantings, leafCover = bed.leafCover } = replant;
    return { ...bed, plantings, ...(leafCover !== undefined && { leafCover }) };
  }
  if (changeWatering?.beds.includes(bed.id)) {
    const { beds: _, ...change } = changeWatering;
    return { ...bed, watering: wateringWith(bed.watering, change, tanks) };
  }
  if (useTank?.beds.includes(bed.id)) return { ...bed, watering: servedBy(bed.watering, useTank.tank) };
  return bed;
}

/**
 * Watering with some of its fields changed. A new method drops the old efficiency, wetted share, uniformity and
 * flow. Habit's minutes stay unless the change has its own: a drip line run for the hose's minutes is what happens
 * where nobody waters to need. A tank that is not there changes nothing of where the water comes from.
 */
function wateringWith(
  old: SurveyWatering,
  change: Partial<SurveyWatering>,
  tanks: ReadonlySet<string>,
): SurveyWatering {
  const { efficiency: _e, wettedShare: _w, distributionUniformity: _d, flow_L_min: _f, ...rest } = old;
  const kept = change.method === undefined ? old : rest;
  const { supply = kept.supply, tank = kept.tank, ...other } = change;
  const isThere = tank === undefined || tanks.has(tank);
  return { ...kept, ...other, ...(isThere && { supply, ...(tank !== undefined && { tank }) }) };
}

/** The tank serves the bed and the mains give the rest; a bed that lives on tanks alone goes on so. */
function servedBy(old: SurveyWatering, tank: string): SurveyWatering {
  if (old.method === "none") return old;
  return { ...old, tank, supply: old.supply === "tank-only" ? "tank-only" : "tank-then-mains" };
}
