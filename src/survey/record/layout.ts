import { type WeatherColumn, weatherColumns } from "../../engine/weather/record.ts";
import type { Cells } from "./mapping.ts";
import { isMissing, looksNumeric } from "./source-cells.ts";
import { looksLikeDate } from "./source-dates.ts";
import { unitNamed } from "./source-units.ts";

/** Where things stand in a file: notes above the header, the header, units below it, and the rows of days. */
export interface Layout {
  headers: readonly string[];
  /** Texts of a row of units, blank where there is none. */
  unitRow: readonly string[];
  /** Places of the rows of days in the file, from 0; blank lines and comments are not among them. */
  body: readonly number[];
  /** Cells in a row. */
  width: number;
}

/** Lines looked at for the first row of days. */
const preamble_rows = 400;

/**
 * Tells notes, header, units and rows apart: the first row of days is the first of two in a row that have
 * numbers or dates in most of their cells and as many cells as most rows; the header is the row of text above.
 */
export function layOut(rows: Cells): Layout | null {
  const width = usualWidth(rows);
  const first = rows.slice(0, preamble_rows).findIndex((row, at) => {
    return isBody(row, width) && (at + 1 >= rows.length || nextIsBody(rows, at + 1, width));
  });
  if (first < 0) return null;
  const above = [...rows.keys()]
    .slice(0, first)
    .filter((at) => rows[at]!.length >= Math.max(2, width - 1) && filled(rows[at]!) >= Math.min(2, width));
  const lowest = above.at(-1);
  const hasUnits = above.length > 1 && isUnitRow(rows[lowest!]!);
  const headerAt = hasUnits ? above.at(-2) : lowest;
  const header = headerAt === undefined ? [] : rows[headerAt]!;
  const body: number[] = [];
  for (let at = first; at < rows.length; at++)
    if (!isBlank(rows[at]!) && !isComment(rows[at]!, width)) body.push(at);
  return { headers: named(header, width), unitRow: hasUnits ? rows[lowest!]! : [], body, width };
}

function nextIsBody(rows: Cells, from: number, width: number): boolean {
  const next = rows.slice(from, from + 20).find((row) => !isBlank(row));
  return next === undefined || isBody(next, width) || next.length < width;
}

/** The most common number of cells among the lines looked at. */
function usualWidth(rows: Cells): number {
  const counts = new Map<number, number>();
  for (const row of rows.slice(0, preamble_rows))
    if (!isBlank(row)) counts.set(row.length, (counts.get(row.length) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
}

function isBody(row: readonly string[], width: number): boolean {
  if (row.length !== width || isComment(row, width)) return false;
  const numbers = row.filter((cell) => looksNumeric(cell) || looksLikeDate(cell)).length;
  const texts = row.filter((cell) => !isMissing(cell)).length - numbers;
  return numbers >= Math.min(2, width) && (numbers >= texts || row.some(looksLikeDate));
}

function isUnitRow(row: readonly string[]): boolean {
  const texts = row.map((cell) => cell.replace(/^[([#\s]+|[)\]\s]+$/g, "")).filter((cell) => cell !== "");
  const units = texts.filter((text) =>
    weatherColumns.some((column: WeatherColumn) => unitNamed(column, text)),
  );
  return units.length >= 2 || (units.length === 1 && texts.length <= 2);
}

/** Header texts, a comment mark dropped, blanks named by place and repeats told apart. */
function named(header: readonly string[], width: number): string[] {
  const seen = new Map<string, number>();
  return Array.from({ length: Math.max(width, header.length) }, (_, at) => {
    const text = (at === 0 ? (header[0] ?? "").replace(/^[#%!*]+\s*/, "") : (header[at] ?? "")).trim();
    const base = text === "" ? `column ${at + 1}` : text;
    const times = (seen.get(base) ?? 0) + 1;
    seen.set(base, times);
    return times === 1 ? base : `${base} #${times}`;
  });
}

function isComment(row: readonly string[], width: number): boolean {
  const first = row[0] ?? "";
  return /^(#|\/\/|!|%|\*)/.test(first) || (row.length === 1 && width > 1 && /[a-z]{3}/i.test(first));
}

function isBlank(row: readonly string[]): boolean {
  return row.every((cell) => cell === "");
}

function filled(row: readonly string[]): number {
  return row.filter((cell) => cell !== "").length;
}
