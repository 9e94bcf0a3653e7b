import type { Fault } from "../../src/survey/faults.ts";
import { readSurvey } from "../../src/survey/read.ts";
import type { Survey } from "../../src/survey/survey.ts";

/** Faults that a change would bring into a survey which it did not have before. */
export function newFaults(before: Survey, after: Survey): Fault[] {
  const told = new Set(faultsOf(before).map(({ path, code }) => `${path} ${code}`));
  return faultsOf(after).filter(({ path, code }) => !told.has(`${path} ${code}`));
}

/** As a file would hold it: what is left out is not there. */
function faultsOf(survey: Survey): Fault[] {
  const read = readSurvey(JSON.parse(JSON.stringify(survey)));
  return "faults" in read ? [...read.faults] : [];
}
