import type { WateredBy } from "../engine/bed-variant.ts";
import type { Frame } from "../engine/frame.ts";
import { type SetEvaluator, setEvaluator } from "../engine/set-evaluator.ts";
import { type Share, shapley } from "../engine/shapley.ts";
import { meanMonths_L, type Tally, total_L } from "../engine/tally.ts";
import { savedMoney, type Tariff } from "../engine/tariff.ts";
import { randomStream } from "../engine/weather/rng.ts";
import { perYear } from "../engine/years.ts";
import { waterToNeed } from "../survey/measures/chosen.ts";
import { variedGrounds } from "../survey/measures/varied.ts";
import type { PickFigure } from "../survey/resolve-assumed.ts";
import type { Survey, SurveyMeasure } from "../survey/survey.ts";

/** Sets of measures valued on one record: what mains water each leaves, and what it saves in water and money. */
export interface Valuer {
  measures: readonly SurveyMeasure[];
  evaluator: SetEvaluator;
  frame: Frame;
  /** Mains water today, uses that a measure may move on to a tank included. */
  today: Tally;
  saved_kL_year(set: Uint8Array, by: WateredBy): number;
  /** Worth of what a set saves in a mean year, at the tariff given. */
  saved_money_year(set: Uint8Array, by: WateredBy, tariff: Tariff): number;
}

/** @param measures what may be chosen, in the survey's order */
export function valuerOf(
  survey: Survey,
  measures: readonly SurveyMeasure[],
  frame: Frame,
  pick?: PickFigure,
): Valuer {
  const { days } = frame.weather.calendar;
  const evaluator = setEvaluator(variedGrounds(survey, measures, pick), frame);
  const today = evaluator.mains(new Uint8Array(measures.length), "habit");
  const today_L = total_L(today);
  const monthly_kL = (tally: Tally) => meanMonths_L(tally, days).map((litres) => litres / 1000);
  const today_kL = monthly_kL(today);
  return {
    measures,
    evaluator,
    frame,
    today,
    saved_kL_year: (set, by) => perYear(today_L - total_L(evaluator.mains(set, by)), days) / 1000,
    saved_money_year: (set, by, tariff) => savedMoney(tariff, today_kL, monthly_kL(evaluator.mains(set, by))),
  };
}

/** A member of the plan and its part of what the plan saves. */
export interface Member {
  id: string;
  measure: SurveyMeasure | null;
  water_kL_year: Share;
  /** null without a price. */
  money_year: Share | null;
}

/** Draws of orders for large plans; the same plan gives the same shares each time. */
const ordersSeed = 1;

/** The members of a plan, measures in the survey's order and watering to need last, with their Shapley shares. */
export function membersOf(valuer: Valuer, tariff: Tariff | null): Member[] {
  const { measures } = valuer;
  const count = measures.length + 1;
  const byNeed = (set: Uint8Array): [Uint8Array, WateredBy] => [
    set.subarray(0, measures.length),
    set[measures.length] ? "need" : "habit",
  ];
  const water = shapley(count, (set) => valuer.saved_kL_year(...byNeed(set)), randomStream(ordersSeed));
  const money =
    tariff &&
    shapley(count, (set) => valuer.saved_money_year(...byNeed(set), tariff), randomStream(ordersSeed));
  return water.map((water_kL_year, k) => ({
    id: measures[k]?.id ?? waterToNeed,
    measure: measures[k] ?? null,
    water_kL_year,
    money_year: money && money[k]!,
  }));
}
