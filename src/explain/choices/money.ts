import {
  breakEvenPerKL,
  breakEvenQuote,
  capitalRecovery,
  costPerKL,
  discountedPayback,
  flowsOf,
  netPresentValue,
  noOutlay,
  type Outlay,
  presentValue,
  simplePayback,
} from "../../engine/money.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { TermKey } from "../../words/en/explain-terms.ts";
import type { Input, Part, Sheet } from "../sheet.ts";
import type { Working } from "../working.ts";
import { type Asked, above, ofRun, opening, sheetOf } from "./book.ts";
import { capitalOf, type Line, linesOf, type Purse, purseAddress, purseAt } from "./purses.ts";
import { surveyedMoney } from "./surveyed.ts";

type What = keyof typeof titles.purse;

/** `choices/purse/KIND/OF/WHAT`: what something is worth in money. */
export function purseWorking(asked: Asked): Working | null {
  const [kind, of, what, ...rest] = asked.rest;
  const purse = purseAt(asked, kind, of);
  if (!purse || what === undefined || !Object.hasOwn(workings, what)) return null;
  return workings[what as What](asked, purse, rest);
}

const workings: Readonly<
  Record<What, (asked: Asked, purse: Purse, rest: readonly string[]) => Working | null>
> = {
  npv: (asked, purse) => {
    if (!purse.saved) return null;
    const { outlay, saved, outlook } = purse;
    const sheet = sheetOf(asked);
    sheet.sum(
      "npv",
      parts.yearsSum,
      presentParts(purse, saved.value),
      netPresentValue(outlay, saved.value, outlook),
    );
    return sheet.done(asked.at, titles.purse.npv(purse.name));
  },
  year: (asked, purse, [text]) => oneYear(asked, purse, Number(text)),
  payback: (asked, purse) => {
    const value = purse.saved && simplePayback(purse.outlay, purse.saved.value);
    if (value === null || !purse.saved || value === 0) return null;
    const sheet = sheetOf(asked);
    const upkeep = upkeepOf(asked, purse);
    sheet.step("payback", { capital: capitalOf(purse), moneySaved: purse.saved, upkeep }, value);
    return sheet.done(asked.at, titles.purse.payback(purse.name));
  },
  "discounted-payback": discounted,
  "cost-per-kl": perKL,
  "pays-from": (asked, purse) => {
    const { outlay, outlook, saved_kL } = purse;
    const value = saved_kL && breakEvenPerKL(outlay, saved_kL.value, outlook);
    if (value === null || !saved_kL) return null;
    const sheet = sheetOf(asked);
    const presentCost = opening(costOver(purse, outlay), purseAddress(purse, "present-cost"));
    sheet.step("breakEvenPrice", { presentCost, savedKL: saved_kL, presentOne: oneOf(purse) }, value);
    return sheet.done(asked.at, titles.purse["pays-from"](purse.name));
  },
  "pays-up-to": upTo,
  "present-cost": (asked, purse) => costs(asked, purse, purse.outlay, "presentCost", "present-cost"),
  "present-lines": (asked, purse) => costs(asked, purse, linesAlone(purse), "presentLines", "present-lines"),
  "present-upkeep": (asked, purse) =>
    costs(asked, purse, upkeepAlone(purse), "presentUpkeep", "present-upkeep"),
  "present-one": (asked, purse) => {
    const sheet = sheetOf(asked);
    const ones = flowsOf(noOutlay, 1, purse.outlook).map((flow, t): Part => {
      return ofYear(presentOf(flow, t, purse), t);
    });
    sheet.sum("presentOne", parts.yearsSum, ones.slice(1), oneOf(purse).value);
    return sheet.done(asked.at, titles.purse["present-one"](purse.name));
  },
};

/** A flow of year t in today's money. */
function presentOf(flow: number, t: number, { outlook: { discountShare } }: Purse): number {
  return presentValue([...Array<number>(t).fill(0), flow], discountShare);
}

function ofYear(value: number, t: number): Part {
  const name = parts.year(String(t));
  return { ...ofRun(value, parts.yearsSum, name), name };
}

function presentParts(purse: Purse, saved: number): Part[] {
  return flowsOf(purse.outlay, saved, purse.outlook).map((flow, t): Part => {
    const at = purseAddress(purse, "year", String(t));
    return { ...opening(presentOf(flow, t, purse), at), name: parts.year(String(t)) };
  });
}

