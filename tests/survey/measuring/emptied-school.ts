import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readRecord } from "../../../src/files/record.ts";
import { reportOf } from "../../../src/report/report.ts";
import { workOut } from "../../../src/report/work-out.ts";
import { pathSteps, valueAt } from "../../../src/survey/measuring/field-path.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { cautionSentence } from "../../../src/words/en/cautions.ts";
import { root } from "../../structure/sources.ts";
import { sheetRows } from "./school-readings.ts";

const demo = (file: string) => readFileSync(join(root, "demo", file), "utf8");

export function surveyOf(document: unknown): Survey {
  const read = readSurvey(document);
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.survey;
}

/** The demo's invented school as it was typed, without its own readings. */
export const typedSchool = surveyOf({ ...JSON.parse(demo("school.survey.json")), found: undefined });

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

/** The school with every measured field emptied. */
export function emptiedSchool(): Survey {
  const survey = structuredClone(typedSchool);
  for (const [at] of sheetRows) {
    const steps = pathSteps(at)!;
    const holder = valueAt(survey, steps.slice(0, -1)) as Record<string, unknown>;
    const field = String(steps.at(-1));
    if (field in standIns) holder[field] = standIns[field];
    else delete holder[field];
  }
  survey.beds[3]!.soil = { texture: "clay" };
  return survey;
}

export const schoolRecord = demo("seattle.csv");
const { record } = readRecord(schoolRecord) as Extract<ReturnType<typeof readRecord>, { record: unknown }>;

export const reportOn = (survey: Survey) => reportOf(workOut(survey, record), cautionSentence);

/** Figures of two documents that differ by more than a thousandth, and everything else that differs. */
export function differences(one: unknown, other: unknown, at = ""): string[] {
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
