import { html, nothing } from "lit";
import { type Address, keyOf, valueIn, withValue } from "../../src/survey/edit/document.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { rowWords } from "../../src/words/en/editor-parts.ts";
import { type Editing, faultsIn, type Shown } from "./editing.ts";
import type { RowsNode } from "./layout/nodes.ts";
import { faultLines } from "./lines.ts";
import { shownAt } from "./shown.ts";
import { readingSummary } from "./summaries.ts";

/** Fields too wide to stand beside others. */
const tall: ReadonlySet<string> = new Set(["days", "name", "what"]);

/** Rows shown of a long list before the rest is asked for: the last ones. */
const mostShown = 12;

/** Entries that have no id: one under another, each with its fields. */
export function rows(editing: Editing, node: RowsNode, at: Address): Shown {
  const list = valueIn(editing.draft, at);
  const all: readonly unknown[] = Array.isArray(list) ? list : [];
  const words = rowWords[node.rows] ?? { one: node.rows, name: node.rows };
  const key = keyOf(at);
  const isLong = all.length > mostShown && !editing.opened.has(`${key}/all`);
  const first = isLong ? all.length - mostShown : 0;
  const add = () => {
    editing.open(`${key}/${all.length}`, true);
    editing.act(
      (draft) => withValue(draft, [...at, all.length], node.begin),
      "",
      undefined,
      `${key}/${all.length}`,
    );
  };
  return html`<div class="rows" data-at=${key} tabindex="-1">
    ${faultLines(editing, at)}
    ${
      isLong
        ? html`<p class="adding">
            <button type="button" class="plain" @click=${() => editing.open(`${key}/all`, true)}>
              ${editorWords.showAll(all.length)}
            </button>
          </p>`
        : nothing
    }
    ${all.slice(first).map((_, index) => row(editing, node, [...at, first + index], first + index))}
    <p class="adding">
      <button type="button" class="press" @click=${add}>${editorWords.addRow(words.one)}</button>
    </p>
  </div>`;
}

/** The field that names a row. */
const naming: Readonly<Record<string, string>> = {
  plantings: "kind",
  absences: "name",
  perKLAlso: "name",
  lines: "what",
};

function titleOf(editing: Editing, node: RowsNode, at: Address): string {
  const field = naming[node.rows];
  return field === undefined || valueIn(editing.draft, [...at, field]) === ""
    ? ""
    : shownAt(editing, [...at, field]);
}

function row(editing: Editing, node: RowsNode, at: Address, place: number): Shown {
  const words = rowWords[node.rows] ?? { one: node.rows, name: node.rows };
  const name = titleOf(editing, node, at) || editorWords.rowName(words.name, place + 1);
  const isAbreast = node.nodes.every((one) => "field" in one && !tall.has(one.field));
  const inside = html`${faultLines(editing, at)}
    <div class=${isAbreast ? "abreast" : ""}>${editing.show(node.nodes, at)}</div>
    <p class="adding">
      <button
        type="button"
        class="plain"
        @click=${() => editing.act((draft) => withValue(draft, at, undefined), editorWords.takenOut(name), undefined, keyOf(at.slice(0, -1)))}
      >
        ${editorWords.takeOut(name)}
      </button>
    </p>`;
  if (node.rows !== "readings")
    return html`<section class="group" aria-label=${name}>
      <h4>${name}</h4>
      ${inside}
    </section>`;
  const key = keyOf(at);
  const isOpen = editing.opened.has(key) || faultsIn(editing, at).length > 0;
  return html`<details
    class="reading"
    data-at=${key}
    ?open=${isOpen}
    @toggle=${(event: Event) => editing.open(key, (event.target as HTMLDetailsElement).open)}
  >
    <summary>${readingSummary(editing, at)}</summary>
    ${isOpen ? inside : nothing}
  </details>`;
}
