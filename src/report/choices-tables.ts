import type { GroundsChoices } from "./choices-schema.ts";

/** A table of the decision, ready for a CSV file. */
export interface ChoicesTable {
  name: string;
  header: string[];
  rows: string[][];
}

/** The document's tables; a file each. Figures as they are, lists with spaces between, nothing for what is not known. */
export function choicesTables(choices: GroundsChoices): ChoicesTable[] {
  return Object.entries(listsOf(choices)).map(([name, rows]) => tableOf(name, rows));
}

/** Their names, for whoever takes one; the rest is made when it is taken. */
export function tableNames(choices: GroundsChoices): string[] {
  return Object.keys(listsOf(choices));
}

/** One of them. */
export function choicesTable(choices: GroundsChoices, name: string): ChoicesTable {
  return tableOf(name, listsOf(choices)[name] ?? []);
}

/** Those that have a row. */
function listsOf(choices: GroundsChoices): Record<string, readonly object[]> {
  const lists = {
    measures: choices.measures,
    shares: choices.shares,
    frontier: choices.frontier,
    "frontier-by-worth": choices.frontierByWorth,
    order: choices.order?.steps ?? [],
    sizes: choices.sizes,
    "other-weather": choices.scenarios.map(({ reliability: _, ...row }) => row),
    unknowns: choices.spread?.byUnknown ?? [],
    rivals: choices.spread?.rivals ?? [],
  };
  return Object.fromEntries(Object.entries(lists).filter(([, rows]) => rows.length > 0));
}

function tableOf(name: string, rows: readonly object[]): ChoicesTable {
  const flat = rows.map((row) => new Map(flattened(row)));
  const header = [...new Set(flat.flatMap((row) => [...row.keys()]))];
  return { name, header, rows: flat.map((row) => header.map((column) => row.get(column) ?? "")) };
}

/** Fields with the names of the fields above them before their own. */
function flattened(part: object, above = ""): [string, string][] {
  return Object.entries(part).flatMap(([field, value]): [string, string][] => {
    const column = `${above}${field}`;
    if (value === null || value === undefined) return [[column, ""]];
    if (Array.isArray(value)) return [[column, value.join(" ")]];
    return typeof value === "object" ? flattened(value, `${column}.`) : [[column, String(value)]];
  });
}
