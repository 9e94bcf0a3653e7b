import type { Survey, SurveyMeasure } from "../survey.ts";

/** What of a set of measures can be done together. */
export interface Acting {
  /** In the survey's order. */
  measures: SurveyMeasure[];
  /** Ids of the tanks that are there: today's, and those that the set adds. */
  tanks: ReadonlySet<string>;
}

/** A measure that needs a tank which neither stands there nor comes with the set does nothing. */
export function actingTogether(survey: Survey, set: readonly SurveyMeasure[]): Acting {
  const tanks = new Set(survey.tanks.map(({ id }) => id));
  for (const { addTank } of set) if (addTank) tanks.add(addTank.id);
  const measures = set.filter((measure) => {
    const wanted = tankWanted(measure);
    return wanted === null || tanks.has(wanted);
  });
  return { measures, tanks };
}

/** The tank that a measure cannot do without; null where it needs none. */
export function tankWanted({ resizeTank, useTank, connectRoof, addDraw }: SurveyMeasure): string | null {
  return (resizeTank ?? useTank ?? connectRoof ?? addDraw)?.tank ?? null;
}
