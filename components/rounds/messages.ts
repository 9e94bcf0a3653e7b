import type { Heat } from "../../src/engine/rounds/heat.ts";
import type { Forecast } from "../../src/engine/rounds/soil-now.ts";
import type { LastRound } from "../../src/engine/rounds/week-facts.ts";
import type { Working } from "../../src/explain/working.ts";
import type { GroundsRounds } from "../../src/report/rounds-schema.ts";
import type { Paper } from "../../src/report/sheets/style.ts";
import type { RoundsWeek } from "../../src/report/week-schema.ts";
import type { LogEntry } from "../../src/survey/schema/log.ts";
import type { UnitSystem } from "../../src/units.ts";
import type { WeekSaidAloud } from "../../src/words/rounds-said.ts";

/** What is said on the day that a week's round is made, as it passes to the worker. */
export interface WeekSaid {
  firstDay: number;
  log: readonly LogEntry[];
  levels: Readonly<Record<string, number>>;
  lastRound: LastRound;
  heat: Heat;
  forecast: readonly Forecast[];
  hotSpell: number | null;
}

/** What the rounds are worked out from: a survey, and weather as CSV text or the survey's own normals. */
export interface RoundsOf {
  survey: object;
  /** Of the sentences. */
  units: UnitSystem;
  /** Start times of a day that the simple timer has. */
  starts: number;
  record: string | null;
  week: WeekSaid;
}

/** Sheets that are printed together. */
export type SheetKind = "week" | "wall" | "cards";

export type FileAsked =
  | { is: "sheets"; kind: SheetKind | "all"; paper: Paper; year: number; month: number }
  | { is: "week-calendar"; alarm_min: number | null; now_ms: number }
  | { is: "month-calendar"; year: number; month: number; alarm_min: number | null; now_ms: number }
  | { is: "table" }
  | { is: "log"; log: readonly LogEntry[] };

export type RoundsAsk =
  | { kind: "rounds"; of: RoundsOf }
  | { kind: "file"; file: FileAsked }
  | { kind: "explain"; at: string; units: UnitSystem; locale: string }
  | { kind: "log"; text: string };

export interface Wrong {
  path: string;
  sentence: string;
}

/** The rounds worked out, with its week. */
export type RoundsWithWeek = GroundsRounds & { week: RoundsWeek };

export interface RoundsAnswers {
  rounds:
    | { rounds: RoundsWithWeek; aloud: WeekSaidAloud }
    | { of: "survey" | "weather" | "log"; faults: readonly Wrong[] };
  /** null: nothing was worked out yet. */
  file: { text: string } | null;
  explain: Working | null;
  log: { entries: readonly LogEntry[] } | { faults: readonly Wrong[] };
}

export type RoundsKind = RoundsAsk["kind"];

export interface RoundsPost {
  id: number;
  ask: RoundsAsk;
}

export type RoundsReply =
  | { id: number; told: RoundsAnswers[RoundsKind] }
  /** A fault of the program itself. */
  | { id: number; crash: string };
