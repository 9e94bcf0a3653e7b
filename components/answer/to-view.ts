import { perYear } from "../../src/engine/years.ts";
import { type Caution, cautionsFor } from "../../src/report/cautions.ts";
import type { GroundsReport } from "../../src/report/schema.ts";
import type { WorkedOut } from "../../src/report/work-out.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { type AnswerView, type BedView, isWatered, type Standing, type TankView } from "./view.ts";

/** Mean length of a calendar month, days. */
export const monthDays = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const MS_PER_DAY = 86_400_000;

function weekly(month_L: ArrayLike<number>): number[] {
  return monthDays.map((days, m) => ((month_L[m] ?? 0) / days) * 7);
}

/** Mean rain of a week by calendar month, over the days that the record has. */
export function rainByMonth(firstDay: number, rain_mm: ArrayLike<number>): number[] {
  const sum = new Array<number>(12).fill(0);
  const count = new Array<number>(12).fill(0);
  for (let i = 0; i < rain_mm.length; i++) {
    const month = new Date((firstDay + i) * MS_PER_DAY).getUTCMonth();
    sum[month]! += rain_mm[i]!;
    count[month]! += 1;
  }
  return sum.map((mm, m) => (count[m] ? (mm / count[m]!) * 7 : 0));
}

function bedView({ survey, outcome }: WorkedOut, report: GroundsReport, index: number): BedView {
  const bed = survey.beds[index]!;
  const row = report.beds[index]!;
  const habit = outcome.beds[index]!.habitByMonth_L;
  const need_L_week = weekly(row.needByMonth_L);
  const today_L_week = habit ? weekly(habit.map((total) => perYear(total, outcome.days))) : null;
  let short_L_year = 0;
  let beyond_L_year = 0;
  today_L_week?.forEach((today, m) => {
    const difference_L = ((today - need_L_week[m]!) * monthDays[m]!) / 7;
    if (difference_L > 0) beyond_L_year += difference_L;
    else short_L_year -= difference_L;
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
    need_L_week,
    today_L_week,
    short_L_year,
    beyond_L_year,
    stressDays_year: row.stressDays_year,
    establishing_L_year: row.establishing_L_year ?? null,
    index,
  };
}

function tankView(
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
  return report.mains.today_kL_year < report.mains.need_kL_year ? "short" : "saving";
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
  const { survey, weather } = worked;
  const all = survey.beds.map((_, i) => bedView(worked, report, i));
  const beds = [...all].sort((a, b) => b.gross_L_year / b.area_m2 - a.gross_L_year / a.area_m2);
  const { mains } = report;
  const tanks = worked.need.tanks.map((_, i) => tankView(worked, report, i));
  const yearOf = (year: number | null) => mains.byYear.find((y) => y.year === year) ?? null;
  const leaks_L_day = (survey.leaks ?? []).reduce((sum, l) => sum + l.litresPerDay, 0);
  const mean_kL = mains.today_kL_year - mains.plan_kL_year;
  const { p10, p50, p90 } = mains.giveUp_kL_year;
  return {
    site: survey.site.name,
    standing: standing(report, beds.filter(isWatered)),
    weather: report.weather,
    mains: {
      today_kL: mains.today_kL_year,
      need_kL: mains.need_kL_year,
      tanks_kL: tanks.reduce((sum, t) => sum + t.yield_L_year, 0) / 1000,
      giveUp_kL: { p10: p10 ?? mean_kL, p50: p50 ?? mean_kL, p90: p90 ?? mean_kL },
      byYear: mains.byYear,
      dry: yearOf(mains.dryYear),
      wet: yearOf(mains.wetYear),
    },
    beds,
    unknown: beds.filter((b) => mains.todayUnknown.includes(b.id)),
    rain_mm_week: rainByMonth(weather.calendar.firstDay, weather.rain_mm),
    tanks,
    years: mains.byYear.map((y) => y.year),
    draws: namesOf(survey.draws),
    leaks: namesOf(survey.leaks),
    leaks_kL_year: (leaks_L_day * 365.25) / 1000,
    assumed: report.assumed,
    cautions: cautionsFor(worked).map((c) => ({ code: c.code, sentence: say(c) })),
  };
}

function namesOf(rows: Survey["draws"] | Survey["leaks"]): string[] {
  return (rows ?? []).map((row) => row.name);
}
