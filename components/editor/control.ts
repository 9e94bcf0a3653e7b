import { html, nothing, type TemplateResult } from "lit";
import { type Address, keyOf, pathOf, valueIn } from "../../src/survey/edit/document.ts";
import { same } from "../../src/survey/edit/heal.ts";
import { isOptional, type Sort, sortAt } from "../../src/survey/edit/sorts.ts";
import { type Path, pathText } from "../../src/survey/path.ts";
import { blankOf, hintOf, labelOf } from "../../src/words/en/editor-labels.ts";
import "../fields/choice.ts";
import "../fields/entry.ts";
import "../fields/ticks.ts";
import "../fields/twelve.ts";
import type { Writing } from "../fields/writing/writing.ts";
import { type Below, belowOf } from "./below.ts";
import type { Editing } from "./editing.ts";
import { optionsFor, ticksFor } from "./options.ts";
import { twelve } from "./twelve.ts";
import { writingFor } from "./writings.ts";

/** A field about to be drawn. */
export interface Drawn {
  editing: Editing;
  address: Address;
  path: Path;
  sort: Sort;
  label: string;
  hint: string;
  /** The answer that a blank is; none where it must be filled. */
  blank: string;
  below: Below;
  /** A blank one stays in the document. */
  keeps: boolean;
}

/** Fields whose answers stand as lines however many there are: each wants its explanation. */
const opened: ReadonlySet<string> = new Set(["method"]);

/** The control of one field: what it is follows from the survey's schema. */
export function control(editing: Editing, address: Address, keeps = false): TemplateResult | typeof nothing {
  const path = pathOf(editing.draft, address);
  const sort = path && sortAt(path);
  if (!path || !sort) return nothing;
  const writing = writingFor(path, sort, editing);
  const at = pathText(path);
  const isOut = isOptional(path) && !keeps;
  const drawn: Drawn = {
    editing,
    address,
    path,
    sort,
    label: labelOf(at),
    hint: hintOf(at),
    blank: isOut ? blankOf(at) : "",
    below: belowOf(editing, address, path, sort, writing),
    keeps,
  };
  if (sort.sort === "twelve" && writing) return twelve(drawn, writing);
  if (writing) return entry(drawn, writing);
  return sort.sort === "word" || sort.sort === "yes-no" || sort.sort === "entry"
    ? choice(drawn, isOut)
    : ticks(drawn);
}

function entry({ editing, address, path, label, hint, blank, below, keeps }: Drawn, writing: Writing) {
  const key = keyOf(address);
  const value = valueIn(editing.draft, address);
  const typed = editing.session.typed.get(key);
  const text = typed && same(typed.value, value) ? typed.text : writing.show(value);
  return html`<gwb-entry
    data-at=${key}
    .label=${label}
    .hint=${hint}
    .error=${below.error}
    .standing=${below.standing}
    .source=${below.source}
    .origin=${below.origin}
    .text=${text}
    .unit=${writing.unit}
    .keys=${writing.inputMode}
    .width=${writing.width}
    .lines=${writing.lines ?? 1}
    .blank=${blank}
    .choices=${choicesOf(path)}
    @change=${(event: CustomEvent<{ text: string }>) => write(editing, address, writing, event.detail.text, keeps)}
  ></gwb-entry>`;
}

/** Puts what was typed: its value, or the text itself where it has none. */
export function write(
  editing: Editing,
  address: Address,
  writing: Writing,
  text: string,
  keeps: boolean,
): void {
  const reading = writing.read(text);
  const value = "value" in reading ? reading.value : text;
  editing.put(address, value === undefined && keeps ? "" : value, text);
}

function choice({ editing, address, path, sort, label, hint, below }: Drawn, isOptionalField: boolean) {
  const name = String(path[path.length - 1]);
  return html`<gwb-choice
    data-at=${keyOf(address)}
    .label=${label}
    .hint=${hint}
    .error=${below.error}
    .standing=${below.standing}
    .source=${below.source}
    .origin=${below.origin}
    .options=${optionsFor(editing, path, sort, isOptionalField)}
    .value=${valueIn(editing.draft, address)}
    .isShort=${sort.sort === "yes-no"}
    .isOpen=${opened.has(name)}
    @change=${(event: CustomEvent<{ value: unknown }>) => editing.put(address, event.detail.value)}
  ></gwb-choice>`;
}

function ticks({ editing, address, path, sort, label, hint, blank, below }: Drawn) {
  const value = valueIn(editing.draft, address);
  return html`<gwb-ticks
    data-at=${keyOf(address)}
    .label=${label}
    .hint=${hint}
    .error=${below.error}
    .standing=${below.standing}
    .source=${below.source}
    .origin=${below.origin}
    .options=${ticksFor(editing, path, sort)}
    .values=${Array.isArray(value) ? value : undefined}
    .blank=${blank}
    .isStrip=${sort.sort === "days" || sort.sort === "months"}
    @change=${(event: CustomEvent<{ values: unknown }>) => editing.put(address, event.detail.values)}
  ></gwb-ticks>`;
}

/** Texts offered while typing, where the machine knows them all. */
const none: readonly string[] = [];

function choicesOf(path: Path): readonly string[] {
  const name = path[path.length - 1];
  if (name === "timeZone") return Intl.supportedValuesOf("timeZone");
  return name === "currency" ? Intl.supportedValuesOf("currency") : none;
}
