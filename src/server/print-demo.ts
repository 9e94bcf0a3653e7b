import { readRecord } from "../files/record.ts";
import { reportOf } from "../report/report.ts";
import { workOut } from "../report/work-out.ts";
import { readSurvey } from "../survey/read.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { serverWords } from "../words/en/server.ts";
import { readDemo } from "./real-parts.ts";

/** Prints the demo's answer: what a newcomer reads first. */
export function printDemo(root: string): void {
  const demo = readDemo(root);
  const survey = readSurvey(demo.survey);
  const record = readRecord(demo.weather);
  if ("faults" in survey || "faults" in record) return;
  const { mains } = reportOf(workOut(survey.survey, record.record), cautionSentence);
  const { today_kL_year: today_kL, need_kL_year: need_kL } = mains;
  console.log(
    serverWords.demoAnswer(demo.name, { today_kL, need_kL, giveUp_kL: mains.giveUp_kL_year.p50 ?? 0 }),
  );
}
