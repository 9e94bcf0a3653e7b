import { readFileSync } from "node:fs";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { readRecord } from "../../src/files/record.ts";
import { reportOf } from "../../src/report/report.ts";
import { type WorkedOut, type WorkOutOptions, workOut } from "../../src/report/work-out.ts";
import { readSurvey } from "../../src/survey/read.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";
import { faultSentence } from "../../src/words/en/faults.ts";

const root = new URL("../../", import.meta.url);

export function textOf(path: string): string {
  return readFileSync(new URL(path, root), "utf8");
}

/** The record in a file of the repository; a fault in it fails the test with its sentence. */
export function recordAt(path: string): WeatherRecord {
  const read = readRecord(textOf(path));
  if ("faults" in read) throw new Error(read.faults.map(faultSentence).join("\n"));
  return read.record;
}

export function surveyOf(document: unknown): Survey {
  const read = readSurvey(document);
  if ("faults" in read) throw new Error(read.faults.map(faultSentence).join("\n"));
  return read.survey;
}

export function workFiles(survey: string, record: string, options: WorkOutOptions = {}): WorkedOut {
  return workOut(surveyOf(textOf(survey)), recordAt(record), options);
}

export function report(worked: WorkedOut) {
  return reportOf(worked, cautionSentence);
}
