/** What changed between two surveys, in words: "Rose walk: area 40 m² → 44 m²". */
import type { Change, Names } from "../../survey/changes.ts";
import { count } from "./count.ts";
import { answerWords } from "./editor-choices.ts";
import { fieldName, subject } from "./fields.ts";
import { dayNames } from "./rounds.ts";

/** Changes named in one text; more are counted. */
const mostNamed = 40;

export const changeWords = {
  started: (beds: number, roofs: number, tanks: number) =>
    `Started with ${counted(beds, "bed")}, ${counted(roofs, "roof")} and ${counted(tanks, "tank")}`,
  nothing: "Nothing changed",
  restored: (number: number) => `Went back to version ${count(number)}`,
  broughtIn: "As it stood in the file brought in",
} as const;

/** One line a change, forty at most and a count of the rest. */
export function changesText(changes: readonly Change[], names: Names): string {
  if (changes.length === 0) return changeWords.nothing;
  const lines = changes.slice(0, mostNamed).map((change) => changeSentence(change, names));
  const more = changes.length - lines.length;
  return (more === 0 ? lines : [...lines, `and ${counted(more, "more change")}`]).join("\n");
}

/** One change as a line without a full stop. */
export function changeSentence(change: Change, names: Names): string {
  return capital(sentence(change, names));
}

function sentence(change: Change, names: Names): string {
  const { sort, path, entry, before, after } = change;
  const where = place(change);
  switch (sort) {
    case "added":
      return `${kindOf(path)} added: ${entry}`;
    case "removed":
      return `${kindOf(path)} taken out: ${entry}`;
    case "reordered":
      return `${where}${lower(fieldName(path))} in another order`;
    case "counted":
      return `${where}${lower(fieldName(path))}: ${count(Number(after))} added, ${count(Number(before))} taken out`;
    case "set":
      return `${where}${fieldWords(path)} ${settingWords(change, names)}`;
  }
}

function settingWords({ path, before, after, unit, parts }: Change, names: Names): string {
  const group = parts
    .map((part) => `${lower(fieldName(part.path))} ${valueWords(part.value, part, names)}`)
    .join(", ");
  const shown = (value: unknown) =>
    isGroup(value) && group ? group : valueWords(value, { path, unit }, names);
  if (before === undefined) return `set to ${shown(after)}`;
  if (after === undefined) return `taken out (was ${shown(before)})`;
  return `${shown(before)} → ${shown(after)}`;
}

/** "Rose walk: " for a named entry, "Tariff: " for a section, and which planting, step or reading it is. */
function place({ path, section, entry }: Change): string {
  const whole = path === section;
  const start = entry ?? (whole ? null : fieldName(section).replace(/^The /, ""));
  const within = [...path.matchAll(/(\w+)\[(\d+)\](?=\.)/g)].slice(entry === null ? 0 : 1);
  const steps = within.map(([, list = "", at]) => `${bare(subject(`${list}[0]`))} ${Number(at) + 1}`);
  const words = [...(start === null ? [] : [capital(start)]), ...steps];
  return words.length === 0 ? "" : `${words.join(", ")}: `;
}

/** The field's name; the kind of entry falls away where the entry is named. */
function fieldWords(path: string): string {
  const name = lower(fieldName(path).replace(/^The /, ""));
  return name.replace(/^(bed|roof|tank|tap|draw|leak|restriction|measure|meter|group|finding) (?=\w)/, "");
}

function kindOf(path: string): string {
  return capital(bare(subject(path)));
}

/** Without its article. */
function bare(words: string): string {
  return lower(words.replace(/^(A|An|The) /, ""));
}

/** Where a value stands, and the unit that it is in. */
interface Standing {
  path: string;
  unit: string;
}

function valueWords(value: unknown, { path, unit }: Standing, names: Names): string {
  if (typeof value === "number") return `${figures.format(value)}${unit === "" ? "" : ` ${unit}`}`;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string") return names.get(value) ?? wordOf(path, value);
  if (Array.isArray(value)) return listWords(value, { path, unit }, names);
  return isGroup(value) ? counted(Object.keys(value).length, "entry", "entries") : "nothing";
}

/** What the editor calls a choice; a text of one's own stays as it is. */
function wordOf(path: string, value: string): string {
  const { words } = answerWords(path, value);
  if (words !== value) return lower(words);
  return /(?:[dD]ays|dryOn)$/.test(path) ? (dayNames[value] ?? value) : value;
}

function listWords(list: readonly unknown[], standing: Standing, names: Names): string {
  if (list.length === 0) return "none";
  if (list.some((one) => typeof one === "object")) return counted(list.length, "entry", "entries");
  return list.map((one) => valueWords(one, standing, names)).join(", ");
}

function isGroup(value: unknown): value is object {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const figures = new Intl.NumberFormat("en", { maximumSignificantDigits: 10 });

function counted(n: number, one: string, many = `${one}s`): string {
  return `${count(n)} ${n === 1 ? one : many}`;
}

function lower(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
