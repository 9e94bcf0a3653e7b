import type { Corner } from "../../../src/survey/measuring/polygon.ts";

const arrows: Readonly<Record<string, Corner>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

export type KeyAction = { move: Corner } | "mark" | "undo" | "nearer" | "further";

/** What a key does on a board; null where it does nothing there. */
export function actionOf({ key, shiftKey, ctrlKey, metaKey }: KeyboardEvent): KeyAction | null {
  const arrow = arrows[key];
  const step = shiftKey ? 40 : 6;
  if (arrow) return { move: [arrow[0] * step, arrow[1] * step] };
  if (key === "Enter" || key === " ") return "mark";
  if (key === "Backspace" || (key === "z" && (ctrlKey || metaKey))) return "undo";
  if (key === "+" || key === "=") return "nearer";
  return key === "-" ? "further" : null;
}
