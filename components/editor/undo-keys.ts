/** The step that a key asks for; null where it asks for none, or for the browser's own in a line being written. */
export function stepAsked(event: KeyboardEvent): "undo" | "redo" | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  const target = event.composedPath()[0];
  const isLine = target instanceof HTMLInputElement && target.type === "text";
  if (isLine || target instanceof HTMLTextAreaElement || (key !== "z" && key !== "y")) return null;
  return key === "y" || event.shiftKey ? "redo" : "undo";
}
