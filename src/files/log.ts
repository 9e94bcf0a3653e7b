import type { Fault } from "../survey/faults.ts";
import { type LogOutcome, readLogRows } from "../survey/log.ts";
import { nearest } from "../survey/near.ts";
import { oneLine } from "../survey/path.ts";
import { type LogColumn, type LogEntry, logColumns, mostLogEntries } from "../survey/schema/log.ts";
import { writeCsv } from "./csv.ts";
import { parseDelimited } from "./delimited.ts";

const texts: readonly LogColumn[] = ["date", "kind", "id", "group"];

/** A plain decimal number. */
const decimal = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** Reads the log from CSV text: its entries in the order of the file, or every fault by row and column. */
export function readLog(text: string): LogOutcome {
  const { rows, openQuoteRow, longLine } = parseDelimited(text, {
    delimiter: ",",
    maxRows: mostLogEntries + 2,
  });
  if (longLine !== null) return { faults: [fault(`row ${longLine}`, "record-long-line")] };
  if (openQuoteRow !== null) return { faults: [fault(`row ${openQuoteRow}`, "record-open-quote")] };
  const header = rows[0] ?? [];
  const faults = headerFaults(header);
  if (faults.length > 0) return { faults };
  const filled = rows.flatMap((cells, index) =>
    index === 0 || cells.every((cell) => cell === "") ? [] : [{ cells, row: index + 1 }],
  );
  const ragged = filled.filter(({ cells }) => cells.length > header.length);
  if (ragged.length > 0)
    return {
      faults: ragged.map(({ cells, row }) =>
        fault(`row ${row}`, "record-row-cells", { found: cells.length, wanted: header.length }),
      ),
    };
  const at = (index: number, field?: string) =>
    field === undefined ? `row ${filled[index]!.row}` : `row ${filled[index]!.row}, ${field}`;
  return readLogRows(
    filled.map(({ cells }) => rowOf(header, cells)),
    at,
  );
}

/** Writes entries as the log's CSV. */
export function writeLog(entries: readonly LogEntry[]): string {
  const rows = entries.map((entry) => logColumns.map((column) => String(entry[column] ?? "")));
  return writeCsv(logColumns, rows);
}

function headerFaults(header: readonly string[]): Fault[] {
  const faults = ["date", "kind"]
    .filter((column) => !header.includes(column))
    .map((column) => fault("row 1", "log-no-column", { column }));
  header.forEach((name, at) => {
    const path = `row 1, ${oneLine(name, 40) || `column ${at + 1}`}`;
    if (!isColumn(name)) {
      const near = nearest(name, logColumns);
      const facts = { column: oneLine(name, 60), columns: logColumns };
      faults.push(fault(path, "log-unknown-column", near === null ? facts : { ...facts, near }));
    } else if (header.indexOf(name) < at) faults.push(fault(path, "record-column-twice", { column: name }));
  });
  return faults;
}

/** Blank cells are fields left out; cells of numbers that are none stay text, to be named as faults. */
function rowOf(header: readonly string[], cells: readonly string[]): Record<string, unknown> {
  const row: Record<string, unknown> = {};
  header.forEach((column, at) => {
    const cell = cells[at] ?? "";
    if (cell === "") return;
    const isNumber = !texts.includes(column as LogColumn) && decimal.test(cell);
    row[column] = isNumber ? Number(cell) : cell;
  });
  return row;
}

function isColumn(name: string): boolean {
  return (logColumns as readonly string[]).includes(name);
}

function fault(path: string, code: string, facts: Fault["facts"] = {}): Fault {
  return { path, code, facts };
}
