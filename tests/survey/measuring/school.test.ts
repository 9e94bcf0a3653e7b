import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readRecord } from "../../../src/files/record.ts";
import { reportOf } from "../../../src/report/report.ts";
import { workOut } from "../../../src/report/work-out.ts";
import { applyFound } from "../../../src/survey/measuring/apply-found.ts";
import { pathSteps, setAt, valueAt } from "../../../src/survey/measuring/field-path.ts";
import { findingOf } from "../../../src/survey/measuring/finding.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey, SurveyFinding } from "../../../src/survey/survey.ts";
import { cautionSentence } from "../../../src/words/en/cautions.ts";
import { root } from "../../structure/sources.ts";
import { sheetRows } from "./school-readings.ts";

const demo = (file: string) => readFileSync(join(root, "demo", file), "utf8");

function surveyOf(document: unknown): Survey {
  const read = readSurvey(document);
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.survey;
}

const typed = surveyOf({ ...JSON.parse(demo("school.survey.json")), found: undefined });

/** What stands in a field that must be there until it is measured: wrong on purpose. */
const standIns: Readonly<Record<string, unknown>> = {
  area_m2: 1,
  capacity_L: 1_000_000,
  litresPerDay: 1,
  share: 0.5,
  minutes: 1,
  days: [],
  thirst: "high",
  cover: 0.01,
  depth_mm: 1,
};

/** The school with every measured field emptied, and what the sheets say beside it. */
function emptied(): Survey {
  const survey = structuredClone(typed);
  for (const [at] of sheetRows) {
    const steps = pathSteps(at)!;
    const holder = valueAt(survey, steps.slice(0, -1)) as Record<string, unknown>;
    const field = String(steps.at(-1));
    if (field in standIns) holder[field] = standIns[field];
    else delete holder[field];
  }
  survey.beds[3]!.soil = { texture: "clay" };
  survey.found = sheetRows.map(([at, how, readings], i): SurveyFinding => {
    const made = findingOf({
      id: `f${i}`,
      at,
      how,
      readings: [...readings],
      group: i % 2 === 0 ? "g1" : "g2",
      when: "2015-09-22T10:30",
      used: true,
    });
    if (!("finding" in made)) throw new Error(`${at}: ${JSON.stringify(made.refused)}`);
    return made.finding;
  });
  return survey;
}

const { record } = readRecord(demo("seattle.csv")) as Extract<
  ReturnType<typeof readRecord>,
  { record: unknown }
>;
const report = (survey: Survey) => reportOf(workOut(survey, record), cautionSentence);

/** Figures of two documents that differ by more than a thousandth, and everything else that differs. */
function differences(one: unknown, other: unknown, at = ""): string[] {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= 1e-3 * Math.abs(other) ? [] : [`${at}: ${one} for ${other}`];
  if (one !== null && other !== null && typeof one === "object" && typeof other === "object") {
    const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
    return [...keys].flatMap((key) =>
      differences(
        (one as Record<string, unknown>)[key],
        (other as Record<string, unknown>)[key],
        `${at}.${key}`,
      ),
    );
  }
  return one === other ? [] : [`${at}: ${String(one)} for ${String(other)}`];
}

describe("a whole school measured from field sheets", () => {
  const before = emptied();
  const { survey: measured, stands, unplaced } = applyFound(before);

  test("every reading found its field", () => {
    expect(unplaced).toEqual([]);
    expect(stands.size).toBe(new Set(sheetRows.map(([at]) => at)).size);
  });

  test("is a survey without faults, and gives nothing like it before the readings are used", () => {
    expect(surveyOf(JSON.parse(JSON.stringify(measured)))).toEqual(measured);
    expect(differences(report(before), report(typed)).length).toBeGreaterThan(50);
  });

  test("gives to 0.1 % the report of the same school typed as numbers", () => {
    expect(differences(report(surveyOf(JSON.parse(JSON.stringify(measured)))), report(typed))).toEqual([]);
  });

  test("every measured number has an error of its own", () => {
    const without = measured.found!.filter(
      ({ figure, standardError, how }) =>
        typeof figure === "number" &&
        !(standardError! > 0) &&
        !/^(skyline|gravity-hose|habit-week|transect-stretches)/.test(how),
    );
    expect(without).toEqual([]);
  });
});

test("applying leaves the survey given as it was", () => {
  const before = emptied();
  const kept = structuredClone(before);
  applyFound(before);
  expect(before).toEqual(kept);
  expect(setAt(before, ["beds", 99, "area_m2"], 4)).toBe(false);
});
