import type { Supply } from "../grounds.ts";

/**
 * What the rounds need of a site beyond its water: rules, hours, taps and what each bed is for. Times are
 * minutes from local midnight; days are day numbers; weekday flags run from Monday.
 */
export interface RoundsSite {
  beds: readonly RoundsBed[];
  taps: readonly RoundsTap[];
  bans: readonly Ban[];
  /** When somebody waters by hand; empty where the survey does not say. */
  hours: readonly Hours[];
}

/** What a bed is grown for, in the order in which it goes first when water is short. */
export const bedUses = ["food", "trees", "shrubs", "flowers", "lawn"] as const;
export type BedUse = (typeof bedUses)[number];

export interface RoundsBed {
  id: string;
  method: string;
  intake_mm_h: number;
  surfaceStorage_mm: number;
  /** The survey's own order, 1 first; null where it has none. */
  priority: number | null;
  use: BedUse;
  /** Last day on which a planting is establishing; null where none is. */
  youngUntilDay: number | null;
  inPots: boolean;
  dryDays: readonly number[];
  dryWeekdays: readonly boolean[];
  /** Plants counted, with the share of the bed's water that goes to them. */
  counted: readonly { plants: number; share: number }[];
  tap: string | null;
  /** Flow measured on the bed itself; null where its tap's, or a table's, stands in. */
  ownFlow_L_min: number | null;
  at_m: readonly [number, number] | null;
}

export interface RoundsTap {
  id: string;
  /** mains, other, or a tank's id. */
  source: string;
  /** null where it was measured at levels, or not at all. */
  flow_L_min: number | null;
  flowAt: readonly { level_L: number; flow_L_min: number }[];
  line: string | null;
  at_m: readonly [number, number] | null;
}

/** A restriction: it forbids watering where everything that it says holds. */
export interface Ban {
  id: string;
  /** MM-DD each year or ISO dates, both included; null: no end. */
  from: string | null;
  to: string | null;
  weekdays: readonly boolean[];
  /** null: the whole day. May pass midnight into the day after. */
  minutes: { from: number; to: number } | null;
  methods: readonly string[] | null;
  supplies: readonly Supply[] | null;
  parity: "odd" | "even" | null;
  exempt: readonly string[];
}

export interface Hours {
  weekdays: readonly boolean[];
  fromMinute: number;
  toMinute: number;
}

export const minutesOfDay = 1440;
