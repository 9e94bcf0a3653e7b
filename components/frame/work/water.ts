import { answerTo, type Question, type Reply } from "../../../src/report/questions.ts";
import { type TanksView, toTanksView } from "../../../src/report/tanks-view.ts";
import { type ThirstView, toThirstView } from "../../../src/report/thirst-view.ts";
import { cautionSentence } from "../../../src/words/en/cautions.ts";
import { lastAnswer } from "./answer.ts";

/** What each bed of the answer last worked out needs; null before there is one. */
export function thirstOf(): ThirstView | null {
  const last = lastAnswer();
  return last && toThirstView(last.worked, last.report, cautionSentence);
}

/** What its roofs and tanks bring. */
export function tanksOf(): TanksView | null {
  const last = lastAnswer();
  return last && toTanksView(last.worked, last.report, cautionSentence);
}

/** What a screen wants to know further of it. */
export function replyTo(question: Question): Reply | null {
  const last = lastAnswer();
  return last && answerTo(last.worked, question);
}
