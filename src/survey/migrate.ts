import type { Fault } from "./faults.ts";
import { surveyFormat, surveyVersion } from "./schema/survey.ts";
import { foundFacts } from "./wanted.ts";

type Document = Record<string, unknown>;

/** By version: how a document of that version becomes one of the next. Version 1 is the first. */
const steps: Readonly<Record<number, (document: Document) => Document>> = {};

/** Brings a document to the current version; a fault where it is not a survey, or not one that can be brought. */
export function migrate(document: Document): { document: Document } | { fault: Fault } {
  const fault = (path: string, code: string, facts: Fault["facts"]) => ({ fault: { path, code, facts } });
  const { format, version } = document;
  if (format !== surveyFormat)
    return fault("format", "not-a-survey", { wanted: surveyFormat, ...foundFacts(format) });
  if (typeof version !== "number" || !Number.isInteger(version))
    return fault("version", "version-unclear", { wanted: surveyVersion, ...foundFacts(version) });
  if (version > surveyVersion)
    return fault("version", "version-newer", { found: version, known: surveyVersion });
  let current = document;
  for (let at = version; at < surveyVersion; at++) {
    const step = steps[at];
    if (!step) return fault("version", "version-older", { found: version, known: surveyVersion });
    current = { ...step(current), version: at + 1 };
  }
  return { document: current };
}
