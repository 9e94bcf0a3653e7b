import { type WeatherColumn, weatherColumns } from "../../engine/weather/record.ts";
import { RecordDraft, type RecordOutcome, shown } from "./draft.ts";
import { recordLimits } from "./ranges.ts";

export type { RecordOutcome } from "./draft.ts";

type Cells = readonly (readonly string[])[];

/** A plain decimal number, an exponent allowed. */
const decimal = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/**
 * Reads a weather record from the cells of its file, header first. Rows are numbered as a spreadsheet does:
 * the header is row 1. Dates may come in any order; dates left out and blank cells become gaps.
 */
export function recordFromCells(rows: Cells): RecordOutcome {
  const header = rows[0] ?? [];
  const columns = header.flatMap((name) => (isColumn(name) ? [name] : []));
  const draft = new RecordDraft({
    columns: [...new Set(columns)],
    read: numberFromText,
    path: (row, column) => (column ? `row ${row}, ${column}` : `row ${row}`),
  });
  checkHeader(header, draft);
  const dateAt = header.indexOf("date");
  const ats = [...new Set(columns)].map((column) => header.indexOf(column));
  const read = Math.min(rows.length, recordLimits.rows + 1);
  if (rows.length > read) draft.fault("record", "record-too-many-rows", { rows: recordLimits.rows });
  for (let at = 1; at < read && dateAt >= 0; at++) {
    const cells = rows[at]!;
    if (cells.every((cell) => cell === "")) continue;
    if (cells.length < header.length || cells.slice(header.length).some((cell) => cell !== "")) {
      draft.fault(`row ${at + 1}`, "record-row-cells", { found: cells.length, wanted: header.length });
      continue;
    }
    draft.add(
      at + 1,
      cells[dateAt],
      ats.map((column) => cells[column]),
    );
  }
  return draft.finish();
}

/**
 * Reads a weather record from rows as JSON carries them: objects with a `date` and, under each column's
 * name, a number (as text too) or null for a gap.
 * @param at what the rows are called in their document
 */
export function recordFromRows(rows: readonly unknown[], at = "weather"): RecordOutcome {
  const names = new Map<string, number>();
  const listed = rows.slice(0, recordLimits.rows);
  listed.forEach((row, index) => {
    if (isObject(row)) for (const name of Object.keys(row)) if (!names.has(name)) names.set(name, index);
  });
  const columns = weatherColumns.filter((column) => names.has(column));
  const path = (row: number, column?: string) => (column ? `${at}[${row}].${column}` : `${at}[${row}]`);
  const draft = new RecordDraft({ columns, read: numberFromJson, path });
  for (const [name, index] of names)
    if (name !== "date" && !isColumn(name))
      draft.fault(path(index, shown(name)), "record-unknown-column", { column: shown(name) });
  if (rows.length > listed.length) draft.fault(at, "record-too-many-rows", { rows: recordLimits.rows });
  listed.forEach((row, index) => {
    if (!isObject(row)) draft.fault(path(index), "record-row-not-object", { found: shown(row) });
    else {
      const cells = columns.map((column) => row[column]);
      draft.add(index, row.date, cells);
    }
  });
  return draft.finish();
}

function checkHeader(header: readonly string[], draft: RecordDraft): void {
  if (!header.includes("date")) draft.fault("row 1", "record-no-date");
  header.forEach((name, at) => {
    const path = `row 1, ${shown(name) || `column ${at + 1}`}`;
    if (name !== "date" && !isColumn(name))
      draft.fault(path, "record-unknown-column", { column: shown(name) });
    else if (header.indexOf(name) < at) draft.fault(path, "record-column-twice", { column: name });
  });
}

function isColumn(name: string): name is WeatherColumn {
  return (weatherColumns as readonly string[]).includes(name);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function numberFromText(cell: unknown): number | null {
  if (cell === "") return Number.NaN;
  if (typeof cell !== "string" || !decimal.test(cell)) return null;
  const value = Number(cell);
  return Number.isFinite(value) ? value : null;
}

function numberFromJson(cell: unknown): number | null {
  if (typeof cell === "string") return numberFromText(cell.trim());
  if (cell === null || cell === undefined) return Number.NaN;
  return typeof cell === "number" && Number.isFinite(cell) ? cell : null;
}
