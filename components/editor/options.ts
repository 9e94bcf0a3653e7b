import { isFields, rowsOf } from "../../src/survey/edit/document.ts";
import type { NamedList } from "../../src/survey/edit/ids.ts";
import { patternOf, type Sort } from "../../src/survey/edit/sorts.ts";
import { type Path, pathText } from "../../src/survey/path.ts";
import { weekdays } from "../../src/survey/words.ts";
import { answerWords, plainAnswers } from "../../src/words/en/editor-choices.ts";
import { blankOf } from "../../src/words/en/editor-labels.ts";
import type { Option } from "../fields/choice.ts";
import type { Tick } from "../fields/ticks.ts";
import type { Editing } from "./editing.ts";
import { monthName, nameOfRow, weekdayName } from "./shown.ts";

/** The answers of a field that is chosen, leaving it out last where it may be. */
export function optionsFor(editing: Editing, path: Path, sort: Sort, isOptional: boolean): Option[] {
  const at = pathText(path);
  const blank: Option[] = isOptional ? [{ value: undefined, words: capital(blankOf(at)) }] : [];
  if (sort.sort === "yes-no")
    return [{ value: true, words: plainAnswers.yes }, { value: false, words: plainAnswers.no }, ...blank];
  if (sort.sort === "word")
    return [...sort.words.map((word) => ({ value: word, ...answerWords(at, word) })), ...blank];
  if (sort.sort !== "entry") return blank;
  const named = entriesFor(editing, path, sort.of).map(({ value, words }) => ({
    value: String(value),
    words,
  }));
  const others: Option[] =
    patternOf(path) === "taps[].source"
      ? [
          { value: "mains", words: plainAnswers.mains },
          { value: "other", words: plainAnswers.other },
        ]
      : [];
  return [...others, ...named, ...blank];
}

/** What may be ticked in a field that holds several. */
export function ticksFor(editing: Editing, path: Path, sort: Sort): Tick[] {
  const { locale } = editing;
  switch (sort.sort) {
    case "days":
    case "dry-days":
      return weekdays.map((day) => ({
        value: day,
        words: weekdayName(day, locale, "long"),
        short: weekdayName(day, locale, "short"),
      }));
    case "months":
      return Array.from({ length: 12 }, (_, month) => ({
        value: month + 1,
        words: monthName(month, locale, "long"),
        short: monthName(month, locale, "short"),
      }));
    case "words":
      return sort.words.map((word) => ({ value: word, ...answerWords(pathText(path), word) }));
    case "entries":
      return entriesFor(editing, path, sort.of);
    default:
      return [];
  }
}

/** Entries that a field may name: of its lists, tanks that measures add where measures speak, never its own. */
function entriesFor({ draft }: Editing, path: Path, lists: readonly NamedList[]): Tick[] {
  const [section, place] = path;
  const own = typeof place === "number" ? rowsOf(draft, String(section))[place]?.id : undefined;
  const isOwnList = lists.some((list) => list === section);
  const planned =
    section === "measures" && lists.includes("tanks")
      ? rowsOf(draft, "measures").flatMap(({ addTank }) => (isFields(addTank) ? [addTank] : []))
      : [];
  const seen = new Set<unknown>(isOwnList ? [own] : []);
  return [...lists.flatMap((list) => rowsOf(draft, list)), ...planned].flatMap((row) => {
    if (typeof row.id !== "string" || seen.has(row.id)) return [];
    seen.add(row.id);
    return [{ value: row.id, words: nameOfRow(row) }];
  });
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
