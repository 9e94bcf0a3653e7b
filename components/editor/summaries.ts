import {
  type Address,
  addressOfText,
  type Draft,
  isFields,
  pathOf,
  valueIn,
} from "../../src/survey/edit/document.ts";
import { sortAt } from "../../src/survey/edit/sorts.ts";
import { changes } from "../../src/survey/words.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { answerWords, formWords } from "../../src/words/en/editor-choices.ts";
import { changeNames, partSummary } from "../../src/words/en/editor-parts.ts";
import { fieldName } from "../../src/words/en/fields.ts";
import { type Editing, isCounted } from "./editing.ts";
import { entryName, shownAt, shownValue } from "./shown.ts";

/** The fields that say most of an entry of each list. */
const telling: Readonly<Record<string, readonly string[]>> = {
  roofs: ["area_m2", "material", "tank"],
  taps: ["source", "flow_L_min"],
  draws: ["litresPerDay", "tank"],
  leaks: ["litresPerDay"],
  meters: ["unit", "parent"],
};

/** One line on an entry, for lists. */
export function entrySummary(editing: Editing, at: Address): string {
  const [list] = at;
  const unfinished = isCounted(editing, at) ? [] : [editorWords.unfinished];
  const counted = unfinished.length > 0 ? editing : { ...editing, draft: editing.right };
  return [...factsOf(counted, String(list), at), ...unfinished].filter((part) => part !== "").join(", ");
}

function factsOf(editing: Editing, list: string, at: Address): string[] {
  if (list === "beds") return [shownAt(editing, [...at, "area_m2"]), ...plantsOf(editing, at)];
  if (list === "measures")
    return [changeOf(editing, at), shownAt(editing, [...at, "cost"]), ...planned(editing, at)];
  if (list === "tanks") {
    const level = shownAt(editing, [...at, "level_L"]);
    return [shownAt(editing, [...at, "capacity_L"]), level && partSummary.inIt(level)];
  }
  if (list === "found") return [shownAt(editing, [...at, "figure"]), shownAt(editing, [...at, "when"])];
  if (list === "restrictions") {
    const times = [shownAt(editing, [...at, "fromTime"]), shownAt(editing, [...at, "toTime"])];
    return [
      shownAt(editing, [...at, "days"]),
      times.filter(Boolean).join(" – "),
      shownAt(editing, [...at, "methods"]),
    ];
  }
  return (telling[list] ?? []).map((name) => factAt(editing, [...at, name]));
}

/** A value on a line: words small, as they stand in a sentence; names as they are. */
function factAt(editing: Editing, at: Address): string {
  const path = pathOf(editing.draft, at);
  const shown = shownAt(editing, at);
  return path && sortAt(path)?.sort === "word" ? lower(shown) : shown;
}

/** What a finding is about. */
export function findingName(editing: Editing, at: Address): string {
  const path = valueIn(editing.draft, [...at, "at"]);
  if (typeof path !== "string" || path === "") return editorWords.unnamed;
  const entry = entryName(editing, addressOfText(editing.draft, path));
  return entry === "" ? fieldName(path) : `${entry}: ${lower(fieldName(path))}`;
}

function plantsOf(editing: Editing, at: Address): string[] {
  const list = valueIn(editing.draft, [...at, "plantings"]);
  return Array.isArray(list)
    ? list.filter(isFields).map(({ kind }) => lower(answerWords("kind", String(kind ?? "")).words))
    : [];
}

function changeOf(editing: Editing, at: Address): string {
  const measure = valueIn(editing.draft, at);
  const name = changes.find((one) => isFields(measure) && Object.hasOwn(measure, one));
  return name ? lower(changeNames[name]?.words ?? name) : "";
}

function planned(editing: Editing, at: Address): string[] {
  return valueIn(editing.draft, [...at, "chosen"]) === false ? [partSummary.notPlanned] : [];
}

