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
  /** Address of the working that this number comes from: what a reader opens next. */
  at?: string;
  /** As it stands in the formula. */
  symbol?: string;
  /** The number itself, SI. */
  value?: number;
  unit?: string;
}

/** A formula with its inputs by name, so that what is shown can be worked out again by anybody. */
export interface Expression {
  /** Names in braces: `({taw} − {dr}) ÷ {taw}`. One that begins with Σ adds all inputs. */
  template: string;
  inputs: Readonly<Record<string, number>>;
}

/** One line of the margin of sums. */
export interface Step {
  /** In symbols. */
  formula: string;
  /** What it says, in words. */
  words?: string;
  /** The same with the numbers put in. */
  withNumbers: string;
  /** What comes out, with its unit. */
  result: string;
  /** Where the formula is published, or that it is plain arithmetic. */
  source?: string;
  /** What comes out as the engine has it, SI. */
  value?: number;
  unit?: string;
  expression?: Expression;
}

/** Everything that opens below a figure: one can follow it from what was measured to what is said. */
export interface Working {
  title: string;
  steps: readonly Step[];
  given: readonly Given[];
  /** Published sources of the formulas. */
  sources: readonly string[];
  provenance: Provenance;
  /** Its own address. */
  at?: string;
  /** The figure itself, SI: what the last step gives. */
  value?: number;
  unit?: string;
}
