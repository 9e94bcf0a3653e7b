import { changesBetween, namesOf } from "../../survey/changes.ts";
import type { Survey } from "../../survey/survey.ts";
import { changesText, changeWords } from "../../words/en/changes.ts";
import type { Store } from "./open.ts";
import { insertVersion, type SiteRow, siteRow, versionSurvey } from "./sites.ts";

/** What a write expects to find: one of the tags seen, or `any`. */
export type Expected = readonly string[] | "any";

/** The site has changed since the tag was seen; nothing was written. */
export class Overtaken extends Error {
  override name = "Overtaken";
}

/** There is nothing to undo, to redo, or a draft stands in the way. */
export class NothingToDo extends Error {
  override name = "NothingToDo";
  readonly reason: "undo" | "redo" | "draft";
  constructor(reason: "undo" | "redo" | "draft") {
    super(reason);
    this.reason = reason;
  }
}

/**
 * Saves a survey as a new version, made from the one at hand; a draft falls away. A survey that is the one at
 * hand already is no new version, and never overtaken: a save whose answer was lost may be sent again.
 */
export function saveSurvey(store: Store, id: string, expected: Expected, survey: Survey): void {
  write(store, () => {
    const row = siteRow(store, id);
    const before = versionSurvey(store, id, row.current);
    if (row.draft === null && isSame(before, survey)) return;
    checkExpected(row.tag, expected);
    if (isSame(before, survey)) return touch(store, id, row.current);
    const words = changesText(changesBetween(before, survey), namesOf(survey));
    addVersion(store, row, words, survey);
  });
}

/** Keeps entries with faults beside the last survey that was right. */
export function saveDraft(store: Store, id: string, expected: Expected, draft: object): void {
  write(store, () => {
    const row = siteRow(store, id);
    const text = JSON.stringify(draft);
    if (row.draft === text) return;
    checkExpected(row.tag, expected);
    touch(store, id, row.current, text);
  });
}

/** Lets the draft go. */
export function dropDraft(store: Store, id: string, expected: Expected): void {
  write(store, () => {
    const row = siteRow(store, id);
    if (row.draft === null) return;
    checkExpected(row.tag, expected);
    touch(store, id, row.current);
  });
}

/** Goes back to the version that the one at hand was made from. */
export function undo(store: Store, id: string, expected: Expected): void {
  move(store, id, expected, "undo", (row) => afterOf(store, row));
}

/** Goes on to the version last made from the one at hand. */
export function redo(store: Store, id: string, expected: Expected): void {
  move(store, id, expected, "redo", (row) => nextOf(store, row));
}

/** Saves an earlier version's survey as a new version: what came between stays, and undo leads back. */
export function restore(store: Store, id: string, expected: Expected, number: number): void {
  write(store, () => {
    const row = siteRow(store, id);
    checkExpected(row.tag, expected);
    const survey = versionSurvey(store, id, number);
    const changes = changesBetween(versionSurvey(store, id, row.current), survey);
    if (changes.length === 0) return;
    const words = `${changeWords.restored(number)}\n${changesText(changes, namesOf(survey))}`;
    addVersion(store, row, words, survey);
  });
}

/** Number of the version that undo goes back to; null for none. */
export function afterOf({ db }: Store, { id, current }: SiteRow): number | null {
  return db
    .prepare<[string, number], { after: number | null }>(
      "SELECT after FROM version WHERE site = ? AND number = ?",
    )
    .get(id, current)!.after;
}

/** Number of the version that redo goes on to: the last one made from the one at hand. */
export function nextOf({ db }: Store, { id, current }: SiteRow): number | null {
  return db
    .prepare<[string, number], { number: number | null }>(
      "SELECT max(number) AS number FROM version WHERE site = ? AND after = ?",
    )
    .get(id, current)!.number;
}

/** Runs a write whole or not at all; another program's write is waited for. */
export function write(store: Store, change: () => void): void {
  store.db.transaction(change).immediate();
}

/** @throws Overtaken where the tag is none of those expected */
export function checkExpected(tag: string, expected: Expected): void {
  if (expected !== "any" && !expected.includes(tag)) throw new Overtaken();
}

function move(
  store: Store,
  id: string,
  expected: Expected,
  reason: "undo" | "redo",
  target: (row: SiteRow) => number | null,
): void {
  write(store, () => {
    const row = siteRow(store, id);
    checkExpected(row.tag, expected);
    if (row.draft !== null) throw new NothingToDo("draft");
    const number = target(row);
    if (number === null) throw new NothingToDo(reason);
    touch(store, id, number);
  });
}

function addVersion(store: Store, { id, current }: SiteRow, words: string, survey: Survey): void {
  const savedAt = store.now().toISOString();
  touch(store, id, insertVersion(store, id, { savedAt, words, after: current, survey }));
}

/** Sets what is at hand, with a new tag. */
function touch(store: Store, id: string, current: number, draft: string | null = null): void {
  const now = store.now().toISOString();
  store.db
    .prepare("UPDATE site SET current = ?, draft = ?, draft_at = ?, tag = ?, changed_at = ? WHERE id = ?")
    .run(current, draft, draft === null ? null : now, store.freshWord(), now, id);
}

function isSame(a: Survey, b: Survey): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
