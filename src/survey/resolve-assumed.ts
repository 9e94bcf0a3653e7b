import type { Choice, Value } from "../tables/table.ts";

/** A field that the survey leaves out, and what stands in for it. */
export interface Assumed {
  /** Path in the survey document. */
  where: string;
  value: number | string | boolean;
  source: string;
}

/** The ends of what a figure may be, and its likeliest. */
export type Range = Pick<Value, "low" | "middle" | "high">;

/**
 * Chooses a figure from its range: the middle for an estimate, a draw for how sure it is. Figures of one unknown
 * move together.
 */
export type PickFigure = (unknown: string, range: Range) => number;

export const middleOf: PickFigure = (_unknown, { middle }) => middle;

/** Collects what stands in while a survey is filled. */
export interface Stands {
  pick: PickFigure;
  /** The survey's own figure, else one from the table's range, which is then listed. */
  number(own: number | undefined, where: string, table: Value, unknown?: string): number;
  /** The survey's own answer, else the table's, which is then listed. */
  choice<T extends string | boolean>(own: T | undefined, where: string, table: Choice): T;
  /** Lists what stands in by a rule. */
  list<T extends number | string | boolean>(where: string, value: T, source: string): T;
}

export function standsIn(assumed: Assumed[], pick: PickFigure = middleOf): Stands {
  const list = <T extends number | string | boolean>(where: string, value: T, source: string): T => {
    assumed.push({ where, value, source });
    return value;
  };
  return {
    pick,
    number: (own, where, table, unknown = where) => own ?? list(where, pick(unknown, table), table.source),
    choice: <T extends string | boolean>(own: T | undefined, where: string, { is, source }: Choice): T =>
      own ?? (list(where, is, source) as T),
    list,
  };
}
