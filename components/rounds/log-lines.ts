import { formatIso } from "../../src/engine/weather/dates.ts";
import type { RoundsWeek } from "../../src/report/week-schema.ts";
import type { LogEntry, LogKind } from "../../src/survey/schema/log.ts";

/** A bed planned for a day, and what the log has of it. */
export interface PlannedBed {
  id: string;
  minutes: number;
  /** Minutes written down for that day; null where nothing is. */
  written: number | null;
}

/** What the week's round has on a day, beside the log. */
export function plannedOn({ beds }: RoundsWeek, log: readonly LogEntry[], day: number): PlannedBed[] {
  const date = formatIso(day);
  return beds.flatMap(({ id, waterings }): PlannedBed[] => {
    const planned = waterings.find((watering) => watering.date === date);
    const lines = log.filter((entry) => entry.kind === "watering" && entry.id === id && entry.date === date);
    if (!planned) return [];
    const written = lines.length === 0 ? null : lines.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0);
    return [{ id, minutes: planned.minutes, written }];
  });
}

/** What somebody writes down beside the plan; numbers as read, null where a line is blank or no number. */
export interface OtherLine {
  kind: LogKind;
  bed: string;
  tank: string;
  minutes: number | null;
  rain_mm: number | null;
  days: number | null;
  level_L: number | null;
}

/** The line of the log, or the name of the entry that it lacks. */
export function lineOf(
  { kind, bed, tank, minutes, rain_mm, days, level_L }: OtherLine,
  day: number,
): { entry: LogEntry } | { lacks: "minutes" | "rain" | "days" | "level" } {
  const date = formatIso(day);
  const isRight = (x: number | null, most: number): x is number => x !== null && x >= 0 && x <= most;
  switch (kind) {
    case "watering":
      return isRight(minutes, 1440) ? { entry: { date, kind, id: bed, minutes } } : { lacks: "minutes" };
    case "rain":
      if (!isRight(rain_mm, 2000)) return { lacks: "rain" };
      if (!isRight(days, 366) || days < 1) return { lacks: "days" };
      return { entry: { date, kind, rain_mm, days: Math.round(days) } };
    case "dip":
      return isRight(level_L, 10_000_000) ? { entry: { date, kind, id: tank, level_L } } : { lacks: "level" };
  }
}

/** The newest lines first; of one day those written last. */
export function newestFirst(log: readonly LogEntry[], most: number): LogEntry[] {
  return log
    .map((entry, k) => ({ entry, k }))
    .sort((a, b) => (a.entry.date === b.entry.date ? b.k - a.k : a.entry.date < b.entry.date ? 1 : -1))
    .slice(0, most)
    .map(({ entry }) => entry);
}
