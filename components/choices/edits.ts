import type { Survey, SurveyMeasure } from "../../src/survey/survey.ts";

/** Changes of a survey that the screen makes. Each gives a new survey; the one given stays as it was. */

export type Quote = NonNullable<SurveyMeasure["quote"]>;
export type QuoteLine = Quote["lines"][number];

function withMeasure(survey: Survey, id: string, change: (measure: SurveyMeasure) => SurveyMeasure): Survey {
  const { measures = [] } = survey;
  return { ...survey, measures: measures.map((measure) => (measure.id === id ? change(measure) : measure)) };
}

/** A measure's quote in lines; a cost in one sum is one line of its name. */
export function linesOf({ quote, cost, life_years, name }: SurveyMeasure): QuoteLine[] {
  if (quote) return [...quote.lines];
  if (cost === undefined) return [];
  return [{ what: name, cost, ...(life_years !== undefined && { life_years }) }];
}

/** The measure with other lines of its quote; none: it has no cost any more. */
export function withLines(survey: Survey, id: string, lines: readonly QuoteLine[]): Survey {
  return withMeasure(survey, id, (measure) => {
    const { quote, cost, ...rest } = measure;
    const [only] = lines;
    if (only === undefined) return rest;
    const { life_years, ...others } = rest;
    // a plain sum stays a plain sum, its life the measure's own
    if (!quote && cost !== undefined && lines.length === 1)
      return {
        ...others,
        cost: only.cost,
        ...(only.life_years !== undefined && { life_years: only.life_years }),
      };
    return { ...rest, quote: { ...quote, lines: [...lines] } };
  });
}

/** @param grant null: none */
export function withGrant(survey: Survey, id: string, grant: number | null): Survey {
  return withMeasure(survey, id, (measure) => {
    const { cost: _, ...rest } = measure;
    const lines = linesOf(measure);
    if (lines.length === 0) return measure;
    const { grant: _before, ...quote } = measure.quote ?? { lines };
    return { ...rest, quote: { ...quote, lines, ...(grant !== null && { grant }) } };
  });
}

/** @param upkeep null: none */
export function withUpkeep(survey: Survey, id: string, upkeep: number | null): Survey {
  return withMeasure(survey, id, ({ upkeepPerYear: _, ...measure }) => ({
    ...measure,
    ...(upkeep !== null && { upkeepPerYear: upkeep }),
  }));
}

/** Into the plan or out of it; of a group at most one stays in. */
export function withChosen(survey: Survey, id: string, chosen: boolean): Survey {
  const group = survey.measures?.find((measure) => measure.id === id)?.oneOf;
  const measures = (survey.measures ?? []).map((measure) => {
    if (measure.id === id) return { ...measure, chosen };
    return chosen && group !== undefined && measure.oneOf === group ? { ...measure, chosen: false } : measure;
  });
  return { ...survey, measures };
}

/** The plan holds these measures and no others. */
export function withPlan(survey: Survey, ids: readonly string[]): Survey {
  const measures = (survey.measures ?? []).map((measure) => ({
    ...measure,
    chosen: ids.includes(measure.id),
  }));
  return { ...survey, measures };
}

export function withProposal(survey: Survey, proposed: SurveyMeasure): Survey {
  return { ...survey, measures: [...(survey.measures ?? []), { ...proposed, chosen: true }] };
}

/** @param budget null: no limit */
export function withBudget(survey: Survey, budget: number | null): Survey {
  const { budget: _, ...money } = survey.money ?? {};
  return { ...survey, money: { ...money, ...(budget !== null && { budget }) } };
}

/** @param perYear null: everything at once */
export function withBudgetPerYear(survey: Survey, perYear: number | null): Survey {
  const { budgetPerYear: _, ...money } = survey.money ?? {};
  return { ...survey, money: { ...money, ...(perYear !== null && { budgetPerYear: perYear }) } };
}

export function planOf({ measures = [] }: Survey): string[] {
  return measures.filter(({ chosen }) => chosen !== false).map(({ id }) => id);
}
