import { readFileSync } from "node:fs";

/** One published example or table: what goes in, what its source prints, how far a print may be off. */
export interface Published {
  id: string;
  kind: "printed" | "derived" | "table";
  source: string;
  inputs: Record<string, unknown>;
  expected: Record<string, unknown>;
  tolerance?: number | Record<string, number>;
}

export const published: readonly Published[] = JSON.parse(
  readFileSync(new URL("published.json", import.meta.url), "utf8"),
);

/** Works an entry out with this program: a figure for each of the entry's keys that it answers. */
export type Working = (inputs: Inputs, expected: Record<string, unknown>) => Record<string, unknown>;

/** Inputs as they stand in the file, read where a working names them. */
export class Inputs {
  readonly #values: Record<string, unknown>;
  constructor(values: Record<string, unknown>) {
    this.#values = values;
  }
  n(name: string): number {
    return this.#values[name] as number;
  }
  list(name: string): number[] {
    return this.#values[name] as number[];
  }
  rows(name: string): Record<string, number>[] {
    return this.#values[name] as Record<string, number>[];
  }
  words(name: string): string[] {
    return this.#values[name] as string[];
  }
}
