import type { Assumed, resolve } from "../../src/survey/resolve.ts";
import type { Survey } from "../../src/survey/survey.ts";

const known = new WeakMap<Survey, ReadonlyMap<string, Assumed>>();
const none: ReadonlyMap<string, Assumed> = new Map();

let fill: typeof resolve | null = null;
let coming: Promise<void> | null = null;

/** The tables weigh more than the fields that they fill, and come after them. */
async function fetchTables(): Promise<void> {
  fill = (await import("../../src/survey/resolve.ts")).resolve;
}

/**
 * What stands in for the blanks of a survey, by path; worked out once for each survey. Nothing until the tables are
 * there.
 * @param ready called once they are, where they were not
 */
export function assumedOf(survey: Survey, ready: () => void): ReadonlyMap<string, Assumed> {
  if (fill === null) {
    coming ??= fetchTables();
    coming.then(ready, () => {
      // asked for again at the next change: without them the fields are still there
      coming = null;
    });
    return none;
  }
  const kept = known.get(survey);
  if (kept) return kept;
  const assumed = new Map(fill(survey).assumed.map((one) => [one.where, one]));
  known.set(survey, assumed);
  return assumed;
}
