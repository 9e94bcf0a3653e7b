import { type How, writeHow } from "../../src/survey/measuring/how.ts";
import { paceSlots } from "../../src/survey/measuring/pacing.ts";
import { type Outcome, type Slot, slotAt } from "../../src/survey/measuring/way.ts";
import { wayOf } from "../../src/survey/measuring/ways.ts";
import { workOut } from "../../src/survey/measuring/work-out.ts";
import type { UnitSystem } from "../../src/units.ts";
import { readQuantity } from "../fields/writing/quantity.ts";

/** One shape, or one way of measuring, with what was typed: by blank, by reading. */
export interface TermEntry {
  sign: 1 | -1;
  way: string;
  texts: string[][];
}

/** What a group has typed at a stop; kept as typed, so that nothing is lost. */
export interface Entry {
  /** The pace's calibration, where lengths are paced. */
  paced: string[][] | null;
  terms: TermEntry[];
}

export interface TypedIn {
  system: UnitSystem;
  locale?: string;
}

/** A blank that holds something that is no reading. */
export interface WrongText {
  /** −1 for the pace. */
  term: number;
  slot: number;
  place: number;
  why: "unreadable" | "unit";
}

export interface EntryRead {
  how: string;
  readings: number[];
  wrong: WrongText[];
  /** Blanks that are still empty, in order. */
  missing: { term: number; slot: number }[];
  /** What it comes to; null until every blank is filled. */
  outcome: Outcome | null;
}

export function termFor(way: string, sign: 1 | -1 = 1): TermEntry {
  return { sign, way, texts: (wayOf(way)?.slots ?? []).map(() => [""]) };
}

export const entryFor = (way: string): Entry => ({ paced: null, terms: [termFor(way)] });

/** Unit that a blank is typed in, as fields know it. */
export function fieldUnit({ unit }: Slot): { unit: string; isShare: boolean } {
  const plain = unit === "count" || unit === "code" || unit === "px" || unit === "mL" || unit === "°";
  return { unit: unit === "share" ? "share" : plain ? "" : unit, isShare: unit === "share" };
}

/** A reading as typed: a number with or without a unit, minutes and seconds as 1:05. Null where it is blank. */
export function readText(
  text: string,
  slot: Slot,
  typed: TypedIn,
): number | { wrong: "unreadable" | "unit" } | null {
  if (text.trim() === "") return null;
  const clock = /^\s*(\d{1,3}):(\d{1,2}(?:[.,]\d+)?)\s*$/.exec(text);
  if (clock && slot.unit === "s") return Number(clock[1]) * 60 + Number(clock[2]!.replace(",", "."));
  // answers of a key by their letters, as they stand on the sheet
  if (slot.unit === "code" && slot.list && /^\s*[a-z]\s*$/i.test(text))
    return text.trim().toLowerCase().charCodeAt(0) - "a".charCodeAt(0);
  const bearing = slot.name.startsWith("from-to") && slot.list ? bearingOf(text) : null;
  if (bearing !== null) return bearing;
  const read = readQuantity(text, { ...fieldUnit(slot), ...typed });
  if ("wrong" in read) return { wrong: read.wrong };
  return typeof read.value === "number" ? read.value : null;
}

const winds = [
  "n",
  "nne",
  "ne",
  "ene",
  "e",
  "ese",
  "se",
  "sse",
  "s",
  "ssw",
  "sw",
  "wsw",
  "w",
  "wnw",
  "nw",
  "nnw",
];

/** A bearing by its letters, such as SE: degrees clockwise from north; null where it is none. */
export function bearingOf(text: string): number | null {
  const at = winds.indexOf(text.trim().toLowerCase());
  return at === -1 ? null : at * 22.5;
}

/** Readings of an entry in the order that a finding keeps them, and what they come to. */
export function readEntry({ paced, terms }: Entry, typed: TypedIn): EntryRead {
  const wrong: WrongText[] = [];
  const missing: EntryRead["missing"] = [];
  const readings: number[] = [];
  const take = (slots: readonly Slot[], texts: readonly string[][], term: number): number[] =>
    slots.map((slot, s) => {
      const before = readings.length;
      (texts[s] ?? []).forEach((text, place) => {
        const read = readText(text, slotAt(slot, place), typed);
        if (typeof read === "number") readings.push(read);
        else if (read !== null) wrong.push({ term, slot: s, place, why: read.wrong });
      });
      const count = readings.length - before;
      if (count === 0 || count % (slot.together ?? 1) !== 0) missing.push({ term, slot: s });
      return count;
    });
  if (paced) take(paceSlots, paced, -1);
  const how: How = {
    paced: paced !== null,
    terms: terms.map(({ sign, way, texts }, i) => {
      const slots = wayOf(way)?.slots ?? [];
      const counts = take(slots, texts, i);
      const isLast = i === terms.length - 1;
      const plainly = slots.every(({ list }, s) => (list ? isLast : counts[s] === 1));
      return { sign, way, counts: plainly ? null : counts };
    }),
  };
  const code = writeHow(how);
  const isWhole = wrong.length === 0 && missing.length === 0;
  return { how: code, readings, wrong, missing, outcome: isWhole ? workOut(code, readings) : null };
}

/** The entry with a reading changed; an entry stays as it was given. */
export function withText(entry: Entry, term: number, slot: number, place: number, text: string): Entry {
  const inRow = (rows: string[][]) =>
    rows.map((row, s) => (s === slot ? [...row.slice(0, place), text, ...row.slice(place + 1)] : row));
  if (term === -1) return { ...entry, paced: inRow(entry.paced ?? [[""], [""]]) };
  return {
    ...entry,
    terms: entry.terms.map((one, t) => (t === term ? { ...one, texts: inRow(one.texts) } : one)),
  };
}

/** The entry with all texts of one blank of a term. */
export function withTexts(entry: Entry, term: number, slot: number, texts: string[]): Entry {
  return {
    ...entry,
    terms: entry.terms.map((one, t) =>
      t === term ? { ...one, texts: one.texts.map((row, s) => (s === slot ? texts : row)) } : one,
    ),
  };
}

/** Everything typed, in one line, as a finding keeps it. */
export function asTyped({ paced, terms }: Entry): string {
  const rows = [...(paced ?? []), ...terms.flatMap(({ texts }) => texts)];
  const text = rows.map((row) => row.filter((one) => one.trim() !== "").join("; ")).join(" | ");
  return text.slice(0, 2_000);
}
