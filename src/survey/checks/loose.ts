import type { Path } from "../path.ts";

/**
 * Reads any JSON as far as it is what it should be, so that what ties fields together is checked even where
 * other fields are at fault: everything wrong is listed at once.
 */
export interface Row {
  path: Path;
  fields: Readonly<Record<string, unknown>>;
}

export function asRow(value: unknown, path: Path): Row | null {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return null;
  return { path, fields: value as Record<string, unknown> };
}

export function rowAt(row: Row, name: string): Row | null {
  return asRow(own(row, name), [...row.path, name]);
}

/** Entries looked at: no fewer than the schema lets a list have, so that a list without end costs little. */
export const mostEntries = 2_000;
const mostRows: Readonly<Record<string, number>> = { readings: 100_000, found: 20_000 };

/** The entries of a list that are groups of fields; none where there is no list. */
export function rowsAt(row: Row, name: string): Row[] {
  const list = own(row, name);
  if (!Array.isArray(list)) return [];
  const looked = list.slice(0, mostRows[name] ?? mostEntries);
  return looked.flatMap((value: unknown, at) => asRow(value, [...row.path, name, at]) ?? []);
}

export function has(row: Row, name: string): boolean {
  return own(row, name) !== undefined;
}

export function textAt(row: Row, name: string): string | null {
  const value = own(row, name);
  return typeof value === "string" ? value : null;
}

export function numberAt(row: Row, name: string): number | null {
  const value = own(row, name);
  return typeof value === "number" && Number.isFinite(value) ? value : null;
}

/** A list of texts with where each stands. */
export function textsAt(row: Row, name: string): { text: string; path: Path }[] {
  const list = own(row, name);
  if (!Array.isArray(list)) return [];
  const looked = list.slice(0, mostEntries);
  return looked.flatMap((text: unknown, at) =>
    typeof text === "string" ? { text, path: [...row.path, name, at] } : [],
  );
}

/** A list of numbers by position; null where one is not a number. */
export function numbersAt(row: Row, name: string): (number | null)[] {
  const list = own(row, name);
  if (!Array.isArray(list)) return [];
  return list
    .slice(0, mostEntries)
    .map((value: unknown) => (typeof value === "number" && Number.isFinite(value) ? value : null));
}

function own(row: Row, name: string): unknown {
  return Object.hasOwn(row.fields, name) ? row.fields[name] : undefined;
}
