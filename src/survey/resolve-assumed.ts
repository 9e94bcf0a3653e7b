import type { Choice, Value } from "../tables/table.ts";

/** A field that the survey leaves out, and what stands in for it. */
export interface Assumed {
  /** Path in the survey document. */
  where: string;
  value: number | string | boolean;
  source: string;
}

/** Collects what stands in while a survey is filled. */
export interface Stands {
  /** The survey's own figure, else the middle of the table's, which is then listed. */
  number(own: number | undefined, where: string, table: Value): number;
  /** The survey's own answer, else the table's, which is then listed. */
  choice<T extends string | boolean>(own: T | undefined, where: string, table: Choice): T;
  /** Lists what stands in by a rule. */
  list<T extends number | string | boolean>(where: string, value: T, source: string): T;
}

export function standsIn(assumed: Assumed[]): Stands {
  const list = <T extends number | string | boolean>(where: string, value: T, source: string): T => {
    assumed.push({ where, value, source });
    return value;
  };
  return {
    number: (own, where, { middle, source }) => own ?? list(where, middle, source),
    choice: <T extends string | boolean>(own: T | undefined, where: string, { is, source }: Choice): T =>
      own ?? (list(where, is, source) as T),
    list,
  };
}
