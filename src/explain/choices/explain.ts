import { decide } from "../../report/choices.ts";
import type { WorkedOut } from "../../report/work-out.ts";
import { exactMoneyIn } from "../../words/money.ts";
import { explain } from "../explain.ts";
import type { Say } from "../say.ts";
import type { Working } from "../working.ts";
import { banWorking, roofWorking } from "./ban.ts";
import { bestWorking, orderWorking } from "./best.ts";
import { billWorking, measureSaving, savingWorking, topPriceWorking } from "./bills.ts";
import { type Asked, type ChoicesBook, choicesBook, choicesPrefix } from "./book.ts";
import { underWorking, withWorking } from "./elsewhere.ts";
import { leastWorking } from "./least.ts";
import { purseWorking } from "./money.ts";
import { costWorking, offerWorth } from "./purses.ts";
import { measureWorking, setWorking, shortWorking } from "./sets.ts";
import { addedWorking, shareWorking } from "./shares.ts";
import { moreWorking, mostWorking, sizeWorking } from "./sizes.ts";
import { sureWorking } from "./sure.ts";
import { outlookWorking } from "./surveyed.ts";
import { metWorking } from "./weather.ts";

const topics: Readonly<Record<string, (asked: Asked) => Working | null>> = {
  set: setWorking,
  least: leastWorking,
  short: shortWorking,
  measure: measureWorking,
  worth: offerWorth,
  share: shareWorking,
  added: addedWorking,
  saving: savingWorking,
  "measure-saving": measureSaving,
  bill: billWorking,
  "top-price": topPriceWorking,
  cost: costWorking,
  purse: purseWorking,
  best: bestWorking,
  order: orderWorking,
  size: sizeWorking,
  most: mostWorking,
  more: moreWorking,
  roof: roofWorking,
  ban: banWorking,
  outlook: outlookWorking,
  met: metWorking,
  sure: sureWorking,
  with: withWorking,
  under: underWorking,
};

/**
 * The working of a figure of the decision; of one of the grounds where the address is such a one.
 * @returns null where the address leads nowhere: no such measure, no price, no draw yet
 */
export function explainChoice(book: ChoicesBook, at: string, say: Say): Working | null {
  if (!at.startsWith(choicesPrefix)) return explain(book.context.worked, at, say);
  const [topic = "", ...rest] = at.slice(choicesPrefix.length).split("/");
  return Object.hasOwn(topics, topic) ? topics[topic]!({ book, say, at, rest }) : null;
}

const decided = new WeakMap<WorkedOut, ChoicesBook>();

/**
 * The same from a survey worked out: its decision is made when first asked for. Nothing is drawn, so what draws say
 * leads nowhere here.
 */
export function explainDecided(worked: WorkedOut, at: string, say: Say): Working | null {
  let book = decided.get(worked);
  if (!book) {
    const { context, questions } = decide(worked, { budget: null });
    book = choicesBook(context, questions);
    decided.set(worked, book);
  }
  return explainChoice(book, at, { ...say, money: exactMoneyIn(worked.money.currency) });
}
