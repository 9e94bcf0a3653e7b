import type { ClosedBy } from "./rules.ts";
import type { RunTime } from "./run-time.ts";
import type { Member, Range, SoilSince, WeekWeather } from "./soil-now.ts";
import type { Stretch } from "./stretches.ts";

export const week_days = 7;

/** A watering that is known to have been given. */
export interface Given {
  day: number;
  net_mm: number;
}

/** What was done of the last round, where the log says nothing of a bed. Silence is never "done". */
export type LastRound = "all" | "some" | "none" | "unknown";

export interface WeekFacts extends WeekWeather {
  /** Waterings of each bed that the log has, by id. */
  given: ReadonlyMap<string, readonly Given[]>;
  lastRound: LastRound;
  /** Flow of a bed's tap at today's dip, where it differs from the surveyed one, by id. */
  flow_L_min: ReadonlyMap<string, number>;
}

/** Why a bed is watered on a day. */
export type WaterReason =
  | { code: "due" }
  | { code: "before-closed-days"; nextOpenDay: number }
  | { code: "check-first" };

/** Why a bed is left for the week. */
export type LeaveReason =
  | { code: "enough" }
  | { code: "enough-after-rain"; rain_mm: number }
  | { code: "watered-lately"; day: number }
  | { code: "rain-likely"; day: number; rain_mm: number; chance: number }
  | { code: "closed"; closedBy: readonly ClosedBy[] }
  | { code: "tank-short" }
  | { code: "nobody-waters" };

export interface WeekWatering extends RunTime {
  day: number;
  /** Water missing from the roots that morning. */
  missing_mm: Range;
  /** The same in each of the bed's soils. */
  ofSoils_mm: readonly number[];
  reason: WaterReason;
  stretches: readonly Stretch[];
}

export interface WeekBed {
  id: string;
  isYoung: boolean;
  /** Water missing from the roots as the first day begins. */
  depletion_mm: Range;
  /** The same in each year's weather and for each answer to what was done, from so many days ago. */
  since: { days: number; soils: readonly (SoilSince & { year: number })[] };
  available_mm: number;
  /** What the roots may lose before they suffer. */
  trigger_mm: number;
  waterings: readonly WeekWatering[];
  /** null where it is watered. */
  leave: LeaveReason | null;
  /** Days, of the week, on which plants are likely to suffer all the same. */
  stressDays: number;
}

export interface WeekRound {
  firstDay: number;
  members: readonly Member[];
  beds: readonly WeekBed[];
}
