import { checkTies } from "./checks/all.ts";
import { FaultCollector } from "./collector.ts";
import { type Fault, wholeSurvey } from "./faults.ts";
import { readJson, tooMuch } from "./json.ts";
import { migrate } from "./migrate.ts";
import { surveySchema } from "./schema/survey.ts";
import { checkShape } from "./shape.ts";
import type { Survey } from "./survey.ts";
import { foundFacts } from "./wanted.ts";

export type SurveyOutcome = { survey: Survey } | { faults: Fault[] };

/**
 * Reads a survey from JSON text, or from a value that was JSON. Never throws: what is wrong comes back as
 * faults, all of them (the first 200 and a count), in the order of the document.
 */
export function readSurvey(input: unknown): SurveyOutcome {
  let value = input;
  if (typeof input === "string") {
    const read = readJson(input);
    if ("fault" in read) return { faults: [read.fault] };
    value = read.value;
  }
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return { faults: [{ path: wholeSurvey, code: "not-an-object", facts: foundFacts(value) }] };
  const excess = tooMuch(value);
  if (excess) return { faults: [excess] };
  const migrated = migrate(value as Record<string, unknown>);
  if ("fault" in migrated) return { faults: [migrated.fault] };
  const faults = new FaultCollector(Object.keys(surveySchema.shape));
  const survey = checkShape(surveySchema, migrated.document, faults);
  checkTies(migrated.document, faults);
  return survey !== null && faults.count === 0 ? { survey } : { faults: faults.list() };
}
