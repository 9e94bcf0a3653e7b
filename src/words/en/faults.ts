/** What is said of each fault: what is wanted, then what was found. */
import type { Fault } from "../../survey/faults.ts";
import { logFaultWords } from "./log.ts";
import { normalsFaultWords } from "./normals.ts";
import { shapeFaultWords } from "./shapeFaults.ts";
import { siteFaultWords } from "./siteFaults.ts";
import { tieFaultWords } from "./tieFaults.ts";
import { recordFaultWords } from "./weather.ts";

const words = {
  ...shapeFaultWords,
  ...tieFaultWords,
  ...recordFaultWords,
  ...logFaultWords,
  ...siteFaultWords,
  ...normalsFaultWords,
};

/** Codes that have a sentence. */
export const faultCodes: readonly string[] = Object.keys(words);

/** The sentence of a fault, without its path. */
export function faultWords(fault: Fault): string {
  const write = Object.hasOwn(words, fault.code) ? words[fault.code] : undefined;
  return write ? write(fault.facts, fault.path) : `This is not understood (${fault.code}).`;
}

/** One line: `beds[2].area_m2: Bed area must be between 0.1 and 50,000 m². You entered -4.` */
export function faultSentence(fault: Fault): string {
  return `${fault.path}: ${faultWords(fault)}`;
}
