import table from "../../data/usual.json" with { type: "json" };
import { citedRows, type Table, type Value } from "./table.ts";

interface Usual {
  field: string;
  kind: string;
  value: Value;
}

const rows: readonly Usual[] = citedRows(table as Table<Usual>);

/** What is usual for a field, by kind where the table tells them apart; undefined where it says nothing. */
export function usual(field: string, kind = "any"): Value | undefined {
  const ofField = rows.filter((row) => row.field === field);
  return (ofField.find((row) => row.kind === kind) ?? ofField.find((row) => row.kind === "any"))?.value;
}

export const usualFields: readonly string[] = [...new Set(rows.map(({ field }) => field))];
