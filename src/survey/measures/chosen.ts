import type { Survey, SurveyMeasure } from "../survey.ts";

/** The member of every plan that no measure stands for: each bed gets what it needs, not what habit gives. */
export const waterToNeed = "water-to-need";

/** The measures of the plan, in the survey's order; a measure is chosen unless the survey says that it is not. */
export function chosenMeasures({ measures = [] }: Survey): SurveyMeasure[] {
  return measures.filter(({ chosen }) => chosen !== false);
}
