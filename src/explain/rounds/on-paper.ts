import { onPaper } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { RoundBook } from "./book.ts";
import { explainRound } from "./explain-round.ts";

/** How each bed's minutes of a month came about, a line a bed, for paper. @param month 1–12 */
export function workedLines(book: RoundBook, month: number): string[] {
  return book.worked.survey.beds.flatMap(({ id, name }) => {
    const minutes = explainRound(book, roundAt.month(id, month - 1, "minutes"));
    const [exact, whole] = minutes?.steps ?? [];
    const text = (what: string) => minutes?.given.find(({ at }) => at?.endsWith(`/${what}`))?.text ?? "";
    if (!exact || !whole) return [];
    const numbers = onPaper.quotient(text("asked"), text("efficiency"), text("area"), text("flow"));
    return [onPaper.minutes(name, numbers, exact.result, whole.result)];
  });
}
