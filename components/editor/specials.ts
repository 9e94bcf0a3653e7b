import { html, nothing } from "lit";
import { changeBlanks } from "../../src/survey/edit/add.ts";
import { withId } from "../../src/survey/edit/change-id.ts";
import {
  type Address,
  type Draft,
  isFields,
  keyOf,
  pathOf,
  valueIn,
  withValue,
} from "../../src/survey/edit/document.ts";
import { idFrom, isNamedList, type NamedList, takenIds } from "../../src/survey/edit/ids.ts";
import { pathText } from "../../src/survey/path.ts";
import { id as idForm } from "../../src/survey/schema/forms.ts";
import { changes, weekdays } from "../../src/survey/words.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { formWords } from "../../src/words/en/editor-choices.ts";
import { editorFault } from "../../src/words/en/editor-faults.ts";
import { blankOf, hintOf, labelOf } from "../../src/words/en/editor-labels.ts";
import { changeNames, partWordsOfChange } from "../../src/words/en/editor-parts.ts";
import { datesWriting } from "../fields/writing/days-list.ts";
import { about } from "./about.ts";
import { control } from "./control.ts";
import type { Editing, Shown } from "./editing.ts";
import type { Node } from "./layout/nodes.ts";
import { below, faultLines } from "./lines.ts";
import { ticksFor } from "./options.ts";

type Special = Extract<Node, { special: string }>;

/** Parts of a survey that a plain field would ask for clumsily. */
export function special(
  editing: Editing,
  { special: sort, of, nodes: list = [] }: Special,
  at: Address,
): Shown {
  const address = below(at, of);
  switch (sort) {
    case "habit":
      return habit(editing, address, list);
    case "mulch":
      return mulch(editing, address, list);
    case "dry-days":
      return dryDays(editing, address);
    case "change":
      return change(editing, at, list);
    case "id":
      return ownId(editing, address);
    case "about":
      return about(editing, address);
  }
}

/** So many minutes, not watered, or not known: 0 minutes is not watered, no habit is not known. */
function habit(editing: Editing, at: Address, list: readonly Node[]): Shown {
  const value = valueIn(editing.draft, at);
  const answer = !isFields(value) ? "none" : value.minutes === 0 ? "never" : "minutes";
  const kept: Draft = isFields(value) ? value : {};
  const next: Readonly<Record<string, Draft | undefined>> = {
    minutes: answer === "minutes" ? kept : { ...kept, minutes: "" },
    never: { days: [], months: [], ...kept, minutes: 0 },
    none: undefined,
  };
  return html`${answerLines(editing, at, "habit", answer, next)}
  ${answer === "minutes" ? editing.show(list, at) : nothing}`;
}

function mulch(editing: Editing, at: Address, list: readonly Node[]): Shown {
  const isThere = isFields(valueIn(editing.draft, at));
  return html`${answerLines(editing, at, "mulch", isThere ? "some" : "none", {
    some: { material: "", cover: "", depth_mm: "" },
    none: undefined,
  })}
  ${isThere ? editing.show(list, at) : nothing}`;
}

function answerLines(
  editing: Editing,
  at: Address,
  name: string,
  answer: string,
  next: Readonly<Record<string, Draft | undefined>>,
): Shown {
  const words = formWords[name] ?? {};
  return html`<gwb-choice
      data-at=${keyOf(at)}
      .label=${words.label?.words ?? labelOf(name)}
      .options=${Object.keys(next).map((value) => ({ value, ...words[value] }))}
      .value=${answer}
      .origin=${answer === "none" ? "assumed" : "entered"}
      @change=${(event: CustomEvent<{ value: string }>) =>
        editing.act((draft) => withValue(draft, at, next[event.detail.value]))}
    ></gwb-choice>
    ${faultLines(editing, at)}`;
}

/** Days of every week, and single dates, which the survey keeps in one list. */
function dryDays(editing: Editing, at: Address): Shown {
  const path = pathOf(editing.draft, at);
  const value = valueIn(editing.draft, at);
  const all: readonly unknown[] = Array.isArray(value) ? value : [];
  const isDay = (one: unknown) => (weekdays as readonly unknown[]).includes(one);
  const dates = all.filter((one) => !isDay(one));
  const writing = datesWriting(editing.locale);
  const put = (next: readonly unknown[], text?: string) =>
    editing.put(at, next.length === 0 ? undefined : next, text);
  return html`<gwb-ticks
      data-at=${keyOf(at)}
      .label=${labelOf("beds.dryOn")}
      .hint=${hintOf("beds.dryOn")}
      .options=${path ? ticksFor(editing, path, { sort: "dry-days" }) : []}
      .values=${value === undefined ? undefined : all.filter(isDay)}
      .blank=${blankOf("beds.dryOn")}
      .isStrip=${true}
      .origin=${value === undefined ? "assumed" : "entered"}
      @change=${(event: CustomEvent<{ values: readonly unknown[] | undefined }>) =>
        event.detail.values ? put([...event.detail.values, ...dates]) : put([])}
    ></gwb-ticks>
    <gwb-entry
      data-at=${`${keyOf(at)}/dates`}
      .label=${editorWords.dryDates}
      .hint=${editorWords.dryDatesHint}
      .text=${writing.show(dates)}
      .width=${writing.width}
      .lines=${writing.lines}
      .error=${datesFault(editing, at)}
      .origin=${dates.length === 0 ? "assumed" : "entered"}
      @change=${(event: CustomEvent<{ text: string }>) => {
        const reading = writing.read(event.detail.text);
        const next = "value" in reading ? (reading.value as unknown[]) : event.detail.text.split("\n");
        put([...all.filter(isDay), ...next], event.detail.text);
      }}
    ></gwb-entry>`;
}

