import { fromDay, parseIso } from "../engine/weather/dates.ts";
import type { LogEntry } from "../survey/schema/log.ts";
import type { RoundsWorked } from "./rounds-work.ts";
import { litresOf } from "./week-ask.ts";

export interface PlannedDone {
  id: string;
  /** Year and month, as 2026-07. */
  month: string;
  planned_L: number;
  done_L: number;
}

/** Litres planned by the month table and done by the log, by bed, for each month that the log touches. */
export function plannedDone({ need, table }: RoundsWorked, log: readonly LogEntry[]): PlannedDone[] {
  const waterings = log.filter(({ kind }) => kind === "watering");
  const months = [...new Set(waterings.map(({ date }) => date.slice(0, 7)))].sort();
  return months.flatMap((month) =>
    need.beds.flatMap((bed, k): PlannedDone[] => {
      const { id } = bed.rounds;
      if (bed.ready.grown.bed.watering.supply === "none") return [];
      const mine = waterings.filter((entry) => entry.id === id && entry.date.startsWith(month));
      const row = table.beds[k]!.middle[fromDay(parseIso(`${month}-01`)!).month - 1]!;
      const done_L = mine.reduce((sum, entry) => sum + litresOf(entry, bed), 0);
      return [{ id, month, planned_L: row.month_L, done_L }];
    }),
  );
}
