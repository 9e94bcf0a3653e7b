import { type ChoicesBook, choicesBook } from "../../src/explain/choices/book.ts";
import { explainChoice } from "../../src/explain/choices/explain.ts";
import { plainSay, type Say } from "../../src/explain/say.ts";
import type { Working } from "../../src/explain/working.ts";
import type { Decision } from "../../src/report/choices.ts";
import type { ChoicesContext } from "../../src/report/choices-context.ts";
import { Ways } from "../../src/report/choices-ways.ts";
import type { SpreadRun } from "../../src/report/spread.ts";
import type { UnitSystem } from "../../src/units.ts";
import { exactMoneyIn } from "../../src/words/money.ts";

export interface WorkingsOf {
  decision: Decision;
  /** The same at the prices last asked of. */
  context: ChoicesContext;
  run: SpreadRun | null;
}

/** How numbers are written. */
interface ShownAs {
  units: UnitSystem;
  lang: string;
}

/** Opens the figures of the decision at hand; what was run for one figure serves the next. */
export class Workings {
  #ways = new Ways();
  #book: ChoicesBook | null = null;

  /** Another decision: nothing run before serves any more. */
  forget(): void {
    this.#ways = new Ways();
    this.#book = null;
  }

  of({ decision, context, run }: WorkingsOf, at: string, as: ShownAs): Working | null {
    if (this.#book?.context !== context)
      this.#book = choicesBook(context, decision.questions, null, this.#ways);
    this.#book.drawn = run && { figures: run.drawn(), rivals: decision.rivals };
    const working = explainChoice(this.#book, at, sayOf(as, context.money.currency));
    return working && (isLasting.test(at) ? working : withoutAddress(working));
  }
}

/** Figures of draws and of somebody's own weather are there on this screen alone: no page of their own can be had. */
const isLasting = /^(?!choices\/(sure\/|(under|met)\/own-))/;

function withoutAddress({ at: _, ...working }: Working): Working {
  return working;
}

function sayOf({ units, lang }: ShownAs, currency: string | null): Say {
  return { ...plainSay(units, lang), money: exactMoneyIn(currency) };
}
