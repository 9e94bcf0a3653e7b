import { prepareBed } from "../engine/bed-day.ts";
import { runBed } from "../engine/bed-run.ts";
import { grossFromNet_L, openDays } from "../engine/watering.ts";
import { perYear } from "../engine/years.ts";
import { resolve } from "../survey/resolve.ts";
import type { SurveyBed } from "../survey/survey.ts";
import { plantRow, type Thirst, thirstClasses } from "../tables/plants.ts";
import type { WorkedOut } from "./work-out.ts";

/** One thing about a bed taken away, or another in its place. */
export type Change =
  | { kind: "no-shade" }
  | { kind: "no-mulch" }
  | { kind: "soil"; texture: string }
  | { kind: "thirst"; thirst: Thirst };

/** What the same bed would take so, run over the same days. */
export interface Without {
  change: Change;
  /** Gross litres of a mean year, with water always there. */
  need_L_year: number;
  /** The same less what the bed takes as it is: above 0, the bed as it is takes less. */
  more_L_year: number;
}

/** The soil that beds are held against. */
const otherTexture = "loam";

/**
 * What shade, mulch, soil and thirst of a bed each change: the same bed without it, or with another, run and not
 * guessed. A change that leaves the bed as it is, is left out, and so is a thirst that none of its kinds has a row for.
 * @param k the bed's place in the survey
 */
export function without(worked: WorkedOut, k: number): Without[] {
  const bed = worked.survey.beds[k]!;
  const asItIs_L = worked.outcome.beds[k]!.gross_L;
  const { days } = worked.outcome;
  return changesOf(bed).map((change) => {
    const changed_L = needOf_L(worked, k, changed(bed, change));
    return {
      change,
      need_L_year: perYear(changed_L, days),
      more_L_year: perYear(changed_L - asItIs_L, days),
    };
  });
}

function changesOf(bed: SurveyBed): Change[] {
  const { obstructions = [], mulch, soil, plantings } = bed;
  const changes: Change[] = [];
  if (obstructions.length > 0) changes.push({ kind: "no-shade" });
  if (mulch && mulch.cover > 0) changes.push({ kind: "no-mulch" });
  if (soil && soil.texture !== otherTexture) changes.push({ kind: "soil", texture: otherTexture });
  for (const thirst of thirstClasses) {
    const differs = plantings.some(
      (planting) => planting.thirst !== thirst || planting.kcbFull !== undefined,
    );
    const isThere = plantings.some(({ kind }) => !plantRow(kind, thirst).stoodIn);
    if (differs && isThere) changes.push({ kind: "thirst", thirst });
  }
  return changes;
}

function changed(bed: SurveyBed, change: Change): SurveyBed {
  switch (change.kind) {
    case "no-shade":
      return { ...bed, obstructions: [] };
    case "no-mulch": {
      const { mulch: _, ...bare } = bed;
      return bare;
    }
    case "soil":
      return { ...bed, soil: { texture: otherTexture } };
    case "thirst":
      return {
        ...bed,
        plantings: bed.plantings.map(({ kcbFull: _, ...planting }) => ({
          ...planting,
          thirst: change.thirst,
        })),
      };
  }
}

/** Gross litres over the record of a bed in place of the survey's, with water always there. */
function needOf_L({ survey, filled, weather, ready }: WorkedOut, k: number, bed: SurveyBed): number {
  const beds = survey.beds.map((other, place) => (place === k ? bed : other));
  const resolved = resolve({ ...survey, beds }, Object.keys(filled.columns)).grounds.beds[k]!;
  const { shadeOf, absent } = ready.frame;
  const prepared = prepareBed(resolved, weather, false, shadeOf);
  const { net_mm } = runBed(prepared, openDays(resolved.watering, weather.calendar, absent));
  return grossFromNet_L(net_mm, resolved.area_m2, resolved.watering.efficiency);
}
