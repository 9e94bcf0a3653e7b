import { expect } from "vitest";
import type { Figure } from "../../../src/survey/measuring/figure.ts";
import type { Worked } from "../../../src/survey/measuring/way.ts";
import { workOut } from "../../../src/survey/measuring/work-out.ts";

/** What readings come to, where they come to something. */
export function come(how: string, ...readings: number[]): Worked {
  const outcome = workOut(how, readings);
  expect(outcome, `${how} ${readings}`).not.toBeNull();
  if (!outcome || "impossible" in outcome) throw new Error(`${how}: ${JSON.stringify(outcome)}`);
  return outcome;
}

/** The one figure of a field. */
export function figureOf(field: string, how: string, ...readings: number[]): Figure {
  const found = come(how, ...readings).figures[field];
  if (!found) throw new Error(`${how} gives no ${field}`);
  return found;
}

/** Code of why readings cannot be. */
export function refusal(how: string, ...readings: number[]): string {
  const outcome = workOut(how, readings);
  if (!outcome || !("impossible" in outcome)) throw new Error(`${how} was not refused`);
  return outcome.impossible.code;
}
