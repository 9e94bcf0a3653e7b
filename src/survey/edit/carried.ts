import { type Draft, isFields } from "./document.ts";
import { same } from "./heal.ts";

/**
 * What changed from one survey to the next, made to a draft of the first: what was typed and has faults stays as it
 * is. Entries with an id go by it, wherever they stand.
 */
export function carried(draft: Draft, before: Draft, after: Draft): Draft {
  return carriedPart(draft, before, after) as Draft;
}

function carriedPart(draft: unknown, before: unknown, after: unknown): unknown {
  if (same(before, after)) return draft;
  if (isFields(draft) && isFields(before) && isFields(after)) return carriedFields(draft, before, after);
  if (isEntries(draft) && isEntries(before) && isEntries(after)) return carriedEntries(draft, before, after);
  return after;
}

function carriedFields(draft: Draft, before: Draft, after: Draft): Draft {
  const names = new Set([...Object.keys(draft), ...Object.keys(before), ...Object.keys(after)]);
  const next = [...names].map((name) => [name, carriedPart(draft[name], before[name], after[name])] as const);
  return Object.fromEntries(next.filter(([, value]) => value !== undefined));
}

type Entry = Draft & { id: string };

function carriedEntries(
  draft: readonly Entry[],
  before: readonly Entry[],
  after: readonly Entry[],
): readonly unknown[] {
  const find = (rows: readonly Entry[], id: string) => rows.find((row) => row.id === id);
  const kept = draft.filter(({ id }) => !find(before, id) || find(after, id));
  const fresh = after.filter(({ id }) => !find(draft, id) && !find(before, id));
  return [...kept.map((row) => carriedPart(row, find(before, row.id), find(after, row.id))), ...fresh];
}

function isEntries(value: unknown): value is readonly Entry[] {
  return Array.isArray(value) && value.every((row) => isFields(row) && typeof row.id === "string");
}
