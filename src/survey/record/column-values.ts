import type { WeatherColumn } from "../../engine/weather/record.ts";
import type { Cells } from "./mapping.ts";
import { acceptedRanges } from "./ranges.ts";
import { cellNumber, isMissing, isTrace, missingNumbers } from "./source-cells.ts";
import type { SourceUnit } from "./source-units.ts";

/** What a column of a file holds, from rows spread over all of it. */
export interface ColumnValues {
  /** Numbers in the order of the rows, marks for missing ones among them. */
  numbers: readonly number[];
  /** The same row by row, NaN where a row has none. */
  byRow: readonly number[];
  /** Share of the cells that are numbers, missing or trace. */
  numericShare: number;
  hasTrace: boolean;
  allWhole: boolean;
}

/** Rows looked at to know a column. */
const sample_rows = 4000;

export function columnValues(
  rows: Cells,
  body: readonly number[],
  at: number,
  decimalComma: boolean,
): ColumnValues {
  const step = Math.max(1, Math.floor(body.length / sample_rows));
  const byRow: number[] = [];
  let readable = 0;
  let looked = 0;
  let hasTrace = false;
  let allWhole = true;
  for (let index = 0; index < body.length; index += step) {
    const cell = rows[body[index]!]![at] ?? "";
    const trace = isTrace(cell);
    const value = trace ? 0 : cellNumber(cell, decimalComma);
    looked += 1;
    byRow.push(value);
    if (trace) hasTrace = true;
    if (!Number.isNaN(value) || isMissing(cell)) readable += 1;
    if (!Number.isNaN(value) && !Number.isInteger(value)) allWhole = false;
  }
  const numbers = byRow.filter((value) => !Number.isNaN(value));
  return { numbers, byRow, numericShare: looked === 0 ? 0 : readable / looked, hasTrace, allWhole };
}

/**
 * Numbers of a column that stand for a missing value in the unit: those of the archives' marks that the
 * column cannot hold, or that stand more than three times above every other value.
 */
export function marksIn(
  numbers: Iterable<number>,
  column: WeatherColumn,
  unit: SourceUnit,
): ReadonlySet<number> {
  const [low, high] = acceptedRanges[column];
  const found = new Set<number>();
  let highest = 0;
  for (const value of numbers)
    if (missingNumbers.has(value)) found.add(value);
    else if (value > highest) highest = value;
  for (const value of found) {
    const converted = value * unit.factor + unit.offset;
    if (converted >= low && converted <= high && value <= 3 * highest) found.delete(value);
  }
  return found;
}

/** The values in the record's unit, marks for missing ones left out. */
export function converted(values: ColumnValues, column: WeatherColumn, unit: SourceUnit): number[] {
  const marks = marksIn(values.numbers, column, unit);
  const out: number[] = [];
  for (const value of values.numbers) if (!marks.has(value)) out.push(value * unit.factor + unit.offset);
  return out;
}
