import { type Path, pathText } from "./path.ts";
import type { Survey } from "./survey.ts";
import { wantedAt } from "./wanted.ts";

type Fields = Readonly<Record<string, unknown>>;

/** One difference between two surveys, as facts; the sentences are in words. */
export interface Change {
  sort: "set" | "added" | "removed" | "reordered" | "counted";
  /** Where: in the later survey, for what was removed in the earlier one. */
  path: string;
  /** The list of the document that it is in, or its only section: beds, site, tariff. */
  section: string;
  /** Name of the bed, roof, tank … that it is in; null where the section is no list of named entries. */
  entry: string | null;
  before: unknown;
  after: unknown;
  unit: string;
  /** The single fields of a group that was set or taken out whole. */
  parts: readonly Part[];
}

export interface Part {
  path: string;
  value: unknown;
  unit: string;
}

/** Names of beds, tanks and the rest by their ids, for words where a field holds an id. */
export type Names = ReadonlyMap<string, string>;

/** Everything in which two surveys differ, in the order of the document. */
export function changesBetween(before: Survey, after: Survey): Change[] {
  const changes: Change[] = [];
  compareFields(before, after, { path: [], entry: null, changes });
  return changes;
}

/** The names of a survey's entries by their ids. */
export function namesOf(survey: Survey): Names {
  const names = new Map<string, string>();
  for (const list of Object.values(survey as Fields)) {
    if (!Array.isArray(list)) continue;
    for (const row of list) if (isNamed(row)) names.set(row.id, nameOf(row));
  }
  return names;
}

interface Place {
  path: Path;
  entry: string | null;
  changes: Change[];
}

function note(sort: Change["sort"], at: Place, before: unknown, after: unknown): void {
  const path = pathText(at.path);
  const section = String(at.path[0] ?? "");
  const unit = sort === "set" ? unitAt(at.path) : "";
  const group = sort !== "set" ? null : isFields(after) ? after : isFields(before) ? before : null;
  at.changes.push({
    sort,
    path,
    section,
    entry: at.entry,
    before,
    after,
    unit,
    parts: partsOf(group, at.path),
  });
}

function unitAt(path: Path): string {
  return String(wantedAt(path).unit ?? "");
}

function partsOf(group: Fields | null, path: Path): Part[] {
  return Object.entries(group ?? {}).flatMap(([field, value]) => {
    const at = [...path, field];
    return typeof value === "object" ? [] : [{ path: pathText(at), value, unit: unitAt(at) }];
  });
}

function compare(before: unknown, after: unknown, at: Place): void {
  if (isSame(before, after)) return;
  if (isFields(before) && isFields(after)) compareFields(before, after, at);
  else if (isListOfFields(before) && isListOfFields(after)) compareLists(before, after, at);
  else note("set", at, before, after);
}

function compareFields(before: Fields, after: Fields, at: Place): void {
  for (const field of new Set([...Object.keys(after), ...Object.keys(before)]))
    compare(before[field], after[field], { ...at, path: [...at.path, field] });
}

function compareLists(before: readonly Fields[], after: readonly Fields[], at: Place): void {
  if (before.every(isNamed) && after.every(isNamed)) compareNamed(before, after, at);
  else compareUnnamed(before, after, at);
}

type Named = Fields & { id: string };

/** Entries with ids are the same entry where the id is the same, wherever it stands. */
function compareNamed(before: readonly Named[], after: readonly Named[], at: Place): void {
  const earlier = new Map(before.map((row) => [row.id, row]));
  const later = new Map(after.map((row, index) => [row.id, { row, index }]));
  before.forEach((row, index) => {
    if (!later.has(row.id))
      note("removed", { ...at, path: [...at.path, index], entry: nameOf(row) }, row, undefined);
  });
  for (const [id, { row, index }] of later) {
    const place = { ...at, path: [...at.path, index], entry: nameOf(row) };
    const old = earlier.get(id);
    if (old === undefined) note("added", place, undefined, row);
    else compare(old, row, { ...place, entry: nameOf(old) });
  }
  const kept = before.filter(({ id }) => later.has(id)).map(({ id }) => id);
  const now = after.filter(({ id }) => earlier.has(id)).map(({ id }) => id);
  if (kept.join() !== now.join()) note("reordered", at, kept, now);
}

/**
 * Entries without ids: those that stand in both are set aside, as often as they do; what is left is paired in
 * order where there is as much on both sides, and counted where there is not.
 */
function compareUnnamed(before: readonly Fields[], after: readonly Fields[], at: Place): void {
  const gone = left(before, after);
  const come = left(after, before);
  if (gone.length === 0 && come.length === 0) note("reordered", at, before, after);
  else if (gone.length !== come.length) note("counted", at, gone.length, come.length);
  else
    come.forEach((index, i) => {
      compare(before[gone[i]!], after[index], { ...at, path: [...at.path, index] });
    });
}

/** Positions of the rows that the other list does not have too. */
function left(rows: readonly Fields[], other: readonly Fields[]): number[] {
  const there = new Map<string, number>();
  for (const row of other) there.set(JSON.stringify(row), (there.get(JSON.stringify(row)) ?? 0) + 1);
  return rows.flatMap((row, index) => {
    const text = JSON.stringify(row);
    const count = there.get(text) ?? 0;
    if (count === 0) return [index];
    there.set(text, count - 1);
    return [];
  });
}

function isSame(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function isFields(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isListOfFields(value: unknown): value is Fields[] {
  return Array.isArray(value) && value.every(isFields);
}

function isNamed(row: unknown): row is Named {
  return isFields(row) && typeof row.id === "string";
}

function nameOf(row: Named): string {
  return String(row.name ?? row.nickname ?? row.id);
}
