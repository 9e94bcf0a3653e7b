import { fieldsSetBy } from "../checks/measures.ts";
import type { SurveyMeasure } from "../survey.ts";

/**
 * Pairs of measures that are never done together, by their places: two of one group, or two that set the same field.
 */
export function measuresApart(measures: readonly SurveyMeasure[]): [number, number][] {
  const fields = measures.map((measure) => new Set(fieldsSetBy({ path: [], fields: { ...measure } })));
  return measures.flatMap((measure, b) =>
    measures.slice(0, b).flatMap((other, a): [number, number][] => {
      const isGroup = measure.oneOf !== undefined && measure.oneOf === other.oneOf;
      const isField = [...fields[b]!].some((field) => fields[a]!.has(field));
      return isGroup || isField ? [[a, b]] : [];
    }),
  );
}
