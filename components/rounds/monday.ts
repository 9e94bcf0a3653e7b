import type { LastRound } from "../../src/engine/rounds/week-facts.ts";
import { formatIso } from "../../src/engine/weather/dates.ts";
import type { LogEntry } from "../../src/survey/schema/log.ts";
import type { WeekSaid } from "./messages.ts";

/** Monday's five entries, in SI; null is a line left blank. */
export interface Monday {
  rain_mm: number | null;
  /** Days that the gauge gathered. */
  rainDays: number;
  lastRound: LastRound;
  /** Dips by tank. */
  levels: Readonly<Record<string, number>>;
  heat: "cooler" | "usual" | "hotter" | "typed";
  tmin_c: number | null;
  tmax_c: number | null;
  forecast: "none" | "rain" | "hot";
  /** Days from today. */
  forecastIn: number;
  forecast_mm: number | null;
  chance: number;
}

export const blankMonday: Monday = {
  rain_mm: null,
  rainDays: 7,
  lastRound: "unknown",
  levels: {},
  heat: "usual",
  tmin_c: null,
  tmax_c: null,
  forecast: "none",
  forecastIn: 2,
  forecast_mm: null,
  chance: 0.7,
};

/** The rain and the dips as lines of the log: a gauge read this morning holds the days up to yesterday. */
export function mondayLog({ rain_mm, rainDays, levels }: Monday, firstDay: number): LogEntry[] {
  return [
    ...(rain_mm === null
      ? []
      : [{ date: formatIso(firstDay - 1), kind: "rain" as const, rain_mm, days: rainDays }]),
    ...Object.entries(levels).map(([id, level_L]) => ({
      date: formatIso(firstDay),
      kind: "dip" as const,
      id,
      level_L,
    })),
  ];
}

/** What the week is worked out from: the entries beside the log. A gauge read again stands in for the log's. */
export function weekSaid(monday: Monday, firstDay: number, log: readonly LogEntry[]): WeekSaid {
  const own = mondayLog(monday, firstDay).filter(({ kind }) => kind === "rain");
  const from = formatIso(firstDay - monday.rainDays);
  const before = own.length === 0 ? log : log.filter(({ kind, date }) => kind !== "rain" || date < from);
  const { forecast_mm, heat, tmin_c, tmax_c } = monday;
  const typed = tmin_c !== null && tmax_c !== null && tmin_c <= tmax_c ? { tmin_c, tmax_c } : "usual";
  return {
    firstDay,
    log: [...before, ...own],
    levels: monday.levels,
    lastRound: monday.lastRound,
    heat: heat === "typed" ? typed : heat,
    forecast:
      monday.forecast === "rain" && forecast_mm !== null
        ? [{ day: firstDay + monday.forecastIn, rain_mm: forecast_mm, chance: monday.chance }]
        : [],
    hotSpell: monday.forecast === "hot" ? monday.chance : null,
  };
}
