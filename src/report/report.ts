import { dryAndWetYear, giveUpByYear_L, points } from "../engine/give-up.ts";
import type { BedOutcome, TankOutcome } from "../engine/outcome.ts";
import { formatIso } from "../engine/weather/dates.ts";
import { perYear } from "../engine/years.ts";
import { type Caution, cautionsFor } from "./cautions.ts";
import { measureRows } from "./measures.ts";
import type { GroundsReport, ReportBed, ReportMains, ReportTank, ReportWeather } from "./schema.ts";
import type { SpreadOutcome } from "./spread.ts";
import { programVersion } from "./version.ts";
import type { WorkedOut } from "./work-out.ts";

/**
 * The report document of a survey worked out. Means are of a year: total ÷ days × 365.25.
 * @param say turns a caution into a sentence
 * @param drawn how sure the saving is; null: no draws were asked for
 */
export function reportOf(
  worked: WorkedOut,
  say: (caution: Caution) => string,
  drawn: SpreadOutcome | null = null,
): GroundsReport {
  const { survey, resolved, money, notes, outcome } = worked;
  return {
    format: "grounds-report",
    version: 1,
    engine: programVersion,
    survey: survey.site.name,
    assumed: [...(notes?.assumed ?? []), ...resolved.assumed, ...money.assumed],
    cautions: cautionsFor(worked).map(say),
    weather: weatherOf(worked),
    beds: outcome.beds.map((bed, k) => bedRow(bed, survey.beds[k]!.area_m2, outcome.days)),
    tanks: outcome.tanks.map((tank) => tankRow(tank, outcome.days)),
    mains: mainsOf(worked),
    ...(drawn && drawn.draws > 0 && { spread: spreadOf(drawn) }),
    measures: measureRows(worked),
  };
}

function weatherOf({ filled, weather, notes }: WorkedOut): ReportWeather {
  const { firstDay, days } = filled;
  return {
    from: formatIso(firstDay),
    to: formatIso(firstDay + days - 1),
    days,
    filled: filled.filledDays,
    et0Method: weather.et0Method,
    rain_mm_year: perYear(sum(weather.rain_mm), days),
    et0_mm_year: perYear(sum(weather.et0_mm), days),
    ...(notes && { generated: { years: notes.generated.years, seed: notes.generated.seed } }),
  };
}

function bedRow(bed: BedOutcome, area_m2: number, days: number): ReportBed {
  const year = (total: number) => perYear(total, days);
  return {
    id: bed.id,
    need_mm_year: year(bed.need_mm),
    need_L_year: year(bed.need_mm) * area_m2,
    gross_L_year: year(bed.gross_L),
    habit_L_year: bed.habit_L === null ? null : year(bed.habit_L),
    supplied_L_year: year(bed.supplied_L),
    rain_used_mm_year: year(bed.rainUsed_mm),
    drainage_mm_year: year(bed.drainage_mm),
    stressDays_year: year(bed.stressDays),
    needByMonth_L: Array.from(bed.grossByMonth_L, year),
    ...(bed.establishing_L !== null && { establishing_L_year: year(bed.establishing_L) }),
  };
}

/** Reliability by days, and by litres; 1 where nothing was asked for. */
function tankRow(tank: TankOutcome, days: number): ReportTank {
  const year = (total: number) => perYear(total, days);
  return {
    id: tank.id,
    inflow_L_year: year(tank.inflow_L),
    yield_L_year: year(tank.yield_L),
    spill_L_year: year(tank.spill_L),
    topUp_L_year: year(tank.topUp_L),
    draw_L_year: year(tank.draw_L),
    shortDays_year: year(tank.shortDays),
    reliability: tank.drawDays > 0 ? 1 - tank.shortDays / tank.drawDays : 1,
    volumetricReliability: tank.draw_L > 0 ? tank.yield_L / tank.draw_L : 1,
  };
}

function spreadOf({ draws, seed, giveUp_kL_year, byUnknown }: SpreadOutcome): GroundsReport["spread"] {
  return { draws, seed, giveUp_kL_year: giveUp_kL_year ?? { p10: null, p50: null, p90: null }, byUnknown };
}

function mainsOf({ outcome: { mains, days } }: WorkedOut): ReportMains {
  const kL_year = (total_L: number) => perYear(total_L, days) / 1000;
  const giveUp = points(giveUpByYear_L(mains.byYear).map((litres) => litres / 1000));
  return {
    today_kL_year: kL_year(mains.today_L),
    need_kL_year: kL_year(mains.need_L),
    plan_kL_year: kL_year(mains.plan_L),
    giveUp_kL_year: giveUp ?? { p10: null, p50: null, p90: null },
    byYear: mains.byYear.map(({ year, today_L, need_L, plan_L }) => ({
      year,
      today_kL: today_L / 1000,
      need_kL: need_L / 1000,
      plan_kL: plan_L / 1000,
    })),
    todayUnknown: mains.todayUnknown,
    ...dryAndWetYear(mains.byYear),
  };
}

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
