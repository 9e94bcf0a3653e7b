import { type Figure, propagate } from "./figure.ts";
import type { Read, Slot } from "./way.ts";

/** A person's own pace: paces over a distance that was measured. */
export const paceSlots: readonly Slot[] = [
  { name: "known", unit: "m", by: "tape" },
  { name: "paces", unit: "count", by: "paces" },
];

/** Length of one pace, m. */
export function pace_m(read: Read): Figure {
  return propagate(([known, paces]) => known! / paces!, [read.of("known"), read.of("paces")]);
}