/** One line on each further sheet of a bed. */
export function sheetSummary(editing: Editing, slug: string, at: Address): string {
  const { draft } = editing;
  const value = (...names: string[]) => valueIn(draft, [...at, ...names]);
  const shown = (...names: string[]) => shownAt(editing, [...at, ...names]);
  const all = (...parts: string[]) => parts.filter((part) => part !== "").join(", ");
  switch (slug) {
    case "plants":
      return all(...plantsOf(editing, at));
    case "cover":
      return shown("leafCover") || partSummary.notKnown;
    case "mulch":
      return value("mulch") === undefined
        ? lower(formWords.mulch?.none?.words ?? "")
        : all(lower(shown("mulch", "material")), shown("mulch", "depth_mm"));
    case "soil":
      return soilSummary(editing, value("soil"), at);
    case "shade": {
      const list = value("obstructions");
      return Array.isArray(list) && list.length > 0 ? partSummary.inTheWay(list.length) : partSummary.openSky;
    }
    case "watering":
      return all(lower(shown("watering", "method")), lower(shown("watering", "supply")));
    case "habit": {
      const habit = value("watering", "habit");
      if (!isFields(habit)) return partSummary.notKnown;
      if (habit.minutes === 0) return partSummary.notWatered;
      return all(shown("watering", "habit", "minutes"), shown("watering", "habit", "days"));
    }
    case "days":
      return all(shown("watering", "allowedDays") || partSummary.anyDay, shown("watering", "maxMinutes"));
    case "plan": {
      const corners = value("outline_m");
      return Array.isArray(corners) ? partSummary.corners(corners.length) : partSummary.notDrawn;
    }
    default:
      return "";
  }
}

function soilSummary(editing: Editing, soil: unknown, at: Address): string {
  if (!isFields(soil)) return partSummary.notKnown;
  const shown = (name: string) => shownAt(editing, [...at, "soil", name]);
  if (soil.texture !== undefined) return lower(shown("texture"));
  if (soil.sand_pct !== undefined) return partSummary.sandAndClay(shown("sand_pct"), shown("clay_pct"));
  return soil.fieldCapacity === undefined ? partSummary.notKnown : partSummary.ownFigures;
}

/** A reading on one line. */
export function readingSummary(editing: Editing, at: Address): string {
  const row = valueIn(editing.draft, at);
  const reading: Draft = isFields(row) ? row : {};
  const shown = (name: string) => (reading[name] === "" ? "" : shownAt(editing, [...at, name]));
  const of = shown("meter") || shown("tank");
  const when = shown("at") || shown("date") || [shown("from"), shown("to")].filter(Boolean).join(" – ");
  const what = shown("value") || shown("kL") || shown("level_L");
  const guess = reading.estimated === true ? partSummary.estimated : "";
  return [of, when, what, guess].filter((part) => part !== "").join(", ") || editorWords.unfinished;
}

/** The line of a part in the contents. */
export function partLine(editing: Editing, slug: string, list: string | null): string {
  const { draft } = editing;
  if (list !== null) {
    const rows = draft[list];
    return Array.isArray(rows) && rows.length > 0 ? partSummary.count(rows.length) : partSummary.none;
  }
  const lengthOf = (value: unknown) => (Array.isArray(value) ? value.length : 0);
  switch (slug) {
    case "place":
      return shownAt(editing, ["site", "name"]);
    case "hours":
    case "absences":
      return countOr(lengthOf(valueIn(draft, ["site", slug])));
    case "readings":
      return countOr(lengthOf(draft.readings));
    case "weather":
      return valueIn(draft, ["site", "normals"]) === undefined ? partSummary.notSaid : partSummary.typedIn;
    case "price":
      return draft.tariff === undefined ? partSummary.notSaid : shownAt(editing, ["tariff", "currency"]);
    case "budget":
      return (
        shownValue(editing, ["money", "budget"], valueIn(draft, ["money", "budget"])) || partSummary.notSaid
      );
    default:
      return "";
  }
}

function countOr(n: number): string {
  return n === 0 ? partSummary.none : partSummary.count(n);
}

function lower(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
