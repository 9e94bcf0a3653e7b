import { formatIso } from "../engine/weather/dates.ts";
import { fillGaps, UnfillableGap } from "../engine/weather/gaps.ts";
import { type WeatherRecord, weatherColumns } from "../engine/weather/record.ts";
import type { Mapping } from "../survey/record/mapping.ts";
import { unfillableGap } from "../words/en/weather.ts";
import { importWords, unitNames } from "../words/en/weather-import.ts";

/** Share of filled days, and days of record, past which a report says so (method, section 1). */
const manyFilled = 0.1;
const year_days = 365;

/** Gaps that nothing fills, listed one by one up to this many. */
const shownGaps = 10;

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

/** What is missing in the record, and what filling it will do. */
export function gapLines(record: WeatherRecord): string[] {
  const lines = weatherColumns.flatMap((column) => {
    const { missing, longest } = gapsOf(record.columns[column]);
    return missing === 0 ? [] : [importWords.gaps(column, missing, longest)];
  });
  if (lines.length === 0) lines.push(importWords.noGaps);
  else lines.push(...fillingLines(record));
  if (record.days < year_days) lines.push(importWords.shortRecord);
  return lines;
}

function fillingLines(record: WeatherRecord): string[] {
  try {
    const { filledDays, shareFilled } = fillGaps(record);
    const filled = importWords.filled(filledDays, shareFilled);
    return shareFilled > manyFilled ? [filled, importWords.manyFilled] : [filled];
  } catch (error) {
    if (!(error instanceof UnfillableGap)) throw error;
    const gaps = error.gaps.map((gap) =>
      unfillableGap(gap.column, formatIso(gap.fromDay), formatIso(gap.toDay)),
    );
    const more = gaps.length > shownGaps ? [importWords.moreGaps(gaps.length - shownGaps)] : [];
    return [importWords.cannotFill, ...gaps.slice(0, shownGaps), ...more];
  }
}

function gapsOf(values: Float64Array | undefined): { missing: number; longest: number } {
  let missing = 0;
  let longest = 0;
  let run = 0;
  for (const value of values ?? []) {
    run = Number.isNaN(value) ? run + 1 : 0;
    if (run > 0) missing += 1;
    if (run > longest) longest = run;
  }
  return { missing, longest };
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
