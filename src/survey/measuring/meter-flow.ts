import { type Figure, propagate } from "./figure.ts";

/** A register read before and after so many minutes of flow. */
export interface RegisterRun {
  before: number;
  after: number;
  /** Smallest step that the register shows, in its unit. */
  step: number;
  litresPerUnit: number;
  minutes: Figure;
}

/** Flow through a meter, L/min; each reading is off by up to half a step, evenly. */
export function meterFlow_L_min({ before, after, step, litresPerUnit, minutes }: RegisterRun): Figure {
  const standardError = step / Math.sqrt(12);
  return propagate(
    ([from, to, time]) => ((to! - from!) * litresPerUnit) / time!,
    [{ figure: before, standardError }, { figure: after, standardError }, minutes],
  );
}

/** Share of its flow that an outlet loses when a second one on the same line is open. */
export function lineLoss(alone_L_min: number, both_L_min: number): number {
  return 1 - both_L_min / 2 / alone_L_min;
}
