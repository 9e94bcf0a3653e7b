/** What the survey's editor says around its fields. Labels, answers, parts and faults have files of their own. */
import { count } from "./count.ts";

/** Words inside the fields themselves. */
export const fieldWords = {
  whereFrom: "Where from",
  all: "all",
  none: "none",
  nothingToTick: "There are none to choose from yet.",
} as const;

export const editorWords = {
  contents: "The survey",
  contentsLead:
    "Everything that was found on the grounds. What is left out is taken from tables, and said so.",
  back: (where: string) => `Back to ${where}`,
  next: (part: string) => `On to ${part}`,
  undo: "Undo",
  redo: "Redo",
  undone: (what: string) => `Taken back: ${what}`,
  redone: (what: string) => `Done again: ${what}`,
  unfinishedChange: "an entry that did not count yet",
  nothingMore: "Nothing more to take back.",
  more: "More details",
  takeOut: (what: string) => `Take out ${what}`,
  takenOut: (what: string) => `${what} is taken out.`,
  copy: "Make a copy",
  copied: (name: string) => `A copy is there: ${name}.`,
  copyName: (name: string) => `${name}, copy`,
  addRow: (what: string) => `Add ${what}`,
  arrange: "Change the order",
  arranged: "The order is right",
  arrangeHint: "Drag a line by “Move”, or move it with the arrow keys or the words beside it.",
  move: "Move",
  handle: (name: string) => `Move ${name}`,
  up: "Up",
  down: "Down",
  movedTo: (name: string, place: number, of: number) => `${name}: ${count(place)} of ${count(of)}`,
  unnamed: "No name yet",
  unfinished: "not finished: it counts once it is",
  wanted: "Still wanted.",
  noneYet: "None yet.",
  gone: "This is no longer in the survey.",
  faultsTitle: (n: number) =>
    n === 1 ? "One entry needs another look" : `${count(n)} entries need another look`,
  faultsLead: "What was right before counts meanwhile. Nothing typed is lost.",
  wantedTitle: (n: number) =>
    n === 1 ? "One entry is still wanted" : `${count(n)} entries are still wanted`,
  showAll: (n: number) => `Show all ${count(n)}`,
  aboutEntry: "What was measured",
  aboutField: "Which of its figures",
  dryDates: "Dates to stay dry",
  dryDatesHint: "Single days, one a line, such as 20 March 2026",
  rowName: (what: string, number: number) => `${what} ${count(number)}`,
} as const;

/** What counts while a field is blank, wrong, or typed in another unit. */
export const standingWords = {
  standsIn: (value: string) => `${value.charAt(0).toUpperCase()}${value.slice(1)} stands in.`,
  counts: (value: string) => `Until this is right, ${value} counts.`,
  leftOut: "Until this is right, it counts as left out.",
  entryWaits: "It counts once this is right.",
  isSI: (value: string) => `That is ${value}.`,
  measured: (how: string, when: string) => `Measured ${when}: ${how}.`,
} as const;

const gone: Readonly<Record<string, (n: number, name: string) => string>> = {
  draws: (_, name) => `the use “${name}” went with it`,
  measures: (_, name) => `the measure “${name}” went with it`,
  readings: (n) => `${count(n)} ${n === 1 ? "reading" : "readings"} went with it`,
  found: (n) => `${count(n)} ${n === 1 ? "finding" : "findings"} about it went with it`,
};

interface Cleaned {
  sort: string;
  list: string;
  name: string | null;
}

/** What a removal changed elsewhere, as sentences. */
export function cleanedWords(cleaned: readonly Cleaned[]): string {
  const lines = new Set<string>();
  for (const { sort, list, name } of cleaned) {
    const named = name ?? "";
    if (sort === "mains-only") lines.add(`${named} is now watered from the mains alone`);
    else if (sort === "unwatered") lines.add(`${named}, which only it watered, is now not watered`);
    else if (sort === "source") lines.add(`say where ${named} gets its water now`);
    else if (sort === "field") lines.add(`${named} names it no more`);
    else {
      const n = cleaned.filter((one) => one.sort === "gone" && one.list === list).length;
      lines.add((gone[list] ?? (() => `${named} went with it`))(n, named));
    }
  }
  return [...lines].map((line) => `${line.charAt(0).toUpperCase()}${line.slice(1)}.`).join(" ");
}
