import type { Figure } from "./figure.ts";
import type { Note } from "./note.ts";

/** The parts of a walk, in its order. */
export const walkParts = ["areas", "thirst", "cover", "soil", "shade", "water", "tanks"] as const;
export type WalkPart = (typeof walkParts)[number];

export type Instrument =
  | "tape"
  | "paces"
  | "ruler"
  | "probe"
  | "stick"
  | "jug"
  | "cylinder"
  | "stopwatch"
  | "clock"
  | "chart"
  | "compass"
  | "fists"
  | "tilt"
  | "drip-count";

/** What a reading is written in. */
export type SlotUnit =
  | "m"
  | "mm"
  | "m²"
  | "L"
  | "mL"
  | "s"
  | "min"
  | "°"
  | "%"
  | "L/min"
  | "share"
  | "count"
  | "px"
  | "code";

/** One blank on a field sheet and on a screen: what is read, in which unit, with what. */
export interface Slot {
  name: string;
  unit: SlotUnit;
  /** What it is read with; left out where the reading is a count or is taken as it is. */
  by?: Instrument;
  /** Different readings in a row, such as offsets: not repeats of one thing. */
  list?: true;
  /** Readings of the list that belong together, such as x and y. */
  together?: number;
  /** Units of readings that belong together, by their place, where they are not one. */
  each?: readonly SlotUnit[];
  /** May be below 0. */
  signed?: true;
}

/** The blank as it stands at one place of a row of readings that belong together. */
export function slotAt(slot: Slot, place: number): Slot {
  const unit = slot.each?.[place % slot.each.length];
  return unit === undefined ? slot : { ...slot, unit };
}

/** Readings as a way sees them: each slot's, by name. */
export interface Read {
  /** Mean of the repeats, with its standard error. */
  of(slot: string): Figure;
  /** A list's readings, each with the error of one reading. */
  each(slot: string): Figure[];
  /** As read. */
  raw(slot: string): readonly number[];
}

/** What readings come to. Keys are ends of paths in the survey: `area_m2`, `soil.sand_pct`. */
export interface Worked {
  figures: Readonly<Record<string, Figure>>;
  /** Words of the survey's lists, such as a texture. */
  words?: Readonly<Record<string, string>>;
  /** Parts of the survey that are more than a number, such as obstructions. */
  values?: Readonly<Record<string, unknown>>;
  notes: readonly Note[];
}

/** Readings that no such thing can have. */
export interface Impossible {
  impossible: Note;
}

export type Outcome = Worked | Impossible;

/** A way of measuring something: the blanks to fill, and what they come to. */
export interface Way {
  code: string;
  part: WalkPart;
  slots: readonly Slot[];
  work(read: Read): Outcome;
}

export function worked(figures: Worked["figures"], notes: readonly Note[] = []): Worked {
  return { figures, notes };
}

export function impossible(code: string, facts: Note["facts"] = {}): Impossible {
  return { impossible: { code, facts } };
}
