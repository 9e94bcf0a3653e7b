import { classSheet } from "../../../src/explain/class-sheet.ts";
import { explain } from "../../../src/explain/explain.ts";
import { plainSay } from "../../../src/explain/say.ts";
import type { Working } from "../../../src/explain/working.ts";
import type { UnitSystem } from "../../../src/units.ts";
import { classSheetWords } from "../../../src/words/en/class-sheet.ts";
import { lastAnswer } from "./answer.ts";

/** The working of a figure of the answer last worked out; null where its address leads nowhere. */
export function workingOf(address: string, units: UnitSystem): Working | null {
  const last = lastAnswer();
  return last && explain(last.worked, address, plainSay(units, navigator.language));
}

/** A worked example of a bed's most telling week, for a class to print; null where there is none. */
export function classSheetOf(bed: string, units: UnitSystem): string | null {
  const last = lastAnswer();
  return (
    last && classSheet(last.worked, { bed, from: null }, classSheetWords, plainSay(units, navigator.language))
  );
}
