import "../../src/survey/without-compiling.ts";

import { readRecord } from "../../src/files/record.ts";
import { reportOf } from "../../src/report/report.ts";
import { toView } from "../../src/report/to-view.ts";
import { workOut } from "../../src/report/work-out.ts";
import type { Fault } from "../../src/survey/faults.ts";
import { readSurvey } from "../../src/survey/read.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";
import { faultWords } from "../../src/words/en/faults.ts";
import { refusalsOf } from "../../src/words/en/refusals.ts";
import type { Ask, Told, ToldFault, Which } from "./messages.ts";

function told(faults: readonly Fault[]): ToldFault[] {
  return faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) }));
}

function answer({ id, survey: surveyText, weather }: Ask): Told {
  const survey = readSurvey(surveyText);
  const record = readRecord(weather);
  if ("faults" in survey || "faults" in record) {
    const faults: { of: Which; faults: ToldFault[] }[] = [];
    if ("faults" in survey) faults.push({ of: "survey", faults: told(survey.faults) });
    if ("faults" in record) faults.push({ of: "weather", faults: told(record.faults) });
    return { id, faults };
  }
  try {
    const worked = workOut(survey.survey, record.record);
    return { id, view: toView(worked, reportOf(worked, cautionSentence), cautionSentence) };
  } catch (error) {
    const bedIds = survey.survey.beds.map((bed) => bed.id);
    const refusals = refusalsOf(error, bedIds);
    if (refusals) return { id, faults: [{ of: "weather", faults: refusals }] };
    throw error;
  }
}

addEventListener("message", (event: MessageEvent<Ask>) => {
  let reply: Told;
  try {
    reply = answer(event.data);
  } catch (error) {
    reply = { id: event.data.id, crash: error instanceof Error ? error.message : String(error) };
  }
  postMessage(reply);
});