function oneYear(asked: Asked, purse: Purse, t: number): Working | null {
  const { outlay, outlook, saved } = purse;
  if (!saved || !Number.isInteger(t) || t < 0 || t > outlook.horizon_years) return null;
  const flow = flowsOf(outlay, saved.value, outlook)[t]!;
  const sheet = sheetOf(asked);
  const yearsFlow =
    t === 0
      ? sheet.step("firstFlow", { capital: capitalOf(purse) }, flow)
      : laterFlow(asked, sheet, purse, t, flow);
  const discount = surveyedMoney(asked, "money.discountShare", outlook.discountShare);
  sheet.step("present", { yearsFlow, discount, yearNumber: above(t) }, presentOf(flow, t, purse));
  return sheet.done(asked.at, titles.purse.year(purse.name, String(t)));
}

function laterFlow(asked: Asked, sheet: Sheet, purse: Purse, t: number, flow: number): Input {
  const { outlay, outlook } = purse;
  const lines = t < outlook.horizon_years ? linesOf(asked, purse) : [];
  const bought = lines.flatMap((line) => Array<Line>(timesIn(t, line.life.value)).fill(line));
  const again = -flowsOf({ ...outlay, upkeepPerYear: 0 }, 0, outlook)[t]!;
  const sum = bought.length > 0 ? sheet.sum("again", parts.linesSum, bought.map(asPart), again) : above(0);
  for (const { life } of bought) sheet.list([{ ...life, name: life.name! }], "years");
  return sheet.step(
    "yearFlow",
    {
      moneySaved: purse.saved!,
      rise: surveyedMoney(asked, "tariff.riseShare", outlook.riseShare),
      yearNumber: above(t),
      upkeep: upkeepOf(asked, purse),
      again: sum,
    },
    flow,
  );
}

const asPart = ({ what, cost }: { what: string; cost: Input }): Part => ({ ...cost, name: what });

/** How often a part whose life is that long is bought again at the end of year t. */
function timesIn(t: number, life_years: number): number {
  let times = 0;
  for (let k = 1; Math.ceil(k * life_years) <= t; k++) if (Math.ceil(k * life_years) === t) times++;
  return times;
}

function upkeepOf(asked: Asked, { context, set, outlay }: Purse): Input {
  const places = context.measures.flatMap(({ upkeepPerYear = 0 }, k) =>
    set[k] === 1 && upkeepPerYear > 0 ? k : [],
  );
  const [place] = places;
  if (places.length > 1) return ofRun(outlay.upkeepPerYear, parts.measuresSum);
  return surveyedMoney(asked, `measures[${place ?? set.indexOf(1)}].upkeepPerYear`, outlay.upkeepPerYear);
}

function discounted(asked: Asked, purse: Purse): Working | null {
  const { outlay, saved, outlook } = purse;
  const value = saved && discountedPayback(outlay, saved.value, outlook);
  if (value === null || !saved || value === 0) return null;
  const years = presentParts(purse, saved.value);
  const t = Math.floor(value) + 1;
  const before = years.slice(0, t);
  const left = -before.reduce((sum, part) => sum + part.value, 0);
  const sheet = sheetOf(asked);
  sheet.sum("npv", parts.yearsSum, before, -left);
  const leftToPay = sheet.plain(
    "leftToPay",
    "−{NPV}",
    parts.stillOpen,
    { NPV: { value: -left, unit: "money" } },
    left,
  );
  sheet.step("discountedPayback", { yearNumber: above(t), leftToPay, present: years[t]! }, value);
  return sheet.done(asked.at, titles.purse["discounted-payback"](purse.name));
}

function perKL(asked: Asked, purse: Purse): Working | null {
  const { outlay, outlook, saved_kL } = purse;
  const value = saved_kL && costPerKL(outlay, saved_kL.value, outlook.discountShare);
  if (value === null || !saved_kL) return null;
  const sheet = sheetOf(asked);
  const lines = linesOf(asked, purse);
  const yearly = lines.map(({ what, cost, life }): Part => {
    const recovery = recoverySteps(asked, sheet, purse, life);
    const a_year = cost.value * recovery.value;
    return { ...sheet.step("lineYearly", { lineCost: cost, recovery }, a_year), name: what };
  });
  const all = yearly.reduce((sum, part) => sum + part.value, 0);
  const yearlyLines = sheet.sum("yearlyLines", parts.linesSum, yearly, all);
  const yearlyGrant = grantSteps(asked, sheet, purse);
  const upkeep = upkeepOf(asked, purse);
  const whole = Math.max(0, all - yearlyGrant.value) + upkeep.value;
  const yearlyCost = sheet.step("yearlyAll", { yearlyLines, yearlyGrant, upkeep }, whole);
  sheet.step("costPerKL", { yearlyCost, savedKL: saved_kL }, value);
  return sheet.done(asked.at, titles.purse["cost-per-kl"](purse.name));
}

