import type { SurveyBed } from "../survey/survey.ts";
import type { Caution } from "./cautions.ts";
import type { ReportAssumed, ReportWeather } from "./schema.ts";

/** What the page shows; plain data that can cross from a worker. */

export type Supply = SurveyBed["watering"]["supply"];

export interface BedView {
  id: string;
  name: string;
  area_m2: number;
  kinds: readonly string[];
  thirst: string;
  supply: Supply;
  gross_L_year: number;
  /** null: not known. */
  habit_L_year: number | null;
  /** Gross litres a week, by month, in a mean year. */
  need_L_week: readonly number[];
  /** What a tank gives of it, watered as its supply lets it. */
  fromTank_L_week: readonly number[];
  today_L_week: readonly number[] | null;
  /** What a year lacks, and what it has beyond need, by the month: they may stand side by side. */
  short_L_year: number;
  beyond_L_year: number;
  /** Whether today it gets clearly less than it needs over a year. */
  lacks: boolean;
  stressDays_year: number;
  establishing_L_year: number | null;
  index: number;
}

export interface TankView {
  id: string;
  name: string;
  capacity_L: number;
  unusable_L: number;
  inUse: boolean;
  inflow_L_year: number;
  yield_L_year: number;
  spill_L_year: number;
  topUp_L_year: number;
  shortDays_year: number;
  reliability: number;
  volumetricReliability: number;
  firstDay: number;
  level_L: Float64Array;
  spill_L: Float64Array;
  /** 1 on a day when not all that was asked for was met. */
  short: Uint8Array;
  /** Whether anything was asked of it in the record. */
  asked: boolean;
  serves: readonly string[];
}

export interface YearFigures {
  year: number;
  today_kL: number;
  need_kL: number;
  plan_kL: number;
}

/** What mains water would have to bring were there no tank, by who asks; kL a year. */
export interface Asked {
  draws_kL: number;
  topUp_kL: number;
  /** Leaks, and uses that are not on a tank yet. */
  always_kL: number;
}

/** A measure of the plan, watering to need among them, and its share of what is given up. */
export interface MeasureView {
  name: string;
  share_kL_year: number;
}

/** How far the answer may go. */
export type Standing =
  /** No beds, or none that needs water. */
  | "no-beds"
  | "no-need"
  /** Today's watering is known for no bed. */
  | "need-only"
  /** Known for some. */
  | "partly-known"
  /** Known, and less than the gardens need. */
  | "short"
  /** Known, and more. */
  | "saving";

export interface AnswerView {
  site: string;
  standing: Standing;
  weather: ReportWeather;
  mains: {
    today_kL: number;
    need_kL: number;
    plan_kL: number;
    /** What tanks give, watered to need and as planned. */
    tanks_kL: number;
    tanksPlan_kL: number;
    giveUp_kL: { p10: number; p50: number; p90: number };
    byYear: readonly YearFigures[];
    dry: YearFigures | null;
    wet: YearFigures | null;
  };
  /** Thirstiest square metre first. */
  beds: readonly BedView[];
  unknown: readonly BedView[];
  rain_mm_week: readonly number[];
  tanks: readonly TankView[];
  /** Years that the record holds whole. */
  years: readonly number[];
  draws: readonly string[];
  leaks: readonly string[];
  leaks_kL_year: number;
  /** Measures of the plan; empty where none is chosen, and plan is need then. */
  measures: readonly MeasureView[];
  asked: { today: Asked; need: Asked };
  assumed: readonly ReportAssumed[];
  cautions: readonly { code: Caution["code"]; sentence: string }[];
}

/** A bed that somebody could water: rain-only beds stand apart from every draw and total. */
export function isWatered(bed: BedView): boolean {
  return bed.supply !== "none";
}
