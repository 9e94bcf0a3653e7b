import type { SiteRun } from "../engine/site-run.ts";
import type { Calendar } from "../engine/weather/series.ts";
import { perYear } from "../engine/years.ts";
import type { Survey } from "../survey/survey.ts";
import { type Caution, cautionsFor } from "./cautions.ts";
import type { GroundsReport } from "./schema.ts";
import {
  type AnswerView,
  type Asked,
  type BedView,
  isWatered,
  type MeasureView,
  type Standing,
  type TankView,
} from "./view.ts";
import type { WorkedOut } from "./work-out.ts";

/** A tenth of a year's need: what is closer is not called too little. */
const NEAR_SHARE = 0.1;

/** Days that a record has of each calendar month. */
export function daysByMonth({ month }: Calendar): number[] {
  const count = new Array<number>(12).fill(0);
  for (const m of month) count[m]! += 1;
  return count;
}

/** What a week of each month takes, from totals by month over a record; 0 in a month that it lacks. */
export function weekly(byMonth: ArrayLike<number>, days: readonly number[]): number[] {
  return days.map((count, m) => (count > 0 ? ((byMonth[m] ?? 0) / count) * 7 : 0));
}

/** Mean rain of a week by calendar month, over the days that the record has. */
function rainByMonth(calendar: Calendar, rain_mm: ArrayLike<number>): number[] {
  const sum = new Array<number>(12).fill(0);
  for (let i = 0; i < rain_mm.length; i++) sum[calendar.month[i]!]! += rain_mm[i]!;
  return weekly(sum, daysByMonth(calendar));
}

export function bedView(worked: WorkedOut, report: GroundsReport, index: number): BedView {
  const { survey, outcome, weather } = worked;
  const bed = survey.beds[index]!;
  const row = report.beds[index]!;
  const run = outcome.beds[index]!;
  const days = daysByMonth(weather.calendar);
  let short_L = 0;
  let beyond_L = 0;
  run.habitByMonth_L?.forEach((today, m) => {
    const difference_L = today - run.grossByMonth_L[m]!;
    if (difference_L > 0) beyond_L += difference_L;
    else short_L -= difference_L;
  });
  const widest = [...bed.plantings].sort((a, b) => b.share - a.share);
  return {
    id: bed.id,
    name: bed.name,
    area_m2: bed.area_m2,
    kinds: [...new Set(widest.map((p) => p.kind))],
    thirst: widest[0]?.thirst ?? "",
    supply: bed.watering.supply,
    gross_L_year: row.gross_L_year,
    habit_L_year: row.habit_L_year,
    need_L_week: weekly(run.grossByMonth_L, days),
    // a survey that was worked out keeps the shares of its tanks
    fromTank_L_week: weekly(run.fromTankByMonth_L!, days),
    today_L_week: run.habitByMonth_L && weekly(run.habitByMonth_L, days),
    short_L_year: perYear(short_L, outcome.days),
    beyond_L_year: perYear(beyond_L, outcome.days),
    lacks: run.habitByMonth_L !== null && short_L - beyond_L > NEAR_SHARE * run.gross_L,
    stressDays_year: row.stressDays_year,
    establishing_L_year: row.establishing_L_year ?? null,
    index,
  };
}

export function tankView(
  { survey, need, ready, weather }: WorkedOut,
  report: GroundsReport,
  index: number,
): TankView {
  const { group } = ready.tanks[index]!;
  const { series } = need.tanks[index]!;
  const ids = new Set(group.members.map((t) => t.id));
  const members = survey.tanks.filter((t) => ids.has(t.id));
  const { draw_L, yield_L } = series;
  return {
    ...report.tanks[index]!,
    name: members.map((t) => t.name).join(" + "),
    capacity_L: members.reduce((sum, t) => sum + t.capacity_L, 0),
    unusable_L: members.reduce((sum, t) => sum + (t.unusable_L ?? 0), 0),
    inUse: group.inUse,
    firstDay: weather.calendar.firstDay,
    level_L: series.level_L,
    spill_L: series.spill_L,
    short: Uint8Array.from(draw_L, (draw, i) => (draw > yield_L[i]! ? 1 : 0)),
    asked: draw_L.some((x) => x > 0),
    serves: [
      ...(survey.draws ?? []).filter((d) => ids.has(d.tank)).map((d) => d.name),
      ...survey.beds.filter((b) => b.watering.tank && ids.has(b.watering.tank)).map((b) => b.name),
    ],
  };
}

