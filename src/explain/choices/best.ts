import { capital } from "../../engine/money.ts";
import { orderRows } from "../../report/choices-best.ts";
import {
  bestSets,
  bestWithin,
  type ChoicesContext,
  npvOfSet,
  outlayOfSet,
} from "../../report/choices-context.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { Input, Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { type Asked, address, opening, type SetOf, setAddress, setAt, setKey, sheetOf } from "./book.ts";
import { saved_kL, setName } from "./sets.ts";
import { surveyedMoney } from "./surveyed.ts";

/** Sets shown beside the best. */
const shown = 4;
const letters = ["first", "second", "third", "fourth"] as const;

/** `choices/best/KEY/water|money`: why a set is the best for its money, beside the sets that come next. */
export function bestWorking(asked: Asked): Working | null {
  const [key, what] = asked.rest;
  const of = setAt(asked.book, key, undefined);
  if (!of || (what !== "water" && what !== "money")) return null;
  const { context, set } = of;
  const isMoney = what === "money";
  const worthOf = (one: Uint8Array) =>
    isMoney ? npvOfSet(context, one) : saved_kL({ context, set: one, by: "need" });
  const mine = worthOf(set);
  if (mine === null) return null;
  const cost = (one: Uint8Array) => capital(outlayOfSet(context, one));
  const within = setsValued(context, isMoney).filter((one) => cost(one) <= cost(set) + 1e-9);
  const ranked = within
    .map((one) => ({ set: one, value: worthOf(one)! }))
    .sort((a, b) => b.value - a.value || cost(a.set) - cost(b.set));
  const others = ranked.filter((one) => setKey(context, one.set) !== key).slice(0, shown - 1);
  if (others.some(({ value }) => value > mine + 1e-9 * Math.abs(mine))) return null;
  const row = [{ set, value: mine }, ...others];
  const sheet = sheetOf(asked);
  const unit = isMoney ? "money" : "kL";
  const said = row.map(({ set: one, value }): Part => {
    const set_: SetOf = { context, set: one, by: "need" };
    const at = isMoney
      ? address("purse", ["set", setKey(context, one), "npv"])
      : setAddress("set", set_, "saved");
    return { ...opening(value, at), name: setName(set_) };
  });
  sheet.list(said, unit);
  sheet.plain(
    isMoney ? "npv" : "setSaved",
    said.length === 1 ? "{first}" : `max(${said.map((_, k) => `{${letters[k]}}`).join(", ")})`,
    parts.tries(asked.say.number(within.length)),
    Object.fromEntries(said.map(({ value }, k) => [letters[k]!, { value, unit }] as const)),
    mine,
  );
  return sheet.done(asked.at, (isMoney ? titles.bestWorth : titles.best)(setName(of)));
}

/** The sets that the search for the best one valued. */
function setsValued(context: ChoicesContext, isMoney: boolean): Uint8Array[] {
  const { valuer } = context;
  const met = new Map<string, Uint8Array>();
  const meet = (set: Uint8Array) => met.set(set.join(""), set.slice());
  const watched: ChoicesContext["valuer"] = {
    ...valuer,
    saved_kL_year: (set, by) => {
      if (!isMoney) meet(set);
      return valuer.saved_kL_year(set, by);
    },
    saved_money_year: (set, by, tariff) => {
      if (isMoney) meet(set);
      return valuer.saved_money_year(set, by, tariff);
    },
  };
  bestSets(context, watched);
  return [...met.values()];
}

/** `choices/order/K`: the year in which step K of the order over years has its money. */
export function orderWorking(asked: Asked): Working | null {
  const { context } = asked.book;
  const order = orderRows(context, bestWithin(bestSets(context), context.budget));
  const step = order?.steps[Number(asked.rest[0])];
  if (!order || !step) return null;
  const ids = order.steps.filter(({ year }) => year <= step.year).flatMap(({ measures }) => measures);
  const set = Uint8Array.from(context.measures, ({ id }) => (ids.includes(id) ? 1 : 0));
  const spent: Input = opening(step.spent, address("cost", ["set", setKey(context, set)]));
  const yearBudget = surveyedMoney(asked, "money.budgetPerYear", order.budgetPerYear);
  const sheet = sheetOf(asked);
  sheet.step("paidFor", { spent, yearBudget }, step.spent / order.budgetPerYear);
  return sheet.done(asked.at, titles.order(String(step.year)));
}
