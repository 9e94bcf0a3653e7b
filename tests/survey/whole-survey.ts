import { readFileSync } from "node:fs";
import type { Fault } from "../../src/survey/faults.ts";
import { readSurvey } from "../../src/survey/read.ts";
import { faultSentence } from "../../src/words/en/faults.ts";

/** A survey with every part of the document in it, in order as it stands. */
export const wholeText = readFileSync(new URL("whole.survey.json", import.meta.url), "utf8");

/** Values by path, to be put in; undefined takes the field out. */
export type Edits = Readonly<Record<string, unknown>>;

export function edited(edits: Edits): unknown {
  const survey: unknown = JSON.parse(wholeText);
  for (const [path, value] of Object.entries(edits)) {
    const steps = path.split(/\.|\[|\]\.?/).filter((step) => step !== "");
    const last = steps.pop()!;
    let holder = survey as Record<string, unknown>;
    for (const step of steps) holder = holder[step] as Record<string, unknown>;
    if (value === undefined) delete holder[last];
    else holder[last] = value;
  }
  return survey;
}

export function faultsOf(input: unknown): Fault[] {
  const outcome = readSurvey(input);
  return "faults" in outcome ? outcome.faults : [];
}

export function sentencesOf(input: unknown): string[] {
  return faultsOf(input).map(faultSentence);
}

/** Words that no sentence of ours has: the validator's stock English, words that blame, words of the machine. */
export const stockWords =
  /invalid|please|oops|expected|received|too small|too big|unrecognized|required|undefined|\[object|discriminator|not understood/i;
