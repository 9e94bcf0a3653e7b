import table from "../../data/defaults.json" with { type: "json" };
import { type Choice, citedRows, rowOf, type Table, type Value } from "./table.ts";

interface Default {
  field: string;
  value: Value | Choice;
}

export const defaults: readonly Default[] = citedRows(table as Table<Default>);

/** The number that stands in for a field, with its range. */
export function defaultNumber(field: string): Value {
  const { value } = rowOf(defaults, "field", field);
  if ("is" in value) throw new TypeError(`${field} has no number in the defaults table.`);
  return value;
}

/** The word or yes-or-no that stands in for a field. */
export function defaultChoice(field: string): Choice {
  const { value } = rowOf(defaults, "field", field);
  if (!("is" in value)) throw new TypeError(`${field} has no choice in the defaults table.`);
  return value;
}
