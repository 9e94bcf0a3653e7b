import type { UnitSystem } from "../../src/units.ts";
import type { Formatter } from "../../src/words/format.ts";
import type { Compute } from "./work/compute.ts";

/** What a screen is given. */
export interface App {
  say: Formatter;
  compute: Compute;
  setUnits(units: UnitSystem): void;
  go(path: string, options?: { replace?: boolean }): void;
  /** Said politely to a screen reader, once. */
  speak(words: string): void;
}
