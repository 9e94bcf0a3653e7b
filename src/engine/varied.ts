import type { Absence, Bed, Draw, Roof, Tank } from "./grounds.ts";

/** A set of measures: 1 for each one in it, by its place among those that may be chosen. */
export type MeasureSet = Uint8Array;

/** A part of the grounds that measures change; what it is in a set hangs on `changedBy` alone. */
export interface VariedPart<T> {
  /** Places of the measures that change it, rising. */
  changedBy: readonly number[];
  in(set: MeasureSet): T;
}

/** Tanks that stand or act together in some set, and everything that may send them water or ask them for it. */
export interface VariedTanks {
  changedBy: readonly number[];
  /** null: not there in the set. In the survey's order, those added last. */
  tanks: readonly VariedPart<Tank | null>[];
  roofs: readonly VariedPart<Roof>[];
  /** Places among the beds. */
  beds: readonly number[];
  /** null: not on a tank in the set. */
  draws: readonly VariedPart<Draw | null>[];
}

/** Grounds as they are in every set of the measures. */
export interface VariedGrounds {
  /** How many measures may be chosen. */
  measures: number;
  absences: readonly Absence[];
  beds: readonly VariedPart<Bed>[];
  tanks: readonly VariedTanks[];
  leaks_L_day: VariedPart<number>;
  /** Uses that a measure may move on to a tank: here while they are mains water, null once moved. */
  mainsDraws: readonly VariedPart<Draw | null>[];
}

/** Keeps what a part is in each set that it can tell apart. */
export function onceEach<T>(
  changedBy: readonly number[],
  work: (set: MeasureSet) => T,
): (set: MeasureSet) => T {
  const keyOf = changedBy.length <= 52 ? numberKey : textKey;
  const known = new Map<number | string, T>();
  return (set) => {
    const key = keyOf(changedBy, set);
    let found = known.get(key);
    if (found === undefined) {
      found = work(set);
      known.set(key, found);
    }
    return found;
  };
}

function numberKey(changedBy: readonly number[], set: MeasureSet): number {
  let key = 0;
  for (const place of changedBy) key = 2 * key + set[place]!;
  return key;
}

function textKey(changedBy: readonly number[], set: MeasureSet): string {
  return changedBy.map((place) => set[place]).join("");
}
