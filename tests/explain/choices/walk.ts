import { type ChoicesBook, choicesBook } from "../../../src/explain/choices/book.ts";
import { explainChoice } from "../../../src/explain/choices/explain.ts";
import { plainSay, type Say } from "../../../src/explain/say.ts";
import type { Working } from "../../../src/explain/working.ts";
import { decide } from "../../../src/report/choices.ts";
import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { workOut } from "../../../src/report/work-out.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { cautionSentence } from "../../../src/words/en/cautions.ts";
import { choiceCautionSentence } from "../../../src/words/en/choices-reasons.ts";
import { exactMoneyIn } from "../../../src/words/money.ts";
import { recordAt } from "../../helpers/worked.ts";
import { faultsOf, isSame } from "../walk.ts";

export interface Opened {
  document: GroundsChoices;
  book: ChoicesBook;
  say: Say;
  open(at: string): Working | null;
}

/** A decision with its workings, on the weather of the demo. */
export function openedChoices(survey: Survey, draws = 0): Opened {
  const decision = decide(workOut(survey, recordAt("demo/seattle.csv")), { budget: null });
  const run = decision.spread(1);
  for (let k = 0; k < draws; k++) run.draw();
  const document = decision.document(
    { caution: cautionSentence, choiceCaution: choiceCautionSentence },
    draws > 0 ? run.outcome() : null,
  );
  const { context, questions, rivals } = decision;
  const drawn = draws > 0 ? { figures: run.drawn(), rivals } : null;
  const book = choicesBook(context, questions, drawn);
  const say = { ...plainSay("metric", "en"), money: exactMoneyIn(document.currency) };
  return { document, book, say, open: (at) => explainChoice(book, at, say) };
}

/** Runs of the whole grounds that are followed: each takes its time. */
const mostRuns = 6;

/**
 * Opens every address of the decision that can be reached from some, each once, and says what is wrong. Of the grounds'
 * own figures behind a set of measures or other weather, those of a few are opened, and followed no further.
 */
export function walkChoices(
  { open }: Opened,
  from: readonly string[],
): { faults: string[]; opened: string[] } {
  const faults: string[] = [];
  const opened = new Map<string, Working | null>();
  const runs = new Set<string>();
  const queue = [...from];
  const isOwn = (at: string) => at.startsWith("choices/") && !/^choices\/(with|under)\//.test(at);
  const isFollowed = (at: string) => {
    const run = /^choices\/(?:with|under)\/[^/]+/.exec(at)?.[0];
    if (run === undefined) return isOwn(at);
    if (runs.size < mostRuns) runs.add(run);
    return runs.has(run);
  };
  const look = (at: string) => {
    if (!opened.has(at)) opened.set(at, open(at));
    return opened.get(at)!;
  };
  for (const at of queue) {
    const working = look(at);
    if (!working) {
      faults.push(`${at} leads nowhere`);
      continue;
    }
    faults.push(...faultsOf(at, working));
    for (const { at: below, value, name } of working.given) {
      if (below === undefined || !isFollowed(below)) continue;
      const isNew = !opened.has(below);
      const next = look(below);
      if (!next) faults.push(`${at}: ${name} leads to ${below}, which leads nowhere`);
      if (next && value !== undefined && !isSame(value, next.value!))
        faults.push(`${at}: ${name} is ${value}, and ${below} gives ${next.value}`);
      if (isNew && isOwn(below)) queue.push(below);
    }
  }
  return { faults, opened: [...opened.keys()] };
}
