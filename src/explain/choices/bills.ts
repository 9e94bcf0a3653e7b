import { meanMonths_L } from "../../engine/tally.ts";
import { periodBill, type Tariff, yearBill } from "../../engine/tariff.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { Input, Part, Sheet } from "../sheet.ts";
import type { Working } from "../working.ts";
import { type Asked, above, byOurs, opening, type SetOf, setAddress, setAt, sheetOf } from "./book.ts";
import { contextOf, mainsAddress, setName, setsOf } from "./sets.ts";
import { surveyedMoney } from "./surveyed.ts";

/** Mains water of a mean year by month, with a set done. */
function months_L({ context, set, by }: SetOf): number[] {
  const { valuer, worked } = context;
  return meanMonths_L(valuer.evaluator.mains(set, by), worked.weather.calendar.days);
}

function bill(of: SetOf, tariff: Tariff): number {
  return yearBill(
    tariff,
    months_L(of).map((litres) => litres / 1000),
  );
}

export function billSaved({ context, set, by }: SetOf): number | null {
  const { tariff } = context.money;
  return tariff && context.valuer.saved_money_year(set, by, tariff);
}

/** `choices/saving/KEY`: what a set takes off the bill. */
export function savingWorking(asked: Asked): Working | null {
  const [key, by] = asked.rest;
  const of = setAt(asked.book, key, by);
  const tariff = of?.context.money.tariff;
  if (!of || !tariff) return null;
  const none: SetOf = { ...of, set: new Uint8Array(of.set.length), by: "habit" };
  const sheet = sheetOf(asked);
  sheet.step(
    "moneySaved",
    {
      billBefore: opening(bill(none, tariff), setAddress("bill", none)),
      billAfter: opening(bill(of, tariff), setAddress("bill", of)),
    },
    billSaved(of)!,
  );
  return sheet.done(asked.at, titles.billSaved(setName(of)));
}

/** `choices/measure-saving/ID`: what a measure takes off the bill after the others. */
export function measureSaving(asked: Asked): Working | null {
  const [id] = asked.rest;
  const context = id === undefined ? null : contextOf(asked, id);
  const sets = context && setsOf(context, id!, false);
  if (!sets || !context.money.tariff) return null;
  const { name } = context.measures.find((measure) => measure.id === id)!;
  return addsMoneyWorking(asked, sets.with, sets.without, titles.afterMoney(name));
}

export function addsMoneyWorking(asked: Asked, more: SetOf, less: SetOf, title: string): Working | null {
  const [moneyWith, moneyWithout] = [billSaved(more), billSaved(less)];
  if (moneyWith === null || moneyWithout === null) return null;
  const sheet = sheetOf(asked);
  sheet.step(
    "addsMoney",
    {
      moneyWith: opening(moneyWith, setAddress("saving", more), setName(more)),
      moneyWithout: opening(moneyWithout, setAddress("saving", less), setName(less)),
    },
    moneyWith - moneyWithout,
  );
  return sheet.done(asked.at, title);
}

/** `choices/bill/KEY` and `choices/bill/KEY/period/K`: a year's bill, and one of its periods. */
export function billWorking(asked: Asked): Working | null {
  const isPeriod = asked.rest[1] === "period";
  const of = setAt(asked.book, asked.rest[0], asked.rest[isPeriod ? 3 : 1]);
  const tariff = of?.context.money.tariff;
  if (!of || !tariff) return null;
  const isWhole = Number.isInteger(12 / tariff.periodMonths);
  if (!isPeriod) return isWhole ? yearOfPeriods(asked, of, tariff) : periodsAlike(asked, of, tariff);
  const k = Number(asked.rest[2]);
  return isWhole && k >= 0 && k < 12 / tariff.periodMonths ? onePeriod(asked, of, tariff, k) : null;
}

function yearOfPeriods(asked: Asked, of: SetOf, tariff: Tariff): Working {
  const { periodMonths } = tariff;
  const sheet = sheetOf(asked);
  const periods = Array.from({ length: 12 / periodMonths }, (_, k): Part => {
    const value = periodBill(tariff, periodUse_kL(of, tariff, k));
    return {
      ...opening(value, setAddress("bill", of, "period", String(k))),
      name: monthsText(asked, tariff, k),
    };
  });
  sheet.sum("yearBill", parts.periodsSum, periods, bill(of, tariff));
  return sheet.done(asked.at, titles.yearBill(setName(of)));
}

function periodUse_kL(of: SetOf, { periodMonths, otherUse_kL_year }: Tariff, k: number): number {
  const months = months_L(of).slice(k * periodMonths, (k + 1) * periodMonths);
  return (otherUse_kL_year * periodMonths) / 12 + months.reduce((sum, litres) => sum + litres / 1000, 0);
}

function monthsText({ say }: Asked, { periodMonths }: Tariff, k: number): string {
  const [first, last] = [k * periodMonths, (k + 1) * periodMonths - 1];
  return first === last ? say.month(first) : `${say.month(first)}–${say.month(last)}`;
}

