import type { SurveyFinding } from "../survey.ts";
import type { Figure } from "./figure.ts";
import type { Outcome, Worked } from "./way.ts";
import { workOut } from "./work-out.ts";

/** What a group read, before it is worked out. */
export type FoundReadings = Omit<SurveyFinding, "figure" | "standardError">;

/** What readings give for one field: a figure, a word, or a part of the survey. */
export type Given = { figure: Figure } | { word: string } | { value: unknown };

/** The part of an outcome that a path asks for: the key that the path ends with; null for none. */
export function givenFor({ figures, words = {}, values = {} }: Worked, at: string): Given | null {
  const ends = (key: string) => at === key || at.endsWith(`.${key}`);
  const figure = Object.keys(figures).find(ends);
  if (figure !== undefined) return { figure: figures[figure]! };
  const word = Object.keys(words).find(ends);
  if (word !== undefined) return { word: words[word]! };
  const value = Object.keys(values).find(ends);
  return value === undefined ? null : { value: values[value] };
}

/**
 * The row of `found` that readings make, or why they make none. A part of the survey, such as a skyline, is counted
 * in `figure` and worked out again from its readings where it is used.
 */
export function findingOf(readings: FoundReadings): { finding: SurveyFinding } | { refused: Outcome | null } {
  const outcome = workOut(readings.how, readings.readings);
  if (!outcome || "impossible" in outcome) return { refused: outcome };
  const given = givenFor(outcome, readings.at);
  if (!given) return { refused: null };
  return { finding: { ...readings, ...kept(given) } };
}

function kept(given: Given): Pick<SurveyFinding, "figure" | "standardError"> {
  if ("figure" in given) {
    const { figure, standardError } = given.figure;
    return { figure, standardError };
  }
  if ("word" in given) return { figure: given.word };
  return { figure: Array.isArray(given.value) ? given.value.length : 1 };
}
