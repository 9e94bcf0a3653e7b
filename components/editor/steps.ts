import { redo, type Session, undo } from "../../src/survey/edit/session.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { wordsOfChange } from "./words-of-change.ts";

/** The step that a key asks for; null where it asks for none, or for the browser's own in a line being written. */
export function stepAsked(event: KeyboardEvent): "undo" | "redo" | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  const target = event.composedPath()[0];
  const isLine = target instanceof HTMLInputElement && target.type === "text";
  if (isLine || target instanceof HTMLTextAreaElement || (key !== "z" && key !== "y")) return null;
  return key === "y" || event.shiftKey ? "redo" : "undo";
}

/** What can be undone and done again where the survey is kept, in words; null where nothing can. */
export type Beyond = Readonly<Record<"undo" | "redo", string | null>>;

/** Whether other steps can be taken than before: only then is anything drawn anew. */
export function isOther(now: Beyond, before: Beyond | undefined): boolean {
  return now.undo !== before?.undo || now.redo !== before?.redo;
}

/** Whether there is a step each way, in the session or, while nothing is wrong in it, beyond. */
export function canStep({ past, future, faults }: Session, beyond: Beyond): Record<"undo" | "redo", boolean> {
  const isRight = faults.length === 0;
  return {
    undo: past.length > 0 || (isRight && beyond.undo !== null),
    redo: future.length > 0 || (isRight && past.length === 0 && beyond.redo !== null),
  };
}

/** The session a step back or forth, and what that did, in words; null where it holds no such step. */
export function stepped(session: Session, way: "undo" | "redo"): { next: Session; told: string } | null {
  const next = way === "undo" ? undo(session) : redo(session);
  if (next === session) return null;
  const [before, after] = way === "undo" ? [next.right, session.right] : [session.right, next.right];
  return { next, told: told(way, wordsOfChange(before, after) ?? editorWords.unfinishedChange) };
}

/** A step beyond the session, in words; null where there is none or what is wrong stands in the way. */
export function steppedBeyond({ faults }: Session, beyond: Beyond, way: "undo" | "redo"): string | null {
  const what = beyond[way];
  return what === null || faults.length > 0 ? null : told(way, what);
}

function told(way: "undo" | "redo", what: string): string {
  return way === "undo" ? editorWords.undone(what) : editorWords.redone(what);
}
