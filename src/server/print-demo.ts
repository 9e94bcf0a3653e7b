import { printSummary } from "../cli/summary.ts";
import { readRecord } from "../files/record.ts";
import { reportOf } from "../report/report.ts";
import { workOut } from "../report/work-out.ts";
import { readSurvey } from "../survey/read.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { faultSentence } from "../words/en/faults.ts";
import { readDemo } from "./real-parts.ts";

/** Works the demo out and prints its answer, as the command line does for any survey. */
export function printDemo(root: string): void {
  const demo = readDemo(root);
  const survey = readSurvey(demo.survey);
  const record = readRecord(demo.weather);
  const faults = [survey, record].flatMap((read) => ("faults" in read ? read.faults : []));
  if ("faults" in survey || "faults" in record) {
    for (const fault of faults) console.error(faultSentence(fault));
    return;
  }
  const worked = workOut(survey.survey, record.record);
  printSummary(worked, reportOf(worked, cautionSentence), "metric", "en");
}
