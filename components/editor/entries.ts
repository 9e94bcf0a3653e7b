import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { withNew } from "../../src/survey/edit/add.ts";
import { type Address, rowsOf } from "../../src/survey/edit/document.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { parts } from "../../src/words/en/editor-parts.ts";
import { arranged } from "./arrange.ts";
import type { Editing, Shown } from "./editing.ts";
import type { Part } from "./layout/screens.ts";
import { link } from "./link.ts";
import { nameOfRow } from "./shown.ts";
import { entrySummary, findingName } from "./summaries.ts";

type ListPart = Extract<Part, { list: string }>;

/** Lines of a long list before the rest is asked for; lists of beds and the like come whole. */
const mostShown = 120;

/** A list of entries, in the survey's order: open one, add one, change the order. */
export function entries(editing: Editing, part: ListPart): Shown {
  const rows = rowsOf(editing.draft, part.list).filter(({ id }) => typeof id === "string");
  const words = parts[part.slug];
  const isArranging = editing.opened.has("arrange") && rows.length > 1;
  const isLong = rows.length > mostShown && !editing.opened.has("all");
  const toggle = () => editing.open("arrange", !isArranging);
  return html`
    ${rows.length === 0 ? html`<p class="none">${editorWords.noneYet}</p>` : nothing}
    ${
      isArranging
        ? arranged(editing, part.list, rows)
        : html`<ol class="entries">
            ${repeat(
              isLong ? rows.slice(0, mostShown) : rows,
              ({ id }) => id,
              ({ id }) => line(editing, part, String(id)),
            )}
          </ol>`
    }
    ${
      isLong
        ? html`<p class="adding">
            <button type="button" class="plain" @click=${() => editing.open("all", true)}>${editorWords.showAll(rows.length)}</button>
          </p>`
        : nothing
    }
    <p class="adding">
      <button type="button" class="press" @click=${() => add(editing, part)}>${editorWords.addRow(words?.one ?? "")}</button>
      ${
        rows.length > 1
          ? html`<button type="button" class="plain" aria-pressed=${isArranging} @click=${toggle}>
              ${isArranging ? editorWords.arranged : editorWords.arrange}
            </button>`
          : nothing
      }
    </p>
  `;
}

function line(editing: Editing, part: ListPart, id: string): Shown {
  const at: Address = [part.list, { id }];
  const row = rowsOf(editing.draft, part.list).find((one) => one.id === id);
  const name = part.list === "found" ? findingName(editing, at) : nameOfRow(row);
  return html`<li>
    ${link(
      editing,
      `${part.slug}/${encodeURIComponent(id)}`,
      html`<span class="entry-name"><bdi>${name}</bdi></span> <span class="quiet">${entrySummary(editing, at)}</span>`,
      { look: "entry-line" },
    )}
  </li>`;
}

function add(editing: Editing, { list, slug }: ListPart): void {
  const count = rowsOf(editing.draft, list).length + 1;
  const name = editorWords.rowName(parts[slug]?.newName ?? "", count);
  const { id } = withNew(editing.draft, list, name);
  const added = (draft: typeof editing.draft) => withNew(draft, list, name).document;
  editing.add(added, list, id);
}
