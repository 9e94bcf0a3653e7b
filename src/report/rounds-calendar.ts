import type { Pattern } from "../engine/rounds/pattern.ts";
import { elapsed_min, type RunTime } from "../engine/rounds/run-time.ts";
import { dayNumber, fromDay } from "../engine/weather/dates.ts";
import { type MonthDay, monthDays } from "./month-days.ts";
import type { RoundsWorked } from "./rounds-work.ts";
import { momentOf, type WallTime, wallTimeOf, zoneChanges } from "./time-zone.ts";
import type { WeekWorked } from "./week-work.ts";

/** What the words of an entry are made of. */
export interface EntryFacts extends RunTime {
  bed: string;
  leaveAfterRain_mm: number | null;
}

export interface EntryWords {
  calendar(place: string): string;
  summary(facts: EntryFacts): string;
  description(facts: EntryFacts): string;
}

interface Slot {
  uid: string;
  day: number;
  from_min: number;
  elapsed_min: number;
  facts: EntryFacts;
  isCancelled: boolean;
}

interface Reading {
  year: number;
  month: number;
  day: number;
  hour: number;
  minute: number;
}

/** Everything that a calendar file is written from; its form is that of the files' calendar. */
export interface RoundsCalendar {
  name: string;
  entries: {
    uid: string;
    start: Reading;
    end: Reading;
    summary: string;
    description: string;
    isCancelled: boolean;
  }[];
  sequence: number;
  stamp_ms: number;
  zone: {
    id: string;
    rules: { at: Reading; from_min: number; to_min: number; isDaylight: boolean }[];
  } | null;
  alarm_min: number | null;
}

export interface CalendarAsk {
  /** When it is made: later files win over earlier ones. */
  now_ms: number;
  alarm_min: number | null;
}

/** A minute of 2020 from which files are counted. */
const firstCount_ms = 1_577_836_800_000;
const minute_ms = 60_000;

/**
 * The entries of one month. Each bed's first, second… watering of any month has the same uid, so that the file of a
 * new month moves the old month's entries and cancels those that it has no more use for.
 * @param month 1–12
 */
export function monthCalendar(
  worked: RoundsWorked,
  year: number,
  month: number,
  words: EntryWords,
  ask: CalendarAsk,
): RoundsCalendar {
  const days = monthDays(worked, year, month);
  const first = dayNumber(year, month, 1);
  const slots = worked.table.beds.flatMap(({ id, middle }): Slot[] => {
    const most = Math.max(...middle.map(({ pattern }) => mostTimes(pattern)));
    return slotsOf(worked, id, "month", most, first, turnsOf(days, id));
  });
  return calendarOf(worked, slots, [year, year], words, ask);
}

/** The entries of one week's round, which the next week's moves likewise. */
export function weekCalendar(
  worked: RoundsWorked,
  week: WeekWorked,
  words: EntryWords,
  ask: CalendarAsk,
): RoundsCalendar {
  const { firstDay } = week.ask;
  const slots = week.beds.flatMap(({ id, waterings }): Slot[] => {
    const turns = waterings.flatMap((watering): Turn[] => {
      const packed = week.days.find(({ day }) => day === watering.day)!.packed;
      const runs = packed.packing.runs.filter(({ job }) => packed.jobs[job]!.id === id);
      return runs.length === 0
        ? []
        : [
            {
              day: watering.day,
              from_min: Math.min(...runs.map(({ from_min }) => from_min)),
              run: watering,
              leaveAfterRain_mm: null,
            },
          ];
    });
    return slotsOf(worked, id, "week", 7, firstDay, turns);
  });
  const years = [fromDay(firstDay).year, fromDay(firstDay + 6).year] as const;
  return calendarOf(worked, slots, years, words, ask);
}

interface Turn {
  day: number;
  from_min: number;
  run: RunTime;
  leaveAfterRain_mm: number | null;
}

function turnsOf(days: readonly MonthDay[], id: string): Turn[] {
  return days.flatMap(({ day, turns }) =>
    turns.flatMap(({ id: bed, row, from_min }) =>
      bed === id && from_min !== null
        ? [{ day, from_min, run: row, leaveAfterRain_mm: row.leaveAfterRain_mm }]
        : [],
    ),
  );
}

/** Waterings that a pattern can have in a month at most. */
function mostTimes(pattern: Pattern): number {
  switch (pattern.kind) {
    case "none":
      return 0;
    case "week":
      return Math.min(31, 5 * pattern.weekdays.filter(Boolean).length);
    case "turns":
      return pattern.turns.length;
    case "dates":
      return pattern.dates.length;
  }
}

function slotsOf(
  worked: RoundsWorked,
  id: string,
  family: string,
  most: number,
  firstDay: number,
  turns: readonly Turn[],
): Slot[] {
  const nothing: RunTime = { minutes: 0, litres: 0, net_mm: 0, cycles: 0, soak_min: 0 };
  return Array.from({ length: Math.max(most, turns.length) }, (_, k): Slot => {
    const turn = turns[k];
    const run = turn?.run ?? nothing;
    return {
      uid: `${family}-${id}-${k + 1}@${placeKey(worked)}.rounds`,
      day: turn?.day ?? firstDay,
      from_min: turn?.from_min ?? 0,
      elapsed_min: turn ? elapsed_min(turn.run) : 1,
      facts: { ...run, bed: id, leaveAfterRain_mm: turn?.leaveAfterRain_mm ?? null },
      isCancelled: turn === undefined,
    };
  });
}

/** The place in a few letters, the same for as long as it stays where it is. */
function placeKey({ survey: { site } }: RoundsWorked): string {
  const text = `${site.latitude.toFixed(4)} ${site.longitude.toFixed(4)}`;
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return hash.toString(36);
}

function calendarOf(
  { survey }: RoundsWorked,
  slots: readonly Slot[],
  [fromYear, toYear]: readonly [number, number],
  words: EntryWords,
  { now_ms, alarm_min }: CalendarAsk,
): RoundsCalendar {
  const { site } = survey;
  const names = new Map(survey.beds.map(({ id, name }) => [id, name]));
  return {
    name: words.calendar(site.name),
    entries: slots.map(({ uid, day, from_min, elapsed_min: length, facts, isCancelled }) => {
      const start_ms = momentOf({ day, minutes: from_min }, site);
      const named = { ...facts, bed: names.get(facts.bed) ?? facts.bed };
      return {
        uid,
        start: readingOf(wallTimeOf(start_ms, site)),
        end: readingOf(wallTimeOf(start_ms + length * minute_ms, site)),
        summary: words.summary(named),
        description: words.description(named),
        isCancelled,
      };
    }),
    sequence: Math.max(0, Math.floor((now_ms - firstCount_ms) / minute_ms)),
    stamp_ms: now_ms,
    zone:
      site.timeZone === undefined
        ? null
        : {
            id: site.timeZone,
            rules: zoneChanges(site, fromYear, toYear).map(({ at, ...rule }) => ({
              at: readingOf(at),
              ...rule,
            })),
          },
    alarm_min,
  };
}

function readingOf({ day, minutes }: WallTime): Reading {
  return { ...fromDay(day), hour: Math.floor(minutes / 60), minute: minutes % 60 };
}
