import { redo, type Session, undo } from "../../src/survey/edit/session.ts";

/** The step that a key asks for; null where it asks for none, or for the browser's own in a line being written. */
export function stepAsked(event: KeyboardEvent): "undo" | "redo" | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  const target = event.composedPath()[0];
  const isLine = target instanceof HTMLInputElement && target.type === "text";
  if (isLine || target instanceof HTMLTextAreaElement || (key !== "z" && key !== "y")) return null;
  return key === "y" || event.shiftKey ? "redo" : "undo";
}

/** The session a step back or forth. */
export function stepped(session: Session, way: "undo" | "redo"): Session {
  return way === "undo" ? undo(session) : redo(session);
}
