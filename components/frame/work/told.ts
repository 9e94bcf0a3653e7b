import type { Fault } from "../../../src/survey/faults.ts";
import { faultWords } from "../../../src/words/en/faults.ts";
import type { ToldFault } from "./messages.ts";

/** A fault in words. */
export function told(fault: Fault): ToldFault {
  return { path: fault.path, sentence: faultWords(fault) };
}
