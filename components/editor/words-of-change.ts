import { changesBetween, namesOf } from "../../src/survey/changes.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { changesText } from "../../src/words/en/changes.ts";

/** What differs between two surveys, in words; null where nothing does. */
export function wordsOfChange(before: Survey, after: Survey): string | null {
  const changes = changesBetween(before, after);
  return changes.length === 0 ? null : changesText(changes, new Map([...namesOf(before), ...namesOf(after)]));
}
