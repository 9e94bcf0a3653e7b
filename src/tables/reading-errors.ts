import table from "../../data/reading-errors.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

/** How far off one reading of an instrument is. */
export interface ReadingError {
  instrument: string;
  /** Standard error that does not grow with the reading, in its unit. */
  value: Value;
  /** Standard error in proportion to the reading. */
  relative: Value;
}

export const readingErrors: readonly ReadingError[] = citedRows(table as Table<ReadingError>);

/** Standard error of one reading: what does not grow with it and what does, as independent parts. */
export function errorOfReading(instrument: string, reading: number): number {
  const { value, relative } = rowOf(readingErrors, "instrument", instrument);
  return Math.hypot(value.middle, relative.middle * reading);
}
