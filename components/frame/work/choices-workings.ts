import { explainDecided } from "../../../src/explain/choices/explain.ts";
import { plainSay } from "../../../src/explain/say.ts";
import type { Working } from "../../../src/explain/working.ts";
import type { UnitSystem } from "../../../src/units.ts";
import { lastAnswer } from "./answer.ts";

/** The working of a figure of the choices, from the answer last worked out; null where its address leads nowhere. */
export function choiceWorkingOf(address: string, units: UnitSystem): Working | null {
  const last = lastAnswer();
  return last && explainDecided(last.worked, address, plainSay(units, navigator.language));
}
