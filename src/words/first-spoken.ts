import type { FirstOutcome } from "../report/first-answer.ts";
import { firstWords } from "./en/first.ts";
import type { Formatter } from "./format.ts";

/** A sentence with its figures apart, so that a page can mark them. */
export type FirstSentence = readonly (string | { figure: string })[];

export interface FirstSpoken {
  /** Said before all else: that the garden gets too little. */
  first: string | null;
  headline: FirstSentence;
  after: readonly string[];
}

/** Below this a year, need is as good as none: kL. */
const none_kL = 0.05;

/** The first answer in words. No saving is claimed where today's watering is not known. */
export function speakFirst(outcome: FirstOutcome, say: Formatter): FirstSpoken {
  const { need_kL, today } = outcome;
  const needs = need_kL.p90 > none_kL;
  if (today === null)
    return { first: null, headline: needHeadline(outcome, say), after: ofNeed(outcome, say) };
  const { beyond_kL, giveUp_kL, given_kL } = today;
  const between = (points: { p10: number; p90: number }, sign: 1 | -1) =>
    sign === 1
      ? ([say.yearlyBare(points.p10), say.yearly(points.p90)] as const)
      : ([say.yearlyBare(-points.p90), say.yearly(-points.p10)] as const);
  const first =
    beyond_kL.p90 < 0 ? firstWords.short(say.yearly(-beyond_kL.p50), ...between(beyond_kL, -1)) : null;
  const after = [
    firstWords.given(say.yearly(given_kL.p50)),
    ...(needs
      ? [firstWords.needAfter(say.yearly(need_kL.p50), ...between(need_kL, 1))]
      : [firstWords.needNone]),
    ...broughtOf(outcome, say),
  ];
  return { first, headline: savingHeadline(giveUp_kL, say), after };
}

function needHeadline({ need_kL, isPerArea, area_m2 }: FirstOutcome, say: Formatter): FirstSentence {
  if (need_kL.p90 <= none_kL) return [`${firstWords.needNone}.`];
  const figure = say.yearly(need_kL.p50);
  const [start = "", end = ""] = (
    isPerArea ? firstWords.needPerArea(say.area(area_m2), figure) : firstWords.need(figure)
  ).split(figure);
  return [
    start,
    { figure },
    `${end}, ${firstWords.between(say.yearlyBare(need_kL.p10), say.yearly(need_kL.p90))}`,
  ];
}

function ofNeed(outcome: FirstOutcome, say: Formatter): string[] {
  return [...broughtOf(outcome, say), firstWords.noSaving];
}

/** What roof and tank bring; by the hundred square metres it would say nothing. */
function broughtOf({ brings_kL, isPerArea }: FirstOutcome, say: Formatter): string[] {
  if (brings_kL === null || isPerArea) return [];
  if (brings_kL.p90 <= none_kL) return [firstWords.bringsNothing];
  const { p10, p50, p90 } = brings_kL;
  return [firstWords.brings(say.yearly(p50), say.yearlyBare(p10), say.yearly(p90))];
}

function savingHeadline(giveUp: { p10: number; p50: number; p90: number }, say: Formatter): FirstSentence {
  const { p10, p50, p90 } = giveUp;
  if (p10 < 0 && p90 > 0 && Math.abs(p50) < 0.3 * (p90 - p10))
    return [firstWords.evenOut(say.yearly(-p10), say.yearly(p90))];
  const isLess = p50 < 0;
  const figure = say.yearly(Math.abs(p50));
  const [start = "", end = ""] = (isLess ? firstWords.takeMore(figure) : firstWords.giveUp(figure)).split(
    figure,
  );
  const [low, high] = isLess ? [-p90, -p10] : [p10, p90];
  const ends =
    low < 0
      ? firstWords.mayTurn(say.yearly(high))
      : firstWords.between(say.yearlyBare(low), say.yearly(high));
  return [start, { figure }, `${end}, ${ends}`];
}
