import { recordLimits } from "../survey/record/ranges.ts";
import { type RecordOutcome, recordFromCells } from "../survey/record/strict.ts";
import { parseDelimited } from "./delimited.ts";

/** Reads a weather record from the text of its CSV file: the record, or every fault with row and column. */
export function readRecord(text: string): RecordOutcome {
  if (text.includes("\u0000")) return { faults: [{ path: "record", code: "record-not-text", facts: {} }] };
  const { rows, openQuoteRow, longLine } = parseDelimited(text, {
    delimiter: ",",
    maxRows: recordLimits.rows + 2,
  });
  if (longLine !== null)
    return { faults: [{ path: `row ${longLine}`, code: "record-long-line", facts: {} }] };
  if (rows.every((row) => row.every((cell) => cell === "")))
    return { faults: [{ path: "record", code: "record-empty", facts: {} }] };
  if (openQuoteRow !== null)
    return { faults: [{ path: `row ${openQuoteRow}`, code: "record-open-quote", facts: {} }] };
  return recordFromCells(rows);
}
