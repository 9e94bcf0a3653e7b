import { runBed } from "./bed-run.ts";
import { frameOf } from "./frame.ts";
import type { Grounds } from "./grounds.ts";
import type { BedOutcome, MainsYear, Outcome, TankOutcome } from "./outcome.ts";
import { prepareGrounds, type ReadyBed, type ReadyGrounds } from "./prepare.ts";
import { type BedRun, type NeedRun, runAsToday, runToNeed, type SiteRun } from "./site-run.ts";
import type { TankRun } from "./tank-run.ts";
import { grossFromNet_L } from "./watering.ts";
import type { Calendar, WeatherSeries } from "./weather/series.ts";
import { sumOver, wholeYears } from "./years.ts";

/** The runs behind an answer, kept for charts, tables and workings. */
export interface Runs {
  ready: ReadyGrounds;
  /** The grounds with the measures chosen; null where there are none. */
  planned: ReadyGrounds | null;
  need: NeedRun;
  today: SiteRun;
  /** To need with the measures chosen; the same as `need` where there are none. */
  plan: NeedRun;
  outcome: Outcome;
}

/** What a run writes down beside its totals. */
export interface Keep {
  /** Every bed's days, for the day-by-day table. */
  days?: boolean;
  /** Who got how much of each tank's water. */
  shares?: boolean;
}

/**
 * The whole answer: what the beds need, what roofs and tanks bring, and mains water today, to need and as planned.
 * @param planned the grounds with the measures chosen; null where there are none
 * @throws ShadeNeedsSky where a shaded bed's record has neither temperatures nor sun
 */
export function estimateRuns(
  grounds: Grounds,
  weather: WeatherSeries,
  keep: Keep = {},
  planned: Grounds | null = null,
): Runs {
  const frame = frameOf(grounds.absences, weather);
  const ready = prepareGrounds(grounds, weather, frame);
  return runReady(ready, keep, planned && prepareGrounds(planned, weather, frame));
}

/** The same for grounds made ready before. */
export function runReady(
  ready: ReadyGrounds,
  { days = false, shares = false }: Keep = {},
  planned: ReadyGrounds | null = null,
): Runs {
  const need = runToNeed(ready, days, shares);
  const today = runAsToday(ready, need, shares);
  const plan = planned ? runToNeed(planned, false) : need;
  return { ready, planned, need, today, plan, outcome: outcomeOf(ready, need, today, plan) };
}

/** Gathers runs into what the report, the charts and the command line show. */
function outcomeOf(ready: ReadyGrounds, need: NeedRun, today: SiteRun, plan: SiteRun): Outcome {
  const { weather } = ready;
  const fromTank = fromTankByMonth_L(ready, need);
  return {
    et0Method: weather.et0Method,
    days: weather.calendar.days,
    beds: need.beds.map((run) => bedOutcome(run, weather.calendar, fromTank)),
    tanks: ready.tanks.map(({ group }, k) => tankOutcome(group.id, need.tanks[k]!)),
    mains: {
      today_L: total(today.mains_L),
      need_L: total(need.mains_L),
      plan_L: total(plan.mains_L),
      byYear: mainsByYear(weather.calendar, today, need, plan),
      todayUnknown: ready.beds.filter(countsAsUnknown).map(({ grown }) => grown.bed.id),
    },
  };
}

/** Beds that a tank gives water, with what it gives by calendar month; null where it was not kept. */
function fromTankByMonth_L(ready: ReadyGrounds, { shares }: SiteRun): Map<ReadyBed, Float64Array> | null {
  if (!shares) return null;
  return new Map(
    ready.tanks.flatMap(({ beds }, t) =>
      beds.map((bed, k) => [bed, byMonth(shares[t]!.beds_L[k]!, ready.weather.calendar)] as const),
    ),
  );
}

function bedOutcome(
  { ready, need, needByDay_L, supplied }: BedRun,
  calendar: Calendar,
  fromTank: Map<ReadyBed, Float64Array> | null,
): BedOutcome {
  const { grown, establishing, open, habit_L } = ready;
  const { id, area_m2, watering } = grown.bed;
  const gross = (net_mm: number) => grossFromNet_L(net_mm, area_m2, watering.efficiency);
  return {
    id,
    need_mm: need.net_mm,
    gross_L: gross(need.net_mm),
    grossByMonth_L: need.netByMonth_mm.map(gross),
    fromTankByMonth_L: fromTank && (fromTank.get(ready) ?? new Float64Array(12)),
    grossByDay_L: needByDay_L,
    habit_L: habit_L && total(habit_L),
    habitByMonth_L: habit_L && byMonth(habit_L, calendar),
    supplied_L: gross(supplied.net_mm),
    rainUsed_mm: supplied.rain_mm - supplied.drainage_mm,
    drainage_mm: supplied.drainage_mm,
    stressDays: supplied.stressDays,
    establishing_L: establishing && gross(runBed(establishing, open).net_mm),
  };
}

function tankOutcome(id: string, { series, newDraw_L, drawDays, shortDays }: TankRun): TankOutcome {
  return {
    id,
    inflow_L: total(series.inflow_L),
    yield_L: total(series.yield_L),
    spill_L: total(series.spill_L),
    topUp_L: total(series.topUp_L),
    draw_L: newDraw_L,
    drawDays,
    shortDays,
    levelByDay_L: series.level_L,
  };
}

function mainsByYear(calendar: Calendar, today: SiteRun, need: SiteRun, plan: SiteRun): MainsYear[] {
  return wholeYears(calendar).map((span) => ({
    year: span.year,
    today_L: sumOver(today.mains_L, span),
    need_L: sumOver(need.mains_L, span),
    plan_L: sumOver(plan.mains_L, span),
  }));
}

/** Whether a bed's unknown habit leaves today's mains water unknown: not where it is never mains water's or a tank's. */
function countsAsUnknown({ grown: { bed }, habit_L }: ReadyGrounds["beds"][number]): boolean {
  return habit_L === null && bed.watering.supply !== "none" && bed.watering.supply !== "other";
}

function total(values: Float64Array): number {
  return sumOver(values, { from: 0, to: values.length });
}

function byMonth(values: Float64Array, { month }: Calendar): Float64Array {
  const sums = new Float64Array(12);
  for (let i = 0; i < values.length; i++) sums[month[i]!]! += values[i]!;
  return sums;
}
