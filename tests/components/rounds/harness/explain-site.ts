import { explain } from "../../../../src/explain/explain.ts";
import { plainSay } from "../../../../src/explain/say.ts";
import type { Working } from "../../../../src/explain/working.ts";
import { readRecord } from "../../../../src/files/record.ts";
import { type WorkedOut, workOut } from "../../../../src/report/work-out.ts";
import { readSurvey } from "../../../../src/survey/read.ts";
import type { Survey } from "../../../../src/survey/survey.ts";
import type { UnitSystem } from "../../../../src/units.ts";

let worked: WorkedOut | null = null;

/** The engine's workings, as a kept site hands them out. */
export function explainSite(survey: Survey, csv: string, at: string, units: UnitSystem): Working | null {
  worked ??= workedOut(survey, csv);
  return worked && explain(worked, at, plainSay(units, "en-GB"));
}

function workedOut(document: Survey, csv: string): WorkedOut | null {
  const read = readSurvey(document);
  const record = readRecord(csv);
  return "survey" in read && "record" in record ? workOut(read.survey, record.record) : null;
}
