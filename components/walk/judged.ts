import type { Survey, SurveyFinding } from "../../src/survey/survey.ts";

/** Fields that more than one group has a reading of, with those readings. */
export function usedByGroups({ found = [] }: Survey): Map<string, SurveyFinding[]> {
  const byPath = new Map<string, SurveyFinding[]>();
  for (const row of found)
    if (row.used !== false && row.guess !== true) byPath.set(row.at, [...(byPath.get(row.at) ?? []), row]);
  return new Map([...byPath].filter(([, rows]) => new Set(rows.map(({ group }) => group)).size > 1));
}
