import { weatherColumns } from "../engine/weather/record.ts";
import type { Mapping } from "../survey/record/mapping.ts";
import { importWords, unitNames } from "../words/en/weather-import.ts";

/** The mapping as a small table: field, column, unit, and how sure each is. */
export function mappingTable(mapping: Mapping): string {
  const rows: string[][] = [[...importWords.tableHead]];
  const { dates } = mapping;
  if (dates) {
    const isColumn = dates.kind === "column";
    const order = isColumn ? importWords.dateOrder(dates.order) : importWords.dateParts[dates.kind];
    rows.push(["date", isColumn ? dates.header : "", order, dates.certainty.toFixed(2), ""]);
  }
  for (const column of weatherColumns) {
    const field = mapping.fields[column];
    if (!field) continue;
    const unit = unitNames[field.unit] ?? field.unit;
    rows.push([column, field.header, unit, field.certainty.toFixed(2), field.unitCertainty.toFixed(2)]);
  }
  const unused = mapping.unused.length > 0 ? [importWords.notUsed(mapping.unused)] : [];
  return [...inColumns(rows), ...unused].join("\n");
}

/** Rows of texts with their columns set under each other. */
function inColumns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, at) => Math.max(...rows.map((row) => [...row[at]!].length)));
  return rows.map((row) =>
    row
      .map((text, at) => text.padEnd(widths[at]!))
      .join("  ")
      .trimEnd(),
  );
}
