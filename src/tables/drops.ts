import table from "../../data/drops.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

const drops = citedRows(table as Table<{ drop: string; value: Value }>);

/** Size of a drop from a tap, mL: a range, since sources disagree. */
export const tapDrop_mL: Value = rowOf(drops, "drop", "tap").value;
