import type { ChoicesTable } from "../report/choices-tables.ts";
import { fromSI, type UnitSystem } from "../units.ts";

type Change = readonly [si: "kL" | "L" | "mm" | "money/kL", there: string, ending: RegExp, named: string];

/** Columns tell their unit by the end of their name, with `_year` or a point of the years behind it. */
const changes: readonly Change[] = [
  ["kL", "gal", /_kL(?=$|_year|\.)/, "_gal"],
  ["L", "gal", /_L(?=$|_year|\.)/, "_gal"],
  ["mm", "in", /_mm(?=$|_year|\.)/, "_in"],
  ["money/kL", "money/1000 gal", /PerKL$/, "Per1000gal"],
];

/** A table of the decision in the reader's units, the names of its columns with it. */
export function tableIn(table: ChoicesTable, units: UnitSystem): ChoicesTable {
  if (units === "metric") return table;
  const columns = table.header.map((name) => ({
    name,
    change: changes.find(([, , ending]) => ending.test(name)),
  }));
  return {
    ...table,
    header: columns.map(({ name, change }) => (change ? name.replace(change[2], change[3]) : name)),
    rows: table.rows.map((row) =>
      row.map((cell, k) => {
        const change = columns[k]!.change;
        return change && cell !== "" ? String(fromSI(Number(cell), change[0], change[1])) : cell;
      }),
    ),
  };
}
