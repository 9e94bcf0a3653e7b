import { html } from "lit";
import {
  type Address,
  addressOfText,
  isFields,
  keyOf,
  pathOf,
  rowsOf,
  valueIn,
} from "../../src/survey/edit/document.ts";
import { pathSteps } from "../../src/survey/measuring/field-path.ts";
import { pathText } from "../../src/survey/path.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { labelOf } from "../../src/words/en/editor-labels.ts";
import { parts } from "../../src/words/en/editor-parts.ts";
import type { Option } from "../fields/choice.ts";
import type { Editing, Shown } from "./editing.ts";
import { places } from "./layout/screens.ts";
import { nameOfRow } from "./shown.ts";

/** Lists of which something is measured. */
const measured = ["beds", "roofs", "tanks", "taps", "draws", "leaks"] as const;

/** The field that a finding is about: an entry by its name, then one of its figures. */
export function about(editing: Editing, at: Address): Shown {
  const value = valueIn(editing.draft, at);
  const path = typeof value === "string" ? value : "";
  const steps = pathSteps(path) ?? [];
  const isListed = typeof steps[1] === "number";
  const holder = steps.length === 0 ? undefined : pathText(steps.slice(0, isListed ? 2 : 1));
  const key = keyOf(at);
  const put = (next: string) => editing.put(at, next);
  return html`<gwb-choice
      data-at=${key}
      .label=${editorWords.aboutEntry}
      .options=${entries(editing, holder)}
      .value=${holder}
      @change=${(event: CustomEvent<{ value: string }>) => {
        const { value: entry } = event.detail;
        put(fieldsOfEntry(editing, entry)[0]?.value?.toString() ?? entry);
      }}
    ></gwb-choice>
    <gwb-choice
      data-at=${`${key}/field`}
      .label=${editorWords.aboutField}
      .options=${holder === undefined ? [] : withOwn(fieldsOfEntry(editing, holder), path)}
      .value=${path}
      @change=${(event: CustomEvent<{ value: string }>) => put(event.detail.value)}
    ></gwb-choice>`;
}

function entries({ draft }: Editing, own: string | undefined): Option[] {
  const named = measured.flatMap((list) =>
    rowsOf(draft, list).map((row, place) => ({ value: `${list}[${place}]`, words: nameOfRow(row) })),
  );
  const place = { value: "site", words: parts.place?.name ?? "" };
  const all: Option[] = [...named, place];
  return own === undefined || all.some(({ value }) => value === own)
    ? all
    : [...all, { value: own, words: own }];
}

/** Every figure of an entry, of each of its plantings and the like. */
function fieldsOfEntry({ draft }: Editing, entry: string): Option[] {
  const holder = pathOf(draft, addressOfText(draft, entry)) ?? [];
  const list = String(holder[0]);
  const start = typeof holder[1] === "number" ? `${list}[].` : `${list}.`;
  return [...places.keys()]
    .filter((pattern) => pattern.startsWith(start) && !/(?:^|\.)(?:id|name)$/.test(pattern))
    .flatMap((pattern) => inRows(draft, `${entry}.${pattern.slice(start.length)}`))
    .map((path) => ({ value: path, words: wordsOf(path) }));
}

/** A pattern with its first list's places put in: plantings[0], plantings[1]. */
function inRows(draft: unknown, path: string): string[] {
  const open = path.indexOf("[]");
  if (open === -1) return [path];
  const list = valueIn(draft, pathSteps(path.slice(0, open)) ?? []);
  const rows = Array.isArray(list) ? list.filter(isFields) : [];
  return rows.map((_, place) => `${path.slice(0, open)}[${place}]${path.slice(open + 2)}`);
}

function wordsOf(path: string): string {
  const row = /\w+\[(\d+)\]\.\w+$/.exec(path.replace(/^\w+\[\d+\]\./, ""))?.[1];
  return row === undefined ? labelOf(path) : editorWords.rowName(labelOf(path), Number(row) + 1);
}

function withOwn(options: readonly Option[], path: string): readonly Option[] {
  const isKnown = path === "" || options.some(({ value }) => value === path);
  return isKnown ? options : [...options, { value: path, words: path }];
}
