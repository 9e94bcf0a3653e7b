import { describe, expect, test } from "vitest";
import { applyFound } from "../../../src/survey/measuring/apply-found.ts";
import { setAt } from "../../../src/survey/measuring/field-path.ts";
import { findingOf } from "../../../src/survey/measuring/finding.ts";
import type { Survey, SurveyFinding } from "../../../src/survey/survey.ts";
import { differences, emptiedSchool, reportOn, surveyOf, typedSchool } from "./emptied-school.ts";
import { sheetRows } from "./school-readings.ts";

/** The emptied school, and what the sheets say beside it. */
function emptied(): Survey {
  const survey = emptiedSchool();
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

describe("a whole school measured from field sheets", () => {
  const before = emptied();
  const { survey: measured, stands, unplaced } = applyFound(before);

  test("every reading found its field", () => {
    expect(unplaced).toEqual([]);
    expect(stands.size).toBe(new Set(sheetRows.map(([at]) => at)).size);
  });

  test("is a survey without faults, and gives nothing like it before the readings are used", () => {
    expect(surveyOf(JSON.parse(JSON.stringify(measured)))).toEqual(measured);
    expect(differences(reportOn(before), reportOn(typedSchool)).length).toBeGreaterThan(50);
  });

  test("gives to 0.1 % the report of the same school typed as numbers", () => {
    expect(
      differences(reportOn(surveyOf(JSON.parse(JSON.stringify(measured)))), reportOn(typedSchool)),
    ).toEqual([]);
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
