import type { Grounds } from "../engine/grounds.ts";
import { type CautionCode, cautionsOf } from "./cautions.ts";
import { type Assumed, type PickFigure, standsIn } from "./resolve-assumed.ts";
import { resolveBed } from "./resolve-bed.ts";
import { resolvePlace } from "./resolve-place.ts";
import { resolveDraw, resolveRoof, resolveTank } from "./resolve-tanks.ts";
import type { Survey } from "./survey.ts";

export type { Assumed } from "./resolve-assumed.ts";

export interface Resolved {
  grounds: Grounds;
  /** Every blank of the survey that something stands in for, in the document's order. */
  assumed: Assumed[];
  cautions: CautionCode[];
}

/**
 * A survey with every blank filled from the data tables. The survey has been checked: its ids are known and
 * its shares add to 1.
 * @param columns what the weather record has; a blank of the site is listed only where it counts, and all are without them
 * @param pick chooses from the tables' ranges; the middle where not given
 */
export function resolve(survey: Survey, columns?: Iterable<string>, pick?: PickFigure): Resolved {
  const assumed: Assumed[] = [];
  const stands = standsIn(assumed, pick);
  const has = columns ? recordHas(columns) : countsEverywhere;
  const { beds, roofs, tanks, taps = [], draws = [], leaks = [], measures = [], site } = survey;
  const grounds: Grounds = {
    place: resolvePlace(survey, has, stands),
    beds: beds.map((bed, i) => resolveBed(bed, `beds[${i}]`, taps, stands)),
    roofs: roofs.map((roof, i) => resolveRoof(roof, `roofs[${i}]`, stands)),
    tanks: tanks.map((tank, i) => resolveTank(tank, `tanks[${i}]`, stands)),
    draws: draws.map((draw, i) => resolveDraw(draw, `draws[${i}]`, stands)),
    mainsDraws: measures.flatMap(({ addDraw, chosen }, i) =>
      addDraw && chosen !== false ? resolveDraw(addDraw, `measures[${i}].addDraw`, stands) : [],
    ),
    leaks_L_day: leaks.reduce((sum, { litresPerDay }) => sum + litresPerDay, 0),
    absences: (site.absences ?? []).map(({ from, to, carer }) => ({
      from,
      to,
      hasCarer: carer !== undefined,
    })),
  };
  return { grounds, assumed, cautions: cautionsOf(survey) };
}

/** With temperatures, humidity and wind but no measured sun, every blank of the site counts. */
const countsEverywhere = (column: string) => !["et0_mm", "solar_MJ_m2", "sun_h"].includes(column);

function recordHas(columns: Iterable<string>): (column: string) => boolean {
  const had = new Set(columns);
  return (column) => had.has(column);
}
