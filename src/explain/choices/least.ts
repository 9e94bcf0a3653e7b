import { byYear_L } from "../../engine/tally.ts";
import { planRows } from "../../report/choices-measures.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { type Asked, address, ofRun, opening, type SetOf, sheetOf } from "./book.ts";
import { pointSteps } from "./points.ts";
import { mainsAddress } from "./sets.ts";

/** `choices/least`, `/p50` and `/YEAR`: the plan in which no bed gets more than today. */
export function leastWorking(asked: Asked): Working | null {
  const [what, ...more] = asked.rest;
  const plans = planRows(asked.book.context);
  if (!plans.noMoreThanToday || more.length > 0) return null;
  if (what === undefined) return wholeYear(asked, plans);
  const { years } = asked.book.context.worked.ready.frame;
  if (what === "p50") return years.length > 0 ? middleYear(asked, years) : null;
  return years.includes(Number(what)) ? oneYear(asked, Number(what)) : null;
}

function wholeYear(
  asked: Asked,
  { noMoreThanToday, toNeed, underWatered }: ReturnType<typeof planRows>,
): Working {
  const { context } = asked.book;
  const sheet = sheetOf(asked);
  const names = underWatered.map(({ bed }) => context.worked.survey.beds.find(({ id }) => id === bed)!.name);
  const plan: SetOf = { context, set: context.plan, by: "need" };
  const least_kL = noMoreThanToday!.plan_kL_year;
  sheet.step(
    "heldBack",
    {
      withNeed: opening(toNeed.plan_kL_year, mainsAddress(plan)),
      heldBack: ofRun(toNeed.plan_kL_year - least_kL, parts.heldBack(asked.say.list(names))),
    },
    least_kL,
  );
  return sheet.done(asked.at, titles.least);
}

/** Mains water of a whole year, as today and with no bed more than today. */
function yearOf({ book: { context } }: Asked, year: number): { today_kL: number; least_kL: number } {
  const { valuer, plan, worked } = context;
  const k = worked.ready.frame.years.indexOf(year);
  return {
    today_kL: byYear_L(valuer.today)[k]! / 1000,
    least_kL: byYear_L(valuer.evaluator.mains(plan, "least"))[k]! / 1000,
  };
}

function oneYear(asked: Asked, year: number): Working {
  const { context } = asked.book;
  const { today_kL, least_kL } = yearOf(asked, year);
  const none: SetOf = { context, set: new Uint8Array(context.plan.length), by: "habit" };
  const sheet = sheetOf(asked);
  const todayKL = opening(today_kL, mainsAddress(none, String(year)));
  sheet.step("leastYear", { todayKL, planKL: ofRun(least_kL, parts.leastRun) }, today_kL - least_kL);
  return sheet.done(asked.at, titles.leastYear(String(year)));
}

function middleYear(asked: Asked, years: readonly number[]): Working {
  const sheet = sheetOf(asked);
  const figures = years.map((year): Part => {
    const { today_kL, least_kL } = yearOf(asked, year);
    const name = String(year);
    return { ...opening(today_kL - least_kL, address("least", [name]), name), name };
  });
  sheet.list(figures, "kL");
  pointSteps(sheet, "p50", figures, false);
  return sheet.done(asked.at, titles.leastPoint);
}