function datesFault({ faults }: Editing, at: Address): string {
  const key = keyOf(at);
  const found = faults.find((one) => one.key.startsWith(`${key}/`));
  return found ? editorFault(found.fault, null, String(found.fault.facts.found ?? "")) : "";
}

/** The one change of a measure: which, then its fields. */
function change(editing: Editing, at: Address, list: readonly Node[]): Shown {
  const measure = valueIn(editing.draft, at);
  const active = changes.find((name) => isFields(measure) && Object.hasOwn(measure, name));
  const shown = list.find((node) => "group" in node && node.group === active);
  const choose = (name: (typeof changes)[number]) =>
    editing.act((draft) => {
      const before = valueIn(draft, at);
      const others = Object.entries(isFields(before) ? before : {}).filter(([field]) => !isChange(field));
      return withValue(draft, at, { ...Object.fromEntries(others), [name]: begun(draft, name) });
    });
  return html`<gwb-choice
      data-at=${`${keyOf(at)}/change`}
      .label=${partWordsOfChange.label}
      .options=${changes.map((value) => ({ value, ...changeNames[value] }))}
      .value=${active}
      .isOpen=${active === undefined}
      @change=${(event: CustomEvent<{ value: (typeof changes)[number] }>) => choose(event.detail.value)}
    ></gwb-choice>
    ${faultLines(editing, at)}
    ${
      active && shown && "group" in shown
        ? html`<section class="group" aria-label=${changeNames[active]?.words ?? active}>
            ${faultLines(editing, [...at, active])} ${editing.show(shown.nodes, [...at, active])}
          </section>`
        : nothing
    }`;
}

function isChange(name: string): boolean {
  return (changes as readonly string[]).includes(name);
}

/** What is added has an id of its own from the start. */
function begun(draft: Draft, name: (typeof changes)[number]): Draft {
  const list: NamedList | null = name === "addTank" ? "tanks" : name === "addDraw" ? "draws" : null;
  if (list === null) return changeBlanks[name];
  const called = name === "addTank" ? partWordsOfChange.newTank : partWordsOfChange.newDraw;
  return { id: idFrom(called, list, takenIds(draft, list)), name: called, ...changeBlanks[name] };
}

/** An entry's own id: changed wherever it is named, and only where it is free. */
function ownId(editing: Editing, at: Address): Shown {
  const id = valueIn(editing.draft, at);
  const path = pathOf(editing.draft, at);
  const holder = at[at.length - 2];
  const list: unknown = holder === "addTank" ? "tanks" : holder === "addDraw" ? "draws" : at[0];
  if (typeof id !== "string" || path === null || typeof list !== "string" || !isNamedList(list))
    return control(editing, at);
  const key = `${keyOf(at)}/typed`;
  const typed = editing.session.typed.get(key)?.text ?? id;
  const isTaken = typed !== id && takenIds(editing.draft, list).has(typed);
  const isForm = idForm.test(typed);
  const code = isTaken ? "id-twice" : "form";
  const facts = isTaken ? { id: typed } : { wanted: "id" };
  return html`<gwb-entry
    data-at=${keyOf(at)}
    .label=${labelOf(pathText(path))}
    .hint=${hintOf("beds.id")}
    .text=${typed}
    .width=${24}
    .error=${isForm && !isTaken ? "" : editorFault({ path: pathText(path), code, facts }, null, typed)}
    @change=${(event: CustomEvent<{ text: string }>) => {
      const to = event.detail.text.trim();
      const isFree = idForm.test(to) && !takenIds(editing.draft, list).has(to);
      editing.note(key, isFree || to === id ? undefined : to);
      const isEntry = at.length === 3;
      if (isFree)
        editing.act((draft) => withId(draft, list, id, to), undefined, isEntry ? `${list}/${to}` : undefined);
    }}
  ></gwb-entry>`;
}
