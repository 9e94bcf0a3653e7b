import { html } from "lit";
import { editorWords } from "../../src/words/en/editor.ts";
import type { Editing, Shown } from "./editing.ts";
import { faultList } from "./fault-list.ts";
import { link } from "./link.ts";

/** Above every screen: the way to the contents, one step back or forth, what was done last, what is wrong. */
export function head(
  editing: Editing,
  can: Readonly<Record<"undo" | "redo", boolean>>,
  told: string,
  step: (way: "undo" | "redo") => void,
  isContents: boolean,
): Shown {
  const press = (way: "undo" | "redo") =>
    html`<button type="button" class="plain" ?disabled=${!can[way]} @click=${() => step(way)}>
      ${editorWords[way]}
    </button>`;
  return html`<div class="head">
      <h2>${link(editing, "", editorWords.contents, { isHere: isContents })}</h2>
      <div class="ways">${press("undo")} ${press("redo")}</div>
    </div>
    <div class="notes">
      <p class="told" role="status">${told}</p>
      ${faultList(editing)}
    </div>`;
}
