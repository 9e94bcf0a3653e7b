import type { Working } from "../../../src/explain/working.ts";
import type { FirstOutcome } from "../../../src/report/first-answer.ts";
import type { Question, Reply as QuestionReply } from "../../../src/report/questions.ts";
import type { SpreadOutcome } from "../../../src/report/spread.ts";
import type { TanksView } from "../../../src/report/tanks-view.ts";
import type { ThirstView } from "../../../src/report/thirst-view.ts";
import type { AnswerView } from "../../../src/report/view.ts";
import type { FirstEntries, FirstPlace } from "../../../src/survey/first/entries.ts";
import type { Given } from "../../../src/survey/record/mapping.ts";
import type { SurveyNormals } from "../../../src/survey/survey.ts";
import type { UnitSystem } from "../../../src/units.ts";
import type { RecordPreview } from "./preview.ts";

/** A fault in words, with the path of what it is about. */
export interface ToldFault {
  path: string;
  sentence: string;
}

/** Monthly means that stand in for a record, with what may be guessed of their place. */
export interface PlaceWeather {
  normals: SurveyNormals;
  guesses: { elevation_m: number; coastal: boolean };
  /** What to bear in mind of them, in sentences. */
  limits: readonly string[];
}

/** What a survey is worked out on: a record's CSV text, its own normals, or those of its place. */
export type WeatherOf = { is: "record"; csv: string } | { is: "normals"; place: PlaceWeather | null };

/** How far the answer may be out, by what is not measured and by which year it will be. */
export type AnswerWidth = Pick<SpreadOutcome, "draws" | "giveUp_kL_year" | "need_kL_year" | "byUnknown">;

/** What is asked of the worker; answers of one kind overtake each other, the last call wins. */
export type Ask =
  | { kind: "answer"; survey: object; weather: WeatherOf }
  | { kind: "explain"; address: string; units: UnitSystem }
  /** Loads what works an answer out, before it is asked for. */
  | { kind: "warm" }
  /** These read the answer last worked out. */
  | { kind: "class-sheet"; bed: string; units: UnitSystem }
  | { kind: "thirst" }
  | { kind: "width" }
  | { kind: "tanks" }
  | { kind: "question"; question: Question }
  | { kind: "first"; entries: FirstEntries; place: FirstPlace; weather: PlaceWeather }
  | { kind: "preview"; name: string; text: string; given: Given };

/** Whose faults they are. */
export type Wrong = "survey" | "weather";

export interface Answers {
  answer: { view: AnswerView } | { wrong: Wrong; faults: readonly ToldFault[] };
  warm: null;
  explain: { working: Working | null };
  /** A page to print; null where the record holds no whole week of it. */
  "class-sheet": { html: string | null };
  /** null while nothing is worked out. */
  thirst: { view: ThirstView | null };
  tanks: { view: TanksView | null };
  /** Comes several times, surer each time; null where there is no answer, or another has taken its place. */
  width: { width: AnswerWidth | null };
  question: { reply: QuestionReply | null };
  /** Comes several times, surer each time, until `isLast`. */
  first: { outcome: FirstOutcome; isLast: boolean } | { faults: readonly ToldFault[] };
  preview: { preview: RecordPreview };
}

export type Kind = Ask["kind"];
export type AskOf<K extends Kind> = Extract<Ask, { kind: K }>;

export type Post = { id: number; ask: Ask };
export type Reply =
  | { id: number; kind: Kind; told: Answers[Kind]; isLast: boolean }
  /** A fault of the program itself. */
  | { id: number; kind: Kind; crash: string };