function recoverySteps(asked: Asked, sheet: Sheet, { outlook }: Purse, life: Input): Input {
  const value = capitalRecovery(outlook.discountShare, life.value);
  if (outlook.discountShare === 0) return sheet.step("recoveryAtNone", { life }, value);
  const discount = surveyedMoney(asked, "money.discountShare", outlook.discountShare);
  return sheet.step("recovery", { discount, life }, value);
}

/** A grant is spread over the longest life. */
function grantSteps(asked: Asked, sheet: Sheet, purse: Purse): Input {
  const { outlay } = purse;
  const granted = Math.min(
    outlay.grant,
    outlay.lines.reduce((sum, { cost }) => sum + cost, 0),
  );
  if (granted === 0) return above(0);
  const longest = linesOf(asked, purse).reduce((a, b) => (b.life.value > a.life.value ? b : a));
  const recovery = recoverySteps(asked, sheet, purse, longest.life);
  const lineCost = ofRun(granted, parts.grants);
  return sheet.step("grantYearly", { lineCost, recovery }, granted * recovery.value);
}

function linesAlone({ outlay }: Purse): Outlay {
  return { ...noOutlay, lines: outlay.lines };
}

function upkeepAlone({ outlay }: Purse): Outlay {
  return { ...noOutlay, upkeepPerYear: outlay.upkeepPerYear };
}

function costOver({ outlook }: Purse, outlay: Outlay): number {
  return -netPresentValue(outlay, 0, outlook);
}

function oneOf(purse: Purse): Input {
  return opening(netPresentValue(noOutlay, 1, purse.outlook), purseAddress(purse, "present-one"));
}

function costs(asked: Asked, purse: Purse, outlay: Outlay, term: TermKey, what: What): Working {
  const sheet = sheetOf(asked);
  const years = flowsOf(outlay, 0, purse.outlook).flatMap((flow, t): Part[] =>
    flow === 0 ? [] : [ofYear(presentOf(-flow, t, purse), t)],
  );
  sheet.sum(term, parts.yearsSum, years, costOver(purse, outlay));
  return sheet.done(asked.at, titles.purse[what](purse.name, ""));
}

function upTo(asked: Asked, purse: Purse): Working | null {
  const { outlay, saved, outlook } = purse;
  if (!saved) return null;
  if (outlay.lines.length === 0) return worthAlone(asked, purse, saved);
  const value = breakEvenQuote(outlay, saved.value, outlook);
  if (value === null) return null;
  const sheet = sheetOf(asked);
  const lines = linesOf(asked, purse).map(asPart);
  const sum = lines.reduce((all, part) => all + part.value, 0);
  const quoted = sheet.sum("quoted", parts.linesSum, lines, sum);
  sheet.step(
    "breakEvenQuote",
    {
      quoted,
      moneySaved: saved,
      presentOne: oneOf(purse),
      presentUpkeep: opening(costOver(purse, upkeepAlone(purse)), purseAddress(purse, "present-upkeep")),
      grant: ofRun(Math.min(outlay.grant, sum), parts.grants),
      presentLines: opening(costOver(purse, linesAlone(purse)), purseAddress(purse, "present-lines")),
    },
    value,
  );
  return sheet.done(asked.at, titles.purse["pays-up-to"](purse.name));
}

/** Without a quote it pays up to what its saving is worth. */
function worthAlone(asked: Asked, purse: Purse, saved: Input): Working {
  const sheet = sheetOf(asked);
  const value = netPresentValue(noOutlay, saved.value, purse.outlook);
  sheet.step("worthAlone", { moneySaved: saved, presentOne: oneOf(purse) }, value);
  return sheet.done(asked.at, titles.purse["pays-up-to"](purse.name));
}
