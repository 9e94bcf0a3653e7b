import { middleYear } from "../engine/give-up.ts";
import type { Calendar } from "../engine/weather/series.ts";
import { perYear } from "../engine/years.ts";
import { type Caution, cautionsFor } from "./cautions.ts";
import { pointOfMonth, valueAt, weekRows, yearMonths, yearSums } from "./months-of-years.ts";
import { daysOf, needWithDays } from "./need-days.ts";
import type { GroundsReport, ReportAssumed } from "./schema.ts";
import { bedView, daysByMonth, weekly } from "./to-view.ts";
import { type BedView, isWatered } from "./view.ts";
import type { WorkedOut } from "./work-out.ts";

/** A dry, a middle and a wet year are told apart from this many whole years on. */
const YEARS_TO_TELL = 3;

/** What the page on thirst shows; plain data that can cross from a worker. */
export interface ThirstView {
  site: string;
  firstDay: number;
  /** The whole years of the record. */
  years: readonly number[];
  /** The years whose need of mains water is nearest its middle, its 90 % and its 10 % point; null of too few years. */
  told: ToldYears | null;
  /** Thirstiest square metre first. */
  beds: readonly ThirstBed[];
  /** All beds that are watered, as one; null of none. */
  all: Thirst | null;
  assumed: readonly ReportAssumed[];
  cautions: readonly { code: Caution["code"]; sentence: string }[];
}

export interface ToldYears {
  middle: number;
  dry: number;
  wet: number;
}

/** A week of each month, litres or mm. */
export interface Weeks {
  need_L_week: readonly number[];
  /** What a tank gives of it. */
  fromTank_L_week: readonly number[];
}

/** A week of each month over the years: of half of all years, and of one year in ten on the dry and on the wet side. */
export interface WeeksOfYears extends Weeks {
  dry_L_week: readonly number[];
  wet_L_week: readonly number[];
}

/** Water of one bed, or of all together. Litres a year are of a mean year. */
export interface Thirst {
  area_m2: number;
  gross_L_year: number;
  fromTank_L_year: number;
  rain_L_year: number;
  rainUsed_L_year: number;
  /** Of a mean year. */
  mean: Weeks;
  rain_mm_week: readonly number[];
  rainUsed_mm_week: readonly number[];
  /** null of too few years. */
  ofYears: WeeksOfYears | null;
  today_L_week: readonly number[] | null;
  /** Of each whole year, gross. */
  needByYear_L: readonly number[];
  /** A week of each month of each whole year, twelve to the row. */
  needRows_L_week: Float64Array;
  tankRows_L_week: Float64Array;
}

export interface ThirstBed extends BedView, Thirst {
  /** Gross litres over each m² of a mean year. */
  gross_L_m2_year: number;
  flow_L_min: number;
  /** Share of the water let out that reaches the roots. */
  efficiency: number;
  /** Waterings of a mean year, to need. */
  waterings_year: number;
  /** The soil under today's habit; null where that is not known. */
  underHabit: { stressDays_year: number; drained_L_year: number } | null;
  drained_L_year: number;
}

/** Pure. @param say turns a caution into a sentence */
export function toThirstView(
  worked: WorkedOut,
  report: GroundsReport,
  say: (caution: Caution) => string,
): ThirstView {
  const { survey, outcome, weather } = worked;
  const years = outcome.mains.byYear.map(({ year }) => year);
  const told = toldYears(worked, report);
  const beds = survey.beds.map((_, k) => thirstBed(worked, report, k, told));
  const watered = beds.filter(isWatered);
  return {
    site: survey.site.name,
    firstDay: weather.calendar.firstDay,
    years,
    told,
    beds: beds.sort((a, b) => b.gross_L_m2_year - a.gross_L_m2_year),
    all: watered.length > 0 ? together(watered, told) : null,
    assumed: report.assumed,
    cautions: cautionsFor(worked).map((caution) => ({ code: caution.code, sentence: say(caution) })),
  };
}

function toldYears({ outcome }: WorkedOut, { mains }: GroundsReport): ToldYears | null {
  const { byYear } = outcome.mains;
  const middle = middleYear(byYear);
  const { dryYear: dry, wetYear: wet } = mains;
  if (byYear.length < YEARS_TO_TELL || middle === null || dry === null || wet === null) return null;
  return { middle, dry, wet };
}