function onePeriod(asked: Asked, of: SetOf, tariff: Tariff, k: number): Working {
  const { periodMonths, otherUse_kL_year } = tariff;
  const sheet = sheetOf(asked);
  const first = k * periodMonths;
  const months = months_L(of).slice(first, first + periodMonths);
  const total_L = months.reduce((sum, litres) => sum + litres, 0);
  const monthParts = months.map((litres, m): Part => {
    const at = mainsAddress(of, String(first + m + 1).padStart(2, "0"));
    return { ...opening(litres, at), name: asked.say.month(first + m) };
  });
  const mains = sheet.sum("mains", parts.monthsSum, monthParts, total_L);
  const mainsKL = sheet.step("mainsToKL", { mains }, total_L / 1000);
  const other = surveyedMoney(asked, "tariff.otherUse_kL_year", (otherUse_kL_year * periodMonths) / 12);
  const use_kL = periodUse_kL(of, tariff, k);
  const useKL = sheet.step("useKL", { mainsKL, otherKL: other }, use_kL);
  billSteps(asked, sheet, tariff, useKL);
  return sheet.done(asked.at, titles.period(monthsText(asked, tariff, k), setName(of)));
}

/** Periods that do not fill a year share its use evenly. */
function periodsAlike(asked: Asked, of: SetOf, tariff: Tariff): Working {
  const sheet = sheetOf(asked);
  const months = months_L(of);
  const total_L = months.reduce((sum, litres) => sum + litres, 0);
  const monthParts = months.map((litres, m): Part => {
    return { ...opening(litres, mainsAddress(of, String(m + 1).padStart(2, "0"))), name: asked.say.month(m) };
  });
  const mains = sheet.sum("mains", parts.monthsSum, monthParts, total_L);
  const mainsKL = sheet.step("mainsToKL", { mains }, total_L / 1000);
  const other = surveyedMoney(asked, "tariff.otherUse_kL_year", tariff.otherUse_kL_year);
  const periods = byOurs(12 / tariff.periodMonths);
  const use_kL = (total_L / 1000 + tariff.otherUse_kL_year) / periods.value;
  const useKL = sheet.step("useAlike", { mainsKL, otherKL: other, periods }, use_kL);
  const one = billSteps(asked, sheet, tariff, useKL);
  sheet.step("periodsAlike", { periods, periodBill: one }, bill(of, tariff));
  return sheet.done(asked.at, titles.yearBill(setName(of)));
}

/** Each kL at the price of its step, then what follows the volume. */
function billSteps(asked: Asked, sheet: Sheet, tariff: Tariff, useKL: Input): Input {
  const { steps } = tariff;
  const priced = steps.map(({ fromKL, perKL }, k): Part => {
    const stepFrom = surveyedMoney(asked, `tariff.steps[${k}].fromKL`, fromKL);
    const stepPrice = priceOf(asked, tariff, k);
    const next = steps[k + 1];
    const within_kL = Math.min(useKL.value, next?.fromKL ?? Number.POSITIVE_INFINITY) - fromKL;
    const cost = Math.max(0, within_kL) * perKL;
    const name = parts.tariffStep(asked.say.number(fromKL));
    if (!next) return { ...sheet.step("lastStep", { useKL, stepFrom, stepPrice }, cost), name };
    const stepTo = surveyedMoney(asked, `tariff.steps[${k + 1}].fromKL`, next.fromKL);
    return { ...sheet.step("stepCost", { useKL, stepTo, stepFrom, stepPrice }, cost), name };
  });
  const also = tariff.also_perKL * useKL.value;
  if (tariff.also_perKL > 0)
    priced.push({
      ...sheet.step("alsoCost", { useKL, alsoPrice: alsoPrice(asked, sheet, tariff) }, also),
      name: parts.alsoSum,
    });
  return sheet.sum("periodBill", parts.stepsSum, priced, periodBill(tariff, useKL.value));
}

/** The price of a step; one price in all stands under its own field. */
function priceOf(asked: Asked, { steps }: Tariff, k: number): Input {
  const { survey } = asked.book.context.worked;
  const path = survey.tariff?.steps ? `tariff.steps[${k}].perKL` : "tariff.perKL";
  return surveyedMoney(asked, path, steps[k]!.perKL);
}

function alsoPrice(asked: Asked, sheet: Sheet, { also_perKL }: Tariff): Input {
  const charges = asked.book.context.worked.survey.tariff?.perKLAlso ?? [];
  const each = charges.map(({ name, perKL }, k): Part => {
    return { ...surveyedMoney(asked, `tariff.perKLAlso[${k}].perKL`, perKL), name };
  });
  const [only] = each;
  return each.length === 1 && only ? only : sheet.sum("alsoPrice", parts.alsoSum, each, also_perKL);
}

/** `choices/top-price`: what the dearest kL costs. */
export function topPriceWorking(asked: Asked): Working | null {
  const { tariff } = asked.book.context.money;
  if (!tariff || asked.rest.length > 0) return null;
  const sheet = sheetOf(asked);
  const stepPrice = priceOf(asked, tariff, tariff.steps.length - 1);
  const also = tariff.also_perKL > 0 ? alsoPrice(asked, sheet, tariff) : above(0);
  sheet.step("topPrice", { stepPrice, alsoPrice: also }, stepPrice.value + tariff.also_perKL);
  return sheet.done(asked.at, titles.topPrice);
}
