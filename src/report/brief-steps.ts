import { waterToNeed } from "../survey/measures/chosen.ts";
import type { BriefNames } from "./brief.ts";
import type { BriefWords } from "./brief-words.ts";
import type { GroundsChoices } from "./choices-schema.ts";

const most = 3;
/** Less than this is no step: 50 L a year. */
const nothing_kL = 0.05;

/**
 * The three best next steps, the free first: watering to need; what the best set buys, the cheapest kL first; what no
 * measure does yet and a quote would decide; then the least dear of what is left, said to be not worth it where so.
 */
export function stepsOf(choices: GroundsChoices, words: BriefWords, names: BriefNames): string[] {
  return [
    ...needStep(choices, words),
    ...bestSteps(choices, words),
    ...quoteSteps(choices, words, names),
    ...restSteps(choices, words),
  ].slice(0, most);
}

function needStep({ shares, plans, mains }: GroundsChoices, words: BriefWords): string[] {
  const row = shares.find(({ id }) => id === waterToNeed);
  const saved = row?.share_kL_year ?? mains.today_kL_year - mains.need_kL_year;
  return saved > nothing_kL && plans.overWatered.length > 0
    ? [words.stepNeed(saved, row?.saved_money_year ?? null)]
    : [];
}

type MeasureRow = GroundsChoices["measures"][number];

function perKL({ cost, after_kL_year }: MeasureRow): number {
  return (cost ?? 0) / Math.max(after_kL_year, 1e-9);
}

function bestSteps({ measures, best }: GroundsChoices, words: BriefWords): string[] {
  return measures
    .filter(({ id, after_kL_year }) => best.measures.includes(id) && after_kL_year > nothing_kL)
    .sort((a, b) => perKL(a) - perKL(b))
    .map(({ name, after_kL_year, cost, npv, quotedBy }) =>
      words.stepMeasure(name, after_kL_year, cost ?? 0, npv, quotedBy),
    );
}

function quoteSteps(choices: GroundsChoices, words: BriefWords, { bed, tank }: BriefNames): string[] {
  const named = (facts: Readonly<Record<string, string | number>>) => ({
    ...facts,
    ...(typeof facts.bed === "string" && { bed: bed(facts.bed) }),
    ...(typeof facts.tank === "string" && { tank: tank(facts.tank) }),
  });
  const proposed = choices.proposals
    .filter(({ after_kL_year }) => (after_kL_year ?? 0) > nothing_kL)
    .map(({ code, facts, after_kL_year, worthUpTo }) => ({
      kL: after_kL_year!,
      text: words.stepQuote(words.proposal(code, named(facts)), after_kL_year!, worthUpTo),
    }));
  const uncosted = choices.measures
    .filter(({ cost, after_kL_year }) => cost === null && after_kL_year > nothing_kL)
    .map(({ name, after_kL_year }) => ({ kL: after_kL_year, text: words.stepNoCost(name, after_kL_year) }));
  return [...proposed, ...uncosted].sort((a, b) => b.kL - a.kL).map(({ text }) => text);
}

function restSteps({ measures, best, outlook }: GroundsChoices, words: BriefWords): string[] {
  return measures
    .filter(
      ({ id, cost, after_kL_year }) =>
        cost !== null && !best.measures.includes(id) && after_kL_year > nothing_kL,
    )
    .sort((a, b) => perKL(a) - perKL(b))
    .map(({ name, after_kL_year, cost, costPerKL }) =>
      words.stepNotWorth(name, after_kL_year, cost!, costPerKL, outlook.topPerKL),
    );
}
