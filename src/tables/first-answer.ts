import table from "../../data/first-answer.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

interface Open {
  entry: string;
  value: Value;
}

const open: readonly Open[] = citedRows(table as Table<Open>);

/** The range of an entry of the first answer that was not made, or was only told. */
export function openEntry(entry: string): Value {
  return rowOf(open, "entry", entry).value;
}
