import type { Et0Method } from "./weather/series.ts";

/** What the engine hands on for one bed: totals over the record, and the daily request. */
export interface BedOutcome {
  id: string;
  /** Net depth it would take with water always there, over the whole record. */
  need_mm: number;
  gross_L: number;
  grossByMonth_L: Float64Array;
  /** What a tank gives of it in the run as supplied; null where it was not asked for. The mains give the rest. */
  fromTankByMonth_L: Float64Array | null;
  /** Gross litres asked for on each day with water always there. */
  grossByDay_L: Float64Array;
  /** Habit's gross over the record; null where it is not known. */
  habit_L: number | null;
  /** Habit's gross by calendar month, null where not known. */
  habitByMonth_L: Float64Array | null;
  /** Gross litres that reached the bed in the run as supplied. */
  supplied_L: number;
  /** ΣP − drainage of the run as supplied. */
  rainUsed_mm: number;
  drainage_mm: number;
  stressDays: number;
  /** Gross of the run with establishing plants; null where none is. */
  establishing_L: number | null;
}

/** One tank, or a linked group under the id of its first member. */
export interface TankOutcome {
  id: string;
  inflow_L: number;
  yield_L: number;
  spill_L: number;
  topUp_L: number;
  /** New draw: what was asked for, each litre counted once. */
  draw_L: number;
  drawDays: number;
  shortDays: number;
  /** Level at the end of each day, water below the outlet included. */
  levelByDay_L: Float64Array;
}

export interface MainsYear {
  year: number;
  today_L: number;
  need_L: number;
  plan_L: number;
}

export interface Outcome {
  et0Method: Et0Method;
  days: number;
  beds: BedOutcome[];
  /** Tanks as run for need; a tank not in use is here too, giving nothing. */
  tanks: TankOutcome[];
  mains: {
    today_L: number;
    need_L: number;
    plan_L: number;
    byYear: MainsYear[];
    /** Ids of beds whose habit is not known. */
    todayUnknown: string[];
  };
}
