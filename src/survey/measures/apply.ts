import type { Survey } from "../survey.ts";
import { actingTogether } from "./acting.ts";
import { changedBed } from "./change-bed.ts";
import { changedRoof, drawsWith, leaksWith, tanksWith } from "./change-water.ts";

/**
 * The survey as it would be with a set of its measures done, each in the survey's order. Measures done leave the
 * list; one that could not act (its tank is not there) stays in it, so that a use it was to move on to a tank goes on
 * counting as mains water.
 * @param ids measures of the set; `water-to-need` is no change of the grounds and is passed over
 */
export function applyMeasures(survey: Survey, ids: Iterable<string>): Survey {
  const set = new Set(ids);
  const { measures = [] } = survey;
  const acting = actingTogether(
    survey,
    measures.filter(({ id }) => set.has(id)),
  );
  const done = new Set(acting.measures);
  return {
    ...survey,
    beds: survey.beds.map((bed) => changedBed(bed, acting)),
    roofs: survey.roofs.map((roof) => changedRoof(roof, acting)),
    tanks: tanksWith(survey, acting),
    draws: drawsWith(survey, acting),
    leaks: leaksWith(survey, acting),
    measures: measures.filter((measure) => !done.has(measure)),
  };
}
