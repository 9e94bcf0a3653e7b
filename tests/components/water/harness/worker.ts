import "../../../../src/survey/without-compiling.ts";

import { explain } from "../../../../src/explain/explain.ts";
import { plainSay } from "../../../../src/explain/say.ts";
import { readRecord } from "../../../../src/files/record.ts";
import { answerTo, type Question } from "../../../../src/report/questions.ts";
import { reportOf } from "../../../../src/report/report.ts";
import { toTanksView } from "../../../../src/report/tanks-view.ts";
import { toThirstView } from "../../../../src/report/thirst-view.ts";
import { type WorkedOut, workOut } from "../../../../src/report/work-out.ts";
import { readSurvey } from "../../../../src/survey/read.ts";
import type { UnitSystem } from "../../../../src/units.ts";
import { cautionSentence } from "../../../../src/words/en/cautions.ts";

export type Asked =
  | { kind: "start"; survey: string; record: string }
  | { kind: "question"; question: Question }
  | { kind: "explain"; at: string; units: UnitSystem };

let worked: WorkedOut;

function start(surveyText: string, recordText: string) {
  const survey = readSurvey(surveyText);
  const record = readRecord(recordText);
  if ("faults" in survey || "faults" in record) throw new Error("The harness was given files with faults.");
  worked = workOut(survey.survey, record.record);
  const report = reportOf(worked, cautionSentence);
  return {
    thirst: toThirstView(worked, report, cautionSentence),
    tanks: toTanksView(worked, report, cautionSentence),
  };
}

function answer(asked: Asked): unknown {
  if (asked.kind === "start") return start(asked.survey, asked.record);
  if (asked.kind === "explain") return explain(worked, asked.at, plainSay(asked.units, "en-GB"));
  return answerTo(worked, asked.question);
}

addEventListener("message", (event: MessageEvent<{ id: number; asked: Asked }>) => {
  const { id, asked } = event.data;
  postMessage({ id, told: answer(asked) });
});
