import { blankDays } from "../bed-run.ts";
import { meanOfMonth, needByMonth } from "./month-need.ts";
import { isYearly } from "./open-record.ts";
import { speaksOf } from "./rules.ts";
import type { BedNeed, RoundsNeed } from "./table.ts";

/** A rule that stands against a bed's need: a word, or a restriction's id. */
export type Against = "allowed-days" | "must-be-dry" | "nobody-there" | { restriction: string };

/** A month in which the rules cost a bed stress; they are kept, and this is what gives. */
export interface Conflict {
  bed: string;
  month: number;
  /** Days with Ks below 1 that the rules bring, mean a year. */
  stressDays: number;
  /** Days of stress with the rules, and watered on any day. */
  bound: number;
  free: number;
  against: readonly Against[];
}

/** Less stress than this is not worth a sentence. Ours, days a year. */
const leastStress = 1;

/** Where restrictions, dry days and absences cost a bed stress, month by month, beside watering on any day. */
export function conflictsOf(need: RoundsNeed): Conflict[] {
  const { days } = need.ready.weather.calendar;
  const scratch = blankDays(days);
  const free = new Uint8Array(days).fill(1);
  const all = need.years.map((_, k) => k);
  return need.beds.flatMap((bed) => {
    const { grown } = bed.ready;
    const { open, need: kept } = bed.input;
    if (grown.bed.watering.supply === "none" || open.every((day) => day === 1)) return [];
    const unbound = needByMonth(grown, free, need.years, scratch);
    return Array.from({ length: 12 }, (_, month): Conflict => {
      const bound = meanOfMonth(kept.stressDays, all, month);
      const atLiberty = meanOfMonth(unbound.stressDays, all, month);
      const against = againstOf(need, bed, month);
      return { bed: grown.bed.id, month, stressDays: bound - atLiberty, bound, free: atLiberty, against };
    }).filter(({ stressDays, against }) => stressDays >= leastStress && against.length > 0);
  });
}

/** The rules that close any day of a month, or of the month before, to a bed. */
function againstOf(need: RoundsNeed, { ready, rounds }: BedNeed, month: number): Against[] {
  const { bed } = ready.grown;
  const { calendar } = need.ready.weather;
  const near = [month, (month + 11) % 12];
  const against: Against[] = [];
  if (bed.watering.allowedWeekdays.some((allowed) => !allowed)) against.push("allowed-days");
  if (rounds.dryWeekdays.some(Boolean)) against.push("must-be-dry");
  const absent = ready.open.some(
    (isOpen, i) =>
      !isOpen && near.includes(calendar.month[i]!) && bed.watering.allowedWeekdays[calendar.weekday[i]!],
  );
  const noHours = need.site.hours.length > 0 && bed.watering.byHand;
  if (absent || noHours) against.push("nobody-there");
  for (const ban of need.site.bans)
    if (isYearly(ban) && speaksOf(ban, rounds, bed) && monthsOf(ban).some((m) => near.includes(m)))
      against.push({ restriction: ban.id });
  return against;
}

/** Months, 0–11, that a yearly rule touches. */
function monthsOf({ from, to }: { from: string | null; to: string | null }): number[] {
  const first = from === null ? 0 : Number(from.slice(0, 2)) - 1;
  const last = to === null ? 11 : Number(to.slice(0, 2)) - 1;
  const length = ((last - first + 12) % 12) + 1;
  return Array.from({ length }, (_, k) => (first + k) % 12);
}
