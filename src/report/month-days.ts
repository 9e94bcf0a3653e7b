import { proposedHours } from "../engine/rounds/cool-hours.ts";
import type { Job } from "../engine/rounds/packing.ts";
import { packMany } from "../engine/rounds/packing-many.ts";
import { fallsOn } from "../engine/rounds/pattern.ts";
import { orderOf } from "../engine/rounds/ration.ts";
import { type ClosedBy, openHours } from "../engine/rounds/rules.ts";
import { elapsed_min } from "../engine/rounds/run-time.ts";
import type { BedMonth } from "../engine/rounds/table.ts";
import { dayNumber, daysInMonth, weekday } from "../engine/weather/dates.ts";
import type { RoundsWorked } from "./rounds-work.ts";
import { sunMinutes } from "./sun-minutes.ts";
import { flowLimits, jobOf } from "./week-days.ts";

/** A bed's turn on a date of the month. */
export interface MonthTurn {
  id: string;
  row: BedMonth;
  /** First minute to last, soaks included; null where the day is too short for all. */
  from_min: number | null;
  to_min: number | null;
}

/** A date of a month with its turns, and what the table has on it that the rules of that date forbid. */
export interface MonthDay {
  day: number;
  turns: readonly MonthTurn[];
  closed: readonly { id: string; closedBy: readonly ClosedBy[] }[];
}

/**
 * The dates of one calendar month by the month table: rules and absences of those very dates kept, times packed into
 * the cool hours.
 * @param month 1–12
 */
export function monthDays(worked: RoundsWorked, year: number, month: number): MonthDay[] {
  const { need } = worked;
  const first = dayNumber(year, month, 1);
  const levels = new Map(need.ready.grounds.tanks.map(({ id, level_L }) => [id, level_L]));
  const limits = flowLimits(worked, levels);
  const order = orderOf(need.site.beds, first).map(({ id }) => id);
  return Array.from({ length: daysInMonth(year, month) }, (_, k): MonthDay => {
    const day = first + k;
    const due = worked.table.beds
      .filter(({ middle }) => fallsOn(middle[month - 1]!.pattern, weekday(day), k + 1))
      .map(({ id, middle }) => ({ id, row: middle[month - 1]!, ...hoursOf(worked, id, day) }));
    const open = due
      .filter(({ stretches }) => stretches.length > 0)
      .sort((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
    const sun = sunMinutes(day, worked.survey.site);
    const jobs = open.map(({ id, row, stretches }): Job => {
      const job = jobOf(worked, id, { ...row, stretches }, limits);
      const isPreferred = !job.byHand || need.site.hours.length === 0;
      return isPreferred ? { ...job, stretches: proposedHours(stretches, sun, elapsed_min(row)) } : job;
    });
    const wide = open.map(({ stretches }, at): Job => ({ ...jobs[at]!, stretches }));
    const packing = packMany(jobs, limits) ?? packMany(wide, limits);
    return {
      day,
      turns: open.map(({ id, row }, at) => {
        const runs = packing?.runs.filter(({ job }) => job === at) ?? [];
        return {
          id,
          row,
          from_min: runs.length > 0 ? Math.min(...runs.map(({ from_min }) => from_min)) : null,
          to_min: runs.length > 0 ? Math.max(...runs.map(({ to_min }) => to_min)) : null,
        };
      }),
      closed: due
        .filter(({ stretches }) => stretches.length === 0)
        .map(({ id, closedBy }) => ({ id, closedBy })),
    };
  });
}

function hoursOf({ need }: RoundsWorked, id: string, day: number) {
  const { ready, rounds } = need.beds.find((bed) => bed.rounds.id === id)!;
  return openHours(need.site, need.ready.grounds.absences, rounds, ready.grown.bed, day);
}
