import type { AnswerView } from "../../src/report/view.ts";

/** What is asked of the worker: a survey and a record as the text of their files. */
export interface Ask {
  id: number;
  survey: string;
  weather: string;
}

export interface ToldFault {
  path: string;
  sentence: string;
}

export type Which = "survey" | "weather";

export type Told =
  | { id: number; view: AnswerView }
  | { id: number; faults: readonly { of: Which; faults: readonly ToldFault[] }[] }
  /** A fault of the program itself. */
  | { id: number; crash: string };
