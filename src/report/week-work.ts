import type { ReadyTank } from "../engine/prepare.ts";
import { minutesToDraw } from "../engine/rounds/gravity.ts";
import { type AwayDays, type HolidayBed, holidayBeds, nextTurn } from "../engine/rounds/holiday.ts";
import { orderOf, type Ranked, type RationedWeek, ration } from "../engine/rounds/ration.ts";
import { rationWaterings } from "../engine/rounds/ration-week.ts";
import { type DaysLeft, daysLeft, type TankWeek, weekOfTank } from "../engine/rounds/tank-low.ts";
import { weekRound } from "../engine/rounds/week.ts";
import type { WeekBed, WeekFacts, WeekRound } from "../engine/rounds/week-facts.ts";
import type { RoundsWorked } from "./rounds-work.ts";
import { gravityTapOf, levelsNow, type WeekAsk, weekFacts } from "./week-ask.ts";
import { type WeekDay, weekDays } from "./week-days.ts";

/** A tank in the week: what is in it, how long that lasts, and who gets what. */
export interface WeekTank {
  id: string;
  level_L: number | null;
  usable_L: number | null;
  draws_L: number;
  inflow_L: number;
  ofYears: TankWeek["ofYears"];
  daysLeft: DaysLeft | null;
  rationed: RationedWeek | null;
}

/** An absence that begins within the next weeks, and what the beds run by hand need for it. */
export interface WeekHoliday extends AwayDays {
  name: string;
  beds: readonly HolidayBed[];
}

export interface WeekWorked {
  ask: WeekAsk;
  facts: WeekFacts;
  round: WeekRound;
  order: readonly Ranked[];
  /** The round's beds, cut to what their tanks can give. */
  beds: readonly WeekBed[];
  /** Ids of beds whose waterings were cut, with the litres they lack. */
  short_L: ReadonlyMap<string, number>;
  tanks: readonly WeekTank[];
  days: readonly WeekDay[];
  holidays: readonly WeekHoliday[];
}

/** Weeks ahead in which an absence is spoken of. Ours. */
const holidayAhead_days = 28;

/** Works out the round of a week on a month table that was worked out before. */
export function workOutWeek(worked: RoundsWorked, ask: WeekAsk): WeekWorked {
  const { need, table } = worked;
  const levels = levelsNow(need, ask);
  const facts = weekFacts(need, ask, levels);
  const round = weekRound(need, new Map(table.beds.map(({ id, middle }) => [id, middle])), facts);
  const order = orderOf(need.site.beds, ask.firstDay);
  const tanks = need.ready.tanks
    .filter(({ group }) => group.inUse)
    .map((tank) => weekTank(worked, tank, ask, levels, round, order));
  const { beds, short_L } = cutBeds(worked, round, tanks);
  const timed = beds.map((bed) => withGravity(worked, bed, levels));
  return {
    ask,
    facts,
    round,
    order,
    beds: timed,
    short_L,
    tanks,
    days: weekDays(worked, ask.firstDay, timed, order, levels),
    holidays: holidaysAhead(worked, ask.firstDay),
  };
}

function weekTank(
  { need }: RoundsWorked,
  tank: ReadyTank,
  { firstDay }: WeekAsk,
  levels: ReadonlyMap<string, number | null>,
  round: WeekRound,
  order: readonly Ranked[],
): WeekTank {
  const { group } = tank;
  const known = group.members.map(({ id }) => levels.get(id) ?? null);
  const level_L = known.includes(null) ? null : known.reduce<number>((sum, level) => sum + (level ?? 0), 0);
  const { draws_L, inflow_L, ofYears } = weekOfTank(need, tank, firstDay);
  const usable_L = level_L === null ? null : Math.max(0, level_L - group.unusable_L);
  const served = new Map(tank.beds.map(({ grown: { bed } }) => [bed.id, bed.watering.supply]));
  const claims = order.flatMap(({ id }) => {
    const supply = served.get(id);
    const bed = round.beds.find((one) => one.id === id)!;
    const asks_L = bed.waterings.reduce((sum, { litres }) => sum + litres, 0);
    return supply && asks_L > 0 ? [{ id, asks_L, hasMains: supply === "tank-then-mains" }] : [];
  });
  return {
    id: group.id,
    level_L,
    usable_L,
    draws_L,
    inflow_L,
    ofYears,
    daysLeft: level_L === null ? null : daysLeft(need, tank, firstDay, level_L),
    rationed: usable_L === null ? null : ration(usable_L + inflow_L - draws_L, claims),
  };
}

/** Waterings of beds that only a tank serves, cut to what it gives them. */
function cutBeds(
  { need }: RoundsWorked,
  { beds }: WeekRound,
  tanks: readonly WeekTank[],
): { beds: WeekBed[]; short_L: Map<string, number> } {
  const short_L = new Map<string, number>();
  const rows = new Map(
    tanks.flatMap(({ rationed }) => (rationed?.rows ?? []).map((row) => [row.id, row] as const)),
  );
  const cut = beds.map((bed, k): WeekBed => {
    const row = rows.get(bed.id);
    if (!row || row.short_L <= 0) return bed;
    const { ready, rounds } = need.beds[k]!;
    const waterings = rationWaterings(ready.grown.bed, rounds, bed.waterings, row.fromTank_L);
    short_L.set(bed.id, row.short_L);
    return { ...bed, waterings };
  });
  return { beds: cut, short_L };
}

/** A gravity hose runs the longer, the lower its tank stands. */
function withGravity(
  { need }: RoundsWorked,
  bed: WeekBed,
  levels: ReadonlyMap<string, number | null>,
): WeekBed {
  const own = need.beds.find(({ rounds }) => rounds.id === bed.id)!;
  const tap = gravityTapOf(need, own);
  const level_L = tap && (levels.get(tap.tank) ?? null);
  if (!tap || level_L === null) return bed;
  const most = own.ready.grown.bed.watering.maxMinutes;
  const waterings = bed.waterings.map((watering) => {
    const minutes = minutesToDraw(tap, level_L, watering.litres);
    return Number.isFinite(minutes)
      ? { ...watering, minutes: Math.min(Math.max(watering.minutes, Math.round(minutes)), Math.floor(most)) }
      : watering;
  });
  return { ...bed, waterings };
}

function holidaysAhead({ survey, need }: RoundsWorked, firstDay: number): WeekHoliday[] {
  return (survey.site.absences ?? []).flatMap(({ name, from, to, carer }) => {
    const turn = carer === undefined ? nextTurn({ from, to }, firstDay) : null;
    if (!turn || turn.fromDay > firstDay + holidayAhead_days) return [];
    return [{ name, ...turn, beds: holidayBeds(need, turn) }];
  });
}
