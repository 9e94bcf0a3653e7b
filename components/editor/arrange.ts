import { html } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Draft } from "../../src/survey/edit/document.ts";
import type { NamedList } from "../../src/survey/edit/ids.ts";
import { withMoved } from "../../src/survey/edit/move.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import type { Editing, Shown } from "./editing.ts";
import { nameOfRow } from "./shown.ts";

/** The lines of a list with a handle each: dragged, moved by the arrow keys, or by the words beside it. */
export function arranged(editing: Editing, list: NamedList, rows: readonly Draft[]): Shown {
  const move = (from: number, to: number) => {
    if (to < 0 || to >= rows.length || to === from) return;
    const id = String(rows[from]!.id);
    const said = editorWords.movedTo(nameOfRow(rows[from]), to + 1, rows.length);
    editing.act((draft) => withMoved(draft, list, from, to), said, undefined, `move/${id}`);
  };
  return html`<p class="hint">${editorWords.arrangeHint}</p>
    <ol class="entries arranging">
      ${repeat(
        rows,
        ({ id }) => id,
        (row, at) => {
          const name = nameOfRow(row);
          return html`<li>
            <button
              type="button"
              class="handle"
              data-at=${`move/${String(row.id)}`}
              aria-label=${editorWords.handle(name)}
              @keydown=${(event: KeyboardEvent) => {
                const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
                if (step === undefined) return;
                event.preventDefault();
                move(at, at + step);
              }}
              @pointerdown=${(event: PointerEvent) => drag(event, at, move)}
            >
              ${editorWords.move}
            </button>
            <span class="entry-name"><bdi>${name}</bdi></span>
            <span class="steps">
              <button type="button" class="plain" ?disabled=${at === 0} aria-label="${editorWords.up}: ${name}" @click=${() => move(at, at - 1)}>
                ${editorWords.up}
              </button>
              <button
                type="button"
                class="plain"
                ?disabled=${at === rows.length - 1}
                aria-label="${editorWords.down}: ${name}"
                @click=${() => move(at, at + 1)}
              >
                ${editorWords.down}
              </button>
            </span>
          </li>`;
        },
      )}
    </ol>`;
}

/** Follows the pointer with the line until it is let go, then moves it to where it hangs. */
function drag(event: PointerEvent, from: number, move: (from: number, to: number) => void): void {
  const handle = event.currentTarget as HTMLElement;
  const line = handle.closest("li")!;
  const lines = [...line.parentElement!.children] as HTMLElement[];
  const heights = lines.map((one) => one.getBoundingClientRect());
  const start = event.clientY;
  let to = from;
  handle.setPointerCapture(event.pointerId);
  line.classList.add("dragged");
  const follow = ({ clientY }: PointerEvent) => {
    const middle = heights[from]!.top + heights[from]!.height / 2 + clientY - start;
    const passed = heights.filter(({ top, height }, at) => at !== from && middle > top + height / 2).length;
    to = passed;
    line.style.transform = `translateY(${clientY - start}px)`;
    lines.forEach((one, at) => {
      if (at === from) return;
      const shift = at > from && at <= to ? -1 : at < from && at >= to ? 1 : 0;
      one.style.transform = shift === 0 ? "" : `translateY(${shift * heights[from]!.height}px)`;
    });
  };
  const stop = (last: PointerEvent) => {
    handle.removeEventListener("pointermove", follow);
    handle.removeEventListener("pointerup", stop);
    handle.removeEventListener("pointercancel", stop);
    line.classList.remove("dragged");
    for (const one of lines) one.style.transform = "";
    if (last.type === "pointerup") move(from, to);
  };
  handle.addEventListener("pointermove", follow);
  handle.addEventListener("pointerup", stop);
  handle.addEventListener("pointercancel", stop);
}
