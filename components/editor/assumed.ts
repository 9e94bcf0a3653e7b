import { type Assumed, resolve } from "../../src/survey/resolve.ts";
import type { Survey } from "../../src/survey/survey.ts";

const known = new WeakMap<Survey, ReadonlyMap<string, Assumed>>();

/** What stands in for the blanks of a survey, by path; worked out once for each survey. */
export function assumedOf(survey: Survey): ReadonlyMap<string, Assumed> {
  const kept = known.get(survey);
  if (kept) return kept;
  const assumed = new Map(resolve(survey).assumed.map((one) => [one.where, one]));
  known.set(survey, assumed);
  return assumed;
}