function thirstBed(worked: WorkedOut, report: GroundsReport, k: number, told: ToldYears | null): ThirstBed {
  const { outcome, weather, ready } = worked;
  const { calendar } = weather;
  const { grown } = ready.beds[k]!;
  const { area_m2, watering } = grown.bed;
  const view = bedView(worked, report, k);
  const years = outcome.mains.byYear.map(({ year }) => year);
  const { needByDay_L, days } = needWithDays(worked).beds[k]!;
  const supplied = daysOf(worked, k, "need")!;
  const habit = daysOf(worked, k, "today");
  const tank_L = supplied.fromTank_L ?? new Float64Array(calendar.days);
  const used_mm = grown.rain_mm.map((rain_mm, i) => rain_mm - days!.drainage_mm[i]!);
  const inYear = (litres: number) => perYear(litres, calendar.days);
  const gross_L_year = inYear(outcome.beds[k]!.gross_L);
  const need = yearMonths(needByDay_L, calendar, years);
  const tank = yearMonths(tank_L, calendar, years);
  const rows = { needRows_L_week: weekRows(need), tankRows_L_week: weekRows(tank) };
  return {
    ...view,
    flow_L_min: watering.flow_L_min,
    efficiency: watering.efficiency,
    gross_L_m2_year: gross_L_year / area_m2,
    waterings_year: inYear(needByDay_L.reduce((times, litres) => times + (litres > 0 ? 1 : 0), 0)),
    fromTank_L_year: inYear(total(tank_L)),
    rain_L_year: inYear(total(grown.rain_mm) * area_m2),
    rainUsed_L_year: inYear(total(used_mm) * area_m2),
    drained_L_year: inYear(supplied.drainage_mm * area_m2),
    mean: { need_L_week: view.need_L_week, fromTank_L_week: view.fromTank_L_week },
    rain_mm_week: meanWeeks(grown.rain_mm, calendar),
    rainUsed_mm_week: meanWeeks(used_mm, calendar).map(notBelowNothing),
    ...rows,
    ofYears: told && weeksOfYears(rows),
    needByYear_L: yearSums(need),
    underHabit: habit && {
      stressDays_year: inYear(habit.stressDays),
      drained_L_year: inYear(habit.drainage_mm * area_m2),
    },
  };
}

/** A month in which more drains than falls, of rain from before, has used none. */
function notBelowNothing(x: number): number {
  return Math.max(0, x);
}

function total(values: Float64Array): number {
  return values.reduce((sum, each) => sum + each, 0);
}

/** A week of each calendar month, mean over the record. */
function meanWeeks(values: Float64Array, calendar: Calendar): number[] {
  const sums = new Float64Array(12);
  for (let i = 0; i < calendar.days; i++) sums[calendar.month[i]!]! += values[i]!;
  return weekly(sums, daysByMonth(calendar));
}

/** Each month has its own middle, dry and wet one: the driest July and the driest May are not of one year. */
function weeksOfYears({
  needRows_L_week,
  tankRows_L_week,
}: Pick<Thirst, "needRows_L_week" | "tankRows_L_week">): WeeksOfYears {
  const weeks = (rows: Float64Array, share: number) =>
    Array.from({ length: 12 }, (_, m) => valueAt(rows, pointOfMonth(needRows_L_week, m, share)));
  return {
    need_L_week: weeks(needRows_L_week, 0.5),
    fromTank_L_week: weeks(tankRows_L_week, 0.5),
    dry_L_week: weeks(needRows_L_week, 0.9),
    wet_L_week: weeks(needRows_L_week, 0.1),
  };
}

/** Beds as one: litres added, depths weighted by area. */
function together(beds: readonly ThirstBed[], told: ToldYears | null): Thirst {
  const area_m2 = sum(beds, (bed) => bed.area_m2);
  const litres = (of: (bed: ThirstBed) => ArrayLike<number>) =>
    Array.from({ length: of(beds[0]!).length }, (_, k) => sum(beds, (bed) => of(bed)[k]!));
  const depths = (of: (bed: ThirstBed) => readonly number[]) =>
    Array.from({ length: 12 }, (_, m) => sum(beds, (bed) => (of(bed)[m]! * bed.area_m2) / area_m2));
  const rows = {
    needRows_L_week: Float64Array.from(litres((bed) => bed.needRows_L_week)),
    tankRows_L_week: Float64Array.from(litres((bed) => bed.tankRows_L_week)),
  };
  const known = beds.every(({ today_L_week }) => today_L_week !== null);
  return {
    area_m2,
    gross_L_year: sum(beds, (bed) => bed.gross_L_year),
    fromTank_L_year: sum(beds, (bed) => bed.fromTank_L_year),
    rain_L_year: sum(beds, (bed) => bed.rain_L_year),
    rainUsed_L_year: sum(beds, (bed) => bed.rainUsed_L_year),
    mean: {
      need_L_week: litres((bed) => bed.mean.need_L_week),
      fromTank_L_week: litres((bed) => bed.mean.fromTank_L_week),
    },
    rain_mm_week: depths((bed) => bed.rain_mm_week),
    rainUsed_mm_week: depths((bed) => bed.rainUsed_mm_week),
    ...rows,
    ofYears: told && weeksOfYears(rows),
    today_L_week: known ? litres((bed) => bed.today_L_week!) : null,
    needByYear_L: litres((bed) => bed.needByYear_L),
  };
}

function sum<T>(items: readonly T[], figure: (item: T) => number): number {
  return items.reduce((all, item) => all + figure(item), 0);
}
