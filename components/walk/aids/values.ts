import { type Slot, slotAt } from "../../../src/survey/measuring/way.ts";
import { wayOf } from "../../../src/survey/measuring/ways.ts";
import { type Entry, readText, type TypedIn } from "../entry.ts";

/** Readings of one blank that can be read. */
export function readingsOf(slot: Slot, texts: readonly string[], typed: TypedIn): number[] {
  return texts
    .map((text, place) => readText(text, slotAt(slot, place), typed))
    .filter((read) => typeof read === "number");
}

/** The mean of what can be read of each blank of a term, lists whole; null where a blank is empty. */
export function valuesOf(entry: Entry, term: number, typed: TypedIn): (number | number[] | null)[] {
  const one = entry.terms[term];
  const slots = wayOf(one?.way ?? "")?.slots ?? [];
  return slots.map((slot, s) => {
    const read = readingsOf(slot, one?.texts[s] ?? [], typed);
    if (slot.list) return read;
    return read.length === 0 ? null : read.reduce((sum, value) => sum + value, 0) / read.length;
  });
}

/** The mean of a blank by its name; null where it is empty. */
export function valueNamed(entry: Entry, term: number, name: string, typed: TypedIn): number | null {
  const slots = wayOf(entry.terms[term]?.way ?? "")?.slots ?? [];
  const value = valuesOf(entry, term, typed)[slots.findIndex((slot) => slot.name === name)];
  return typeof value === "number" ? value : null;
}
