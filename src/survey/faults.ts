/**
 * A fault is a code, the path of what it is about, and the facts its sentence needs; the words come later,
 * from words/. Paths look like `beds[2].area_m2`, or `row 12, column rain_mm` in a weather record.
 */
export interface Fault {
  path: string;
  code: string;
  facts: Facts;
}

export type Fact = string | number | boolean | null | readonly string[] | readonly number[];
export type Facts = Readonly<Record<string, Fact>>;

/** Most faults listed; a last one counts the rest. */
export const mostFaults = 200;

/** The path of a fault of the whole document. */
export const wholeSurvey = "survey";
