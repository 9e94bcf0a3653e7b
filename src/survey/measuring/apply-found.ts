import type { SurveyFinding } from "../survey.ts";
import { type CombinedFigure, type CombinedWord, combineFigures, combineWords } from "./combine.ts";
import { pathSteps, setAt } from "./field-path.ts";
import { type Given, givenFor } from "./finding.ts";
import { workOut } from "./work-out.ts";

/** What stands for one field after every group's findings. */
export type Stands = { figure: CombinedFigure } | { word: CombinedWord } | { value: unknown; groups: number };

export interface Applied<Document> {
  survey: Document;
  /** By path, what was put there. */
  stands: Map<string, Stands>;
  /** Paths that lead nowhere in the survey. */
  unplaced: string[];
}

/** Forms of a soil that exclude each other: setting one takes the others away. */
const soilForms: readonly (readonly string[])[] = [
  ["texture"],
  ["sand_pct", "clay_pct"],
  ["fieldCapacity", "wiltingPoint", "tew_mm", "rew_mm"],
];

/**
 * Puts what was measured into the survey's fields: of each path the findings that are used (those not marked
 * otherwise count as used), combined. The survey given stays as it is.
 */
export function applyFound<Document extends object & { found?: SurveyFinding[] }>(
  survey: Document,
): Applied<Document> {
  const applied = structuredClone(survey);
  const stands = new Map<string, Stands>();
  const unplaced: string[] = [];
  for (const [at, findings] of usedByPath(survey.found ?? [])) {
    const steps = pathSteps(at);
    const standing = standsFor(findings);
    if (!steps || !setAt(applied, steps, standingValue(standing))) {
      unplaced.push(at);
      continue;
    }
    dropOtherSoilForms(applied, steps);
    stands.set(at, standing);
  }
  return { survey: applied, stands, unplaced };
}

function usedByPath(found: readonly SurveyFinding[]): Map<string, SurveyFinding[]> {
  const byPath = new Map<string, SurveyFinding[]>();
  for (const finding of found) {
    if (finding.used === false || finding.guess === true) continue;
    byPath.set(finding.at, [...(byPath.get(finding.at) ?? []), finding]);
  }
  return byPath;
}

/** What stands where these findings of one path are used: numbers and words combined, anything else the latest. */
export function standsFor(findings: readonly SurveyFinding[]): Stands {
  const given = findings.map(again);
  const last = given.at(-1)!;
  if ("figure" in last)
    return { figure: combineFigures(given.flatMap((one) => ("figure" in one ? [one.figure] : []))) };
  if ("word" in last)
    return { word: combineWords(given.flatMap((one) => ("word" in one ? [one.word] : []))) };
  return { value: last.value, groups: findings.length };
}

/** A finding's figure worked out from its readings again; as entered where it was not measured by a way of ours. */
function again({ at, how, readings, figure, standardError = 0 }: SurveyFinding): Given {
  const outcome = workOut(how, readings);
  const given = outcome && !("impossible" in outcome) ? givenFor(outcome, at) : null;
  if (given) return given;
  return typeof figure === "number" ? { figure: { figure, standardError } } : { word: figure };
}

function standingValue(stands: Stands): unknown {
  if ("figure" in stands) return stands.figure.figure;
  return "word" in stands ? stands.word.word : stands.value;
}

function dropOtherSoilForms(document: object, steps: readonly (string | number)[]): void {
  const field = String(steps.at(-1));
  if (steps.at(-2) !== "soil") return;
  const own = soilForms.find((form) => form.includes(field));
  if (!own) return;
  let soil: unknown = document;
  for (const step of steps.slice(0, -1)) soil = (soil as Record<string | number, unknown>)[step];
  for (const other of soilForms.filter((form) => form !== own).flat())
    delete (soil as Record<string, unknown>)[other];
}
