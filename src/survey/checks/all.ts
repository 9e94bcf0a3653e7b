import type { FaultCollector } from "../collector.ts";
import { checkBeds } from "./beds.ts";
import { checkCalendar } from "./calendar.ts";
import { checkIds } from "./ids.ts";
import { asRow } from "./loose.ts";
import { checkMeasures } from "./measures.ts";
import { checkMeters } from "./meters.ts";
import { checkTariff } from "./money.ts";
import { checkReferences } from "./references.ts";
import { checkRepeats } from "./repeats.ts";
import { checkWater } from "./water.ts";

/** What ties the fields of a survey to each other, looked at whatever else is wrong with it. */
export function checkTies(document: unknown, faults: FaultCollector): void {
  const survey = asRow(document, []);
  if (!survey) return;
  checkIds(survey, faults);
  checkReferences(survey, faults);
  checkBeds(survey, faults);
  checkWater(survey, faults);
  checkCalendar(survey, faults);
  checkTariff(survey, faults);
  checkMeasures(survey, faults);
  checkMeters(survey, faults);
  checkRepeats(survey.fields, [], faults);
}
