import type { Conflict } from "../engine/rounds/conflicts.ts";
import type { RoundsNames } from "../report/rounds.ts";
import type { WeekWords } from "../report/week.ts";
import type { UnitSystem } from "../units.ts";
import type { Sentence } from "./en/page.ts";
import { conflictSaid } from "./en/rounds.ts";
import { weekSentences } from "./en/rounds-week.ts";
import { textOf } from "./said.ts";

/** The week's sentences with figures that open, by what they are about. */
export type WeekSaidAloud = Readonly<Record<string, Sentence>>;

/** Names of the sentences. */
export const saidOf = {
  /** @param month 0–11 */
  conflict: (bed: string, month: number) => `conflict/${bed}/${month}`,
  water: (bed: string, day: number) => `water/${bed}/${day}`,
  leave: (bed: string) => `leave/${bed}`,
  changed: (bed: string) => `changed/${bed}`,
  tank: (tank: string) => `tank/${tank}`,
  holiday: (place: number, bed: string) => `holiday/${place}/${bed}`,
};

/** What the rules cost, with figures that open. */
export function conflictsAloud(conflicts: readonly Conflict[], names: RoundsNames): WeekSaidAloud {
  return Object.fromEntries(
    conflicts.map((conflict) => [
      saidOf.conflict(conflict.bed, conflict.month),
      conflictSaid(conflict, names),
    ]),
  );
}

/** Words of a week in a system of units; what is said is noted down with its figures. */
export function weekWordsIn(units: UnitSystem): WeekWords & { aloud: WeekSaidAloud } {
  const aloud: Record<string, Sentence> = {};
  const note = (name: string, sentence: Sentence) => {
    aloud[name] = sentence;
    return textOf(sentence);
  };
  const { water, leave, order, changed, tank, holiday, help } = weekSentences(units);
  return {
    aloud,
    water: (bed, watering) => note(saidOf.water(bed.id, watering.day), water(bed, watering)),
    leave: (reason, bed, names) => note(saidOf.leave(bed.id), leave(reason, bed, names)),
    order,
    changed: (change) => note(saidOf.changed(change.id), changed(change)),
    tank: (one, rationed, name) => note(saidOf.tank(one.id), tank(one, rationed, name)),
    holiday: (bed, name, place) => note(saidOf.holiday(place, bed.id), holiday(bed, name, place)),
    help,
  };
}