function standing(report: GroundsReport, watered: readonly BedView[]): Standing {
  if (report.beds.length === 0) return "no-beds";
  if (watered.every((b) => b.gross_L_year < 1 && (b.habit_L_year ?? 0) < 1)) return "no-need";
  const unknown = report.mains.todayUnknown.length;
  if (unknown > 0) return watered.some((b) => b.habit_L_year !== null) ? "partly-known" : "need-only";
  return report.mains.today_kL_year < report.mains.plan_kL_year ? "short" : "saving";
}

/** Mean of a year over all series, kL. */
function yearly_kL(series: readonly Float64Array[], days: number): number {
  return (
    perYear(
      series.reduce((sum, row) => sum + row.reduce((a, b) => a + b, 0), 0),
      days,
    ) / 1000
  );
}

function asked({ ready, outcome: { days } }: WorkedOut, run: SiteRun): Asked {
  const draws = ready.tanks.flatMap((tank) => [...tank.before, ...tank.after]);
  return {
    draws_kL: yearly_kL(
      draws.map((d) => d.asks_L),
      days,
    ),
    topUp_kL: yearly_kL(
      run.tanks.map((t) => t.series.topUp_L),
      days,
    ),
    always_kL: yearly_kL([ready.always_L], days),
  };
}

function tanksOf(run: SiteRun, days: number): number {
  return yearly_kL(
    run.tanks.map((t) => t.series.yield_L),
    days,
  );
}

function measuresOf(survey: Survey, report: GroundsReport): MeasureView[] {
  const names = new Map((survey.measures ?? []).map((m) => [m.id, m.name]));
  return report.measures.map(({ id, share_kL_year }) => ({ name: names.get(id) ?? id, share_kL_year }));
}

/**
 * The one place where what was worked out, and the report of it, become what the page shows. Pure.
 * @param say turns a caution into a sentence
 */
export function toView(
  worked: WorkedOut,
  report: GroundsReport,
  say: (caution: Caution) => string,
): AnswerView {
  const { survey, weather, outcome } = worked;
  const all = survey.beds.map((_, i) => bedView(worked, report, i));
  const beds = [...all].sort((a, b) => b.gross_L_year / b.area_m2 - a.gross_L_year / a.area_m2);
  const { mains } = report;
  const tanks = worked.need.tanks.map((_, i) => tankView(worked, report, i));
  const yearOf = (year: number | null) => mains.byYear.find((y) => y.year === year) ?? null;
  const mean_kL = mains.today_kL_year - mains.plan_kL_year;
  const { p10, p50, p90 } = mains.giveUp_kL_year;
  return {
    site: survey.site.name,
    standing: standing(report, beds.filter(isWatered)),
    weather: report.weather,
    mains: {
      today_kL: mains.today_kL_year,
      need_kL: mains.need_kL_year,
      plan_kL: mains.plan_kL_year,
      tanks_kL: tanksOf(worked.need, outcome.days),
      tanksPlan_kL: tanksOf(worked.plan, outcome.days),
      giveUp_kL: { p10: p10 ?? mean_kL, p50: p50 ?? mean_kL, p90: p90 ?? mean_kL },
      byYear: mains.byYear,
      dry: yearOf(mains.dryYear),
      wet: yearOf(mains.wetYear),
    },
    beds,
    unknown: beds.filter((b) => mains.todayUnknown.includes(b.id)),
    rain_mm_week: rainByMonth(weather.calendar, weather.rain_mm),
    tanks,
    years: mains.byYear.map((y) => y.year),
    draws: namesOf(survey.draws),
    leaks: namesOf(survey.leaks),
    leaks_kL_year: ((survey.leaks ?? []).reduce((sum, l) => sum + l.litresPerDay, 0) * 365.25) / 1000,
    measures: measuresOf(survey, report),
    asked: { today: asked(worked, worked.today), need: asked(worked, worked.need) },
    assumed: report.assumed,
    cautions: cautionsFor(worked).map((c) => ({ code: c.code, sentence: say(c) })),
  };
}

function namesOf(rows: Survey["draws"] | Survey["leaks"]): string[] {
  return (rows ?? []).map((row) => row.name);
}
