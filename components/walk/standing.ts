import { type Stands, standsFor } from "../../src/survey/measuring/apply-found.ts";
import { pathSteps, valueAt } from "../../src/survey/measuring/field-path.ts";
import type { Survey, SurveyFinding } from "../../src/survey/survey.ts";
import type { Stop } from "./stops.ts";

/** How far a stop has come: what stands in its field, and what the groups took. */
export interface Standing {
  value: unknown;
  /** What the readings in use come to; null where the field rests on none. */
  stands: Stands | null;
  /** Rows of the notebook about it, in use or told, oldest first. */
  rows: readonly SurveyFinding[];
}

/** What is told or seen counts as taken, though no figure rests on it. */
const asSeen = ["seen", "told", "sprinklers looked at"];

const isSeen = ({ how }: SurveyFinding) => asSeen.some((one) => how.startsWith(one));

/** The notebook's rows about one field that count: used ones, and what was seen or told. */
function rowsAt({ found = [] }: Survey, at: string, isLook: boolean): SurveyFinding[] {
  return found.filter(
    (row) =>
      row.at === at &&
      row.guess !== true &&
      (row.used !== false || isSeen(row)) &&
      row.how.startsWith("sprinklers") === isLook,
  );
}

/** What stands at a stop. The first of its fields that has a reading speaks for it. */
export function standingOf(survey: Survey, stop: Stop): Standing {
  const own = `${stop.list}[${stop.index}].`;
  const also = stop.kind === "area" || stop.kind === "shares" ? [] : stop.also;
  const paths = [stop.at, ...also.filter((at) => at.startsWith(own))];
  for (const at of paths) {
    const rows = rowsAt(survey, at, stop.kind === "heads");
    if (rows.length === 0) continue;
    const used = rows.filter(({ used }) => used !== false);
    const stands = used.length > 0 ? standsFor(used) : null;
    return { value: valueAt(survey, pathSteps(at) ?? []), stands, rows };
  }
  return { value: valueAt(survey, pathSteps(stop.at) ?? []), stands: null, rows: [] };
}

/** Whether this group has done a stop. */
export function doneBy(survey: Survey, stop: Stop, group: string | undefined): boolean {
  return standingOf(survey, stop).rows.some((row) => row.group === group);
}
