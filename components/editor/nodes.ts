import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import {
  type Address,
  type Draft,
  isFields,
  keyOf,
  valueIn,
  withValue,
} from "../../src/survey/edit/document.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { formWords } from "../../src/words/en/editor-choices.ts";
import { groupWords } from "../../src/words/en/editor-parts.ts";
import { control } from "./control.ts";
import { drawing } from "./drawings/drawing.ts";
import type { Editing, Shown } from "./editing.ts";
import type { FormNode, FormsNode, GroupNode, Node } from "./layout/nodes.ts";
import { below, faultLines } from "./lines.ts";
import { rows } from "./rows.ts";
import { special } from "./specials.ts";

/** The nodes of a sheet, one under another. */
export function nodes(editing: Editing, list: readonly Node[], at: Address): Shown[] {
  return list.map((one) => node(editing, one, at));
}

function node(editing: Editing, one: Node, at: Address): Shown {
  if ("field" in one) return control(editing, below(at, one.field), one.keeps);
  if ("group" in one) return group(editing, one, below(at, one.group));
  if ("rows" in one) return rows(editing, one, below(at, one.rows));
  if ("forms" in one) return forms(editing, one, below(at, one.in));
  if ("special" in one) return special(editing, one, at);
  if ("drawing" in one) return drawing(editing, one.drawing, at);
  const key = `${keyOf(at)}/more`;
  const isOpen = editing.opened.has(key) || editing.opened.has("more");
  return html`<details
    class="more"
    ?open=${isOpen}
    @toggle=${(event: Event) => editing.open(key, (event.target as HTMLDetailsElement).open)}
  >
    <summary>${editorWords.more}</summary>
    ${isOpen ? nodes(editing, one.more, at) : nothing}
  </details>`;
}

/** Fields that are there together: asked for first, then shown with a way to take them out. */
function group(editing: Editing, { group: name, nodes: list, isAlone }: GroupNode, at: Address): Shown {
  const words = groupWords[name];
  const isThere = isFields(valueIn(editing.draft, at));
  if (!words) return nothing;
  if (!isThere)
    return html`<p class="adding">
      <button type="button" class="press" data-at=${keyOf(at)} @click=${() => editing.act((draft) => withValue(draft, at, {}))}>
        ${words.add}
      </button>
    </p>`;
  return html`<section class="group" aria-label=${words.name}>
    ${isAlone ? nothing : html`<h4>${words.name}</h4>`}
    ${faultLines(editing, at)} ${nodes(editing, list, at)}
    <p class="adding">
      <button
        type="button"
        class="plain"
        @click=${() => editing.act((draft) => withValue(draft, at, undefined), editorWords.takenOut(words.name))}
      >
        ${editorWords.takeOut(words.one)}
      </button>
    </p>
  </section>`;
}

/** One of several forms: which, then its fields. */
function forms(editing: Editing, one: FormsNode, at: Address): Shown {
  const holder = valueIn(editing.draft, at);
  const has = (name: string) => isFields(holder) && Object.hasOwn(holder, name);
  const active = one.options.find(({ marks }) => marks.some(has));
  const words = formWords[one.forms] ?? {};
  const choices = [...one.options.map(({ key }) => key), ...(one.mayBeNone ? ["none"] : [])];
  const isNone = active === undefined && one.mayBeNone;
  return html`<gwb-choice
      data-at=${one.in === "" ? `${keyOf(at)}/${one.forms}` : keyOf(at)}
      .label=${words.label?.words ?? ""}
      .options=${choices.map((value) => ({ value, ...words[value] }))}
      .value=${active?.key ?? (isNone ? "none" : undefined)}
      .origin=${active ? "entered" : "assumed"}
      @change=${(event: CustomEvent<{ value: string }>) =>
        editing.act((draft) => withForm(draft, at, one, event.detail.value))}
    ></gwb-choice>
    ${faultLines(editing, at)}
    ${
      active
        ? repeat(
            [active],
            ({ key }) => key,
            (form) => html`<div>${nodes(editing, form.nodes, at)}</div>`,
          )
        : nothing
    }`;
}

/** The draft with one form's fields begun and those of the others taken out; what both have stays. */
function withForm(draft: Draft, at: Address, { options, in: place }: FormsNode, key: string): Draft {
  const chosen = options.find((option) => option.key === key);
  const before = valueIn(draft, at);
  const holder: Draft = isFields(before) ? before : {};
  const ofForms = new Set(options.flatMap(({ begin, marks }) => [...Object.keys(begin), ...marks]));
  const kept = Object.entries(holder).filter(([name]) => !ofForms.has(name) || isKept(name, chosen));
  const next = { ...chosen?.begin, ...Object.fromEntries(kept) };
  const isEmpty = Object.keys(next).length === 0 && place !== "";
  return withValue(draft, at, isEmpty ? undefined : next);
}

function isKept(name: string, chosen: FormNode | undefined): boolean {
  return chosen !== undefined && Object.hasOwn(chosen.begin, name);
}
