import type { HolidayBed } from "../engine/rounds/holiday.ts";
import type { PackingHelp } from "../engine/rounds/packing-day.ts";
import type { OrderReason, RationedWeek } from "../engine/rounds/ration.ts";
import type { LeaveReason, WeekBed, WeekWatering } from "../engine/rounds/week-facts.ts";
import { formatIso, fromDay } from "../engine/weather/dates.ts";
import { clockTime } from "./local-time.ts";
import { plannedDone } from "./planned-done.ts";
import { namesOf, type RoundsNames } from "./rounds.ts";
import type { RoundsWorked } from "./rounds-work.ts";
import { litresOf } from "./week-ask.ts";
import type { WeekDay } from "./week-days.ts";
import type { RoundsWeek } from "./week-schema.ts";
import type { WeekHoliday, WeekTank, WeekWorked } from "./week-work.ts";

/** Facts of a bed's change since last week and last month. */
export interface ChangeFacts {
  id: string;
  litres: number;
  lastWeek_L: number | null;
  month: number;
  monthNow_L: number;
  monthBefore_L: number;
}

/** Turns the week's codes and facts into sentences; the words are not the report's. */
export interface WeekWords {
  water(bed: WeekBed, watering: WeekWatering): string;
  leave(reason: LeaveReason, bed: WeekBed, names: RoundsNames): string;
  order(reason: OrderReason): string;
  changed(facts: ChangeFacts): string;
  tank(tank: Omit<WeekTank, "rationed">, rationed: RationedWeek | null, name: string): string;
  /** @param place of the absence among those ahead */
  holiday(bed: HolidayBed, name: string, place: number): string;
  help(help: PackingHelp): string;
}

/** The week's part of the rounds document. */
export function weekDocument(worked: RoundsWorked, week: WeekWorked, words: WeekWords): RoundsWeek {
  const { ask, facts } = week;
  const tankNames = new Map(worked.survey.tanks.map(({ id, name }) => [id, name]));
  return {
    from: formatIso(ask.firstDay),
    to: formatIso(ask.firstDay + 6),
    lastRound: ask.lastRound,
    heatFactor: facts.heat,
    hotSpell: ask.hotSpell ?? null,
    order: week.order.map(({ id, reason }) => ({ id, code: reason, sentence: words.order(reason) })),
    beds: week.beds.map((bed) => bedRow(worked, week, bed, words)),
    tanks: week.tanks.map((tank) => tankRow(tank, words, tankNames.get(tank.id) ?? tank.id)),
    days: week.days.map((day) => dayRow(day, words)),
    holidays: week.holidays.map((holiday, place) => holidayRow(holiday, place, words, namesOf(worked))),
    done: plannedDone(worked, ask.log),
  };
}

const tankShort: LeaveReason = { code: "tank-short" };

function bedRow(
  worked: RoundsWorked,
  week: WeekWorked,
  bed: WeekBed,
  words: WeekWords,
): RoundsWeek["beds"][number] {
  const change = changeOf(worked, week, bed);
  const leave = bed.leave ?? (bed.waterings.length === 0 ? tankShort : null);
  return {
    id: bed.id,
    young: bed.isYoung,
    missing_mm: bed.depletion_mm,
    holds_mm: bed.available_mm,
    mayLose_mm: bed.trigger_mm,
    waterings: bed.waterings.map((watering) => {
      const { day, minutes, cycles, soak_min, litres, net_mm, reason } = watering;
      return {
        date: formatIso(day),
        minutes,
        cycles,
        soak_min,
        litres,
        net_mm,
        runs: runsOf(week.days, day, bed.id),
        code: reason.code,
        sentence: words.water(bed, watering),
      };
    }),
    leave: leave && { code: leave.code, sentence: words.leave(leave, bed, namesOf(worked)) },
    short_L: week.short_L.get(bed.id) ?? 0,
    stressDays: bed.stressDays,
    litres: change.litres,
    lastWeek_L: change.lastWeek_L,
    changed: words.changed(change),
  };
}

function changeOf({ need, table }: RoundsWorked, { ask }: WeekWorked, bed: WeekBed): ChangeFacts {
  const own = need.beds.find(({ rounds }) => rounds.id === bed.id)!;
  const months = table.beds.find(({ id }) => id === bed.id)!.middle;
  const month = fromDay(ask.firstDay).month - 1;
  const from = formatIso(ask.firstDay - 7);
  const logged = ask.log.filter(({ kind, id }) => kind === "watering" && id === bed.id);
  const lastWeek = logged.filter(({ date }) => date >= from && date < formatIso(ask.firstDay));
  return {
    id: bed.id,
    litres: bed.waterings.reduce((sum, { litres }) => sum + litres, 0),
    lastWeek_L: lastWeek.length > 0 ? lastWeek.reduce((sum, entry) => sum + litresOf(entry, own), 0) : null,
    month,
    monthNow_L: months[month]!.month_L,
    monthBefore_L: months[(month + 11) % 12]!.month_L,
  };
}

function runsOf(days: readonly WeekDay[], day: number, id: string): { from: string; to: string }[] {
  const packed = days.find((one) => one.day === day)?.packed;
  if (!packed) return [];
  return packed.packing.runs
    .filter(({ job }) => packed.jobs[job]!.id === id)
    .sort((a, b) => a.run - b.run)
    .map(({ from_min, to_min }) => ({ from: clockTime(from_min), to: clockTime(to_min) }));
}

function tankRow(tank: WeekTank, words: WeekWords, name: string): RoundsWeek["tanks"][number] {
  const { rationed, id, level_L, usable_L, draws_L, inflow_L } = tank;
  return {
    id,
    level_L,
    usable_L,
    draws_L,
    inflow_L,
    daysLeft: tank.daysLeft?.days ?? null,
    rations: rationed ? [...rationed.rows] : [],
    mainsToKeepAll_L: rationed?.mainsToKeepAll_L ?? 0,
    sentence: words.tank(tank, rationed, name),
  };
}

function dayRow({ day, sun, packed }: WeekDay, words: WeekWords): RoundsWeek["days"][number] {
  const clock = (minutes: number | null) => (minutes === null ? null : clockTime(minutes));
  const { cost, runs } = packed.packing;
  const isEmpty = runs.length === 0;
  return {
    date: formatIso(day),
    dawn: clock(sun.dawn_min),
    sunrise: clock(sun.sunrise_min),
    sunset: clock(sun.sunset_min),
    dusk: clock(sun.dusk_min),
    finish: isEmpty ? null : clockTime(cost.finish_min),
    hoseMoves: cost.hoseMoves,
    walk_m: cost.walk_m,
    proven: packed.proven,
    couldFinish: isEmpty ? null : clockTime(packed.bound_min),
    left: [...packed.left],
    help: packed.help && words.help(packed.help),
  };
}

function holidayRow(
  { name, fromDay: first, toDay, beds }: WeekHoliday,
  place: number,
  words: WeekWords,
  names: RoundsNames,
): RoundsWeek["holidays"][number] {
  return {
    name,
    from: formatIso(first),
    to: formatIso(toDay),
    firstDayBack: formatIso(toDay + 1),
    beds: beds.map((bed) => ({
      id: bed.id,
      soakOn: bed.soakDay === null ? null : formatIso(bed.soakDay),
      minutes: bed.soak.minutes,
      litres: bed.soak.litres,
      lasts_days: bed.lasts_days,
      visitBy: bed.visitByDay === null ? null : formatIso(bed.visitByDay),
      sentence: words.holiday(bed, names.bed(bed.id), place),
    })),
  };
}
