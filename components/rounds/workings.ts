import { explainRound } from "../../src/explain/rounds/explain-round.ts";
import { plainSay } from "../../src/explain/say.ts";
import type { Working } from "../../src/explain/working.ts";
import type { UnitSystem } from "../../src/units.ts";
import type { Kept } from "./work.ts";

/** The working of a figure of the rounds worked out last; null where its address leads nowhere. */
export function roundWorking(
  kept: Kept,
  { at, units, locale }: { at: string; units: UnitSystem; locale: string },
): Working | null {
  return explainRound({ ...kept, say: plainSay(units, locale) }, at);
}
