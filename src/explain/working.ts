/** How a figure stands: read off by somebody, chosen or worked out from others, or taken from a table. */
export type Provenance = "measured" | "worked-out" | "assumed";

/** A number that went into a step, with where it came from. */
export interface Given {
  /** What it is, in words. */
  name: string;
  /** The number with its unit, as shown. */
  text: string;
  provenance: Provenance;
  /** Table, standard, or field of the survey; left out where the name says it. */
  source?: string;
}

/** One line of the margin of sums. */
export interface Step {
  /** In words and symbols. */
  formula: string;
  /** The same with the numbers put in. */
  withNumbers: string;
  /** What comes out, with its unit. */
  result: string;
}

/** Everything that opens below a figure: one can follow it from what was measured to what is said. */
export interface Working {
  title: string;
  steps: readonly Step[];
  given: readonly Given[];
  /** Published sources of the formulas. */
  sources: readonly string[];
  provenance: Provenance;
}
