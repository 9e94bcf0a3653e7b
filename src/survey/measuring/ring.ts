import { type Figure, propagate } from "./figure.ts";

/** Rate at which a depth of water goes in, mm/h. */
export function ringIntake_mm_h(depth_mm: Figure, minutes: Figure): Figure {
  return propagate(([depth, time]) => (60 * depth!) / time!, [depth_mm, minutes]);
}

/** A fill that took so much longer than the one before shows a soil that still slows down. Ours. */
const stillSlowing = 1.2;

/**
 * Of several fills in a row only the last is near the steady rate: dry soil drinks the first ones
 * (common practice). True where the last still took a fifth longer than the one before.
 */
export function intakeStillFalling(minutes: readonly number[]): boolean {
  const [before, last] = minutes.slice(-2);
  return before !== undefined && last !== undefined && last > stillSlowing * before;
}
