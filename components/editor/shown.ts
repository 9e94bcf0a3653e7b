import { type Address, isFields, pathOf, rowsOf, valueIn } from "../../src/survey/edit/document.ts";
import { namedLists } from "../../src/survey/edit/ids.ts";
import { type Sort, sortAt } from "../../src/survey/edit/sorts.ts";
import { type Path, pathText } from "../../src/survey/path.ts";
import { weekdays } from "../../src/survey/words.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { answerWords, plainAnswers } from "../../src/words/en/editor-choices.ts";
import type { Editing } from "./editing.ts";
import { writingFor } from "./writings.ts";

/** A value as people read it: with its unit, in words, by names. */
export function shownValue(editing: Editing, path: Path, value: unknown): string {
  const sort = sortAt(path);
  if (sort === null || value === undefined) return "";
  const text = pathText(path);
  switch (sort.sort) {
    case "word":
      return answerWords(text, String(value)).words;
    case "yes-no":
      return (value ? plainAnswers.yes : plainAnswers.no).toLowerCase();
    case "entry":
      return nameOfId(editing, sort.of, value);
    case "entries":
    case "words":
    case "days":
    case "months":
    case "twelve":
      return listShown(editing, sort, text, value);
    default: {
      const writing = writingFor(path, sort, editing);
      const shown = writing?.show(value) ?? String(value);
      if (!writing?.unit) return shown;
      return writing.unit === "%" ? `${shown}%` : `${shown}\u00A0${writing.unit}`;
    }
  }
}

/** The value at an address of the draft. */
export function shownAt(editing: Editing, address: Address): string {
  const path = pathOf(editing.draft, address);
  return path === null ? "" : shownValue(editing, path, valueIn(editing.draft, address));
}

function listShown(editing: Editing, sort: Sort, path: string, value: unknown): string {
  if (!Array.isArray(value)) return String(value);
  const words = value.map((one) => {
    if (sort.sort === "words") return answerWords(path, String(one)).words.toLowerCase();
    if (sort.sort === "entries") return nameOfId(editing, sort.of, one);
    if (sort.sort === "days") return weekdayName(String(one), editing.locale, "short");
    if (sort.sort === "months") return monthName(Number(one) - 1, editing.locale, "short");
    return String(one);
  });
  return words.length === 0 ? editorWords.noneYet.replace(".", "").toLowerCase() : words.join(", ");
}

export function nameOfId(editing: Editing, lists: readonly string[], id: unknown): string {
  if (id === "mains") return plainAnswers.mains;
  if (id === "other") return plainAnswers.other;
  const added = rowsOf(editing.draft, "measures").flatMap(({ addTank }) =>
    isFields(addTank) ? [addTank] : [],
  );
  const rows = [...lists.flatMap((list) => rowsOf(editing.draft, list)), ...added];
  const row = rows.find((one) => one.id === id);
  return row ? nameOfRow(row) : String(id);
}

export function nameOfRow(row: unknown): string {
  const { name, nickname } = isFields(row) ? row : {};
  const own = name ?? nickname;
  return typeof own === "string" && own !== "" ? own : editorWords.unnamed;
}

/** The name of the entry that an address is in; blank where it is in none. */
export function entryName(editing: Editing, address: Address): string {
  const [list, step] = address;
  if (typeof step !== "object" || !namedLists.some((one) => one === list)) return "";
  const row = valueIn(editing.draft, address.slice(0, 2));
  return list === "found" ? "" : nameOfRow(row);
}

export function weekdayName(day: string, locale: string | undefined, form: "long" | "short"): string {
  const at = (weekdays as readonly string[]).indexOf(day);
  // 2 January 2023 was a Monday
  return at === -1
    ? day
    : new Intl.DateTimeFormat(locale, { weekday: form, timeZone: "UTC" }).format(Date.UTC(2023, 0, 2 + at));
}

export function monthName(month: number, locale: string | undefined, form: "long" | "short"): string {
  return new Intl.DateTimeFormat(locale, { month: form, timeZone: "UTC" }).format(Date.UTC(2021, month, 15));
}
