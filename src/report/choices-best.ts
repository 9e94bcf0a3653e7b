import type { Step } from "../engine/frontier.ts";
import { capital } from "../engine/money.ts";
import { bestOrder } from "../engine/year-order.ts";
import {
  type BestSets,
  bestSets,
  bestWithin,
  type ChoicesContext,
  idsOf,
  npvOfSet,
} from "./choices-context.ts";
import type { GroundsChoices } from "./choices-schema.ts";

type StepRow = GroundsChoices["frontier"][number];
type ChangeRow = GroundsChoices["wouldChange"][number];

export function stepRow(context: ChoicesContext, step: Step): StepRow {
  return {
    cost: step.cost,
    measures: idsOf(context, step.set),
    saved_kL_year: context.valuer.saved_kL_year(step.set, "need"),
    npv: npvOfSet(context, step.set),
  };
}

/** How much dearer a quote is asked to be. */
const dearer = 1.2;
/** Quotes asked to be dearer: those of the best set, the dearest first, and no more than these. */
const mostAsked = 5;

/** Whether the best set for the budget stays so with each of its quotes dearer. */
export function dearerQuotes(context: ChoicesContext, best: Step): ChangeRow[] {
  const { measures, outlays, budget } = context;
  const inBest = measures.flatMap((_, place) => (best.set[place] === 1 && outlays[place] ? place : []));
  return inBest
    .sort((a, b) => capital(outlays[b]!) - capital(outlays[a]!))
    .slice(0, mostAsked)
    .map((place) => {
      const then = bestWithin(bestSets(context, context.valuer, { place, times: dearer }), budget);
      return {
        what: "quote-dearer" as const,
        of: measures[place]!.id,
        measures: idsOf(context, then.set),
        isChange: !sameSet(then.set, best.set),
      };
    });
}

export function sameSet(one: Uint8Array, other: Uint8Array): boolean {
  return one.every((isIn, k) => isIn === other[k]);
}

/** What of the best set first, with a budget a year. */
export function orderRows(context: ChoicesContext, best: Step): GroundsChoices["order"] {
  const { measures, outlays, valuer, worked, money } = context;
  const budgetPerYear = worked.survey.money?.budgetPerYear;
  if (budgetPerYear === undefined) return null;
  const places = measures.flatMap((_, place) => (best.set[place] === 1 && outlays[place] ? place : []));
  const costs = places.map((place) => capital(outlays[place]!));
  const setOf = (mask: number) => {
    const set = new Uint8Array(measures.length);
    for (const [k, place] of places.entries()) set[place] = (mask >> k) & 1;
    return set;
  };
  const years = money.horizon_years ?? money.usualHorizon_years;
  const steps = bestOrder(costs, budgetPerYear, years, (mask) => valuer.saved_kL_year(setOf(mask), "need"));
  return (
    steps && {
      budgetPerYear,
      steps: steps.map(({ year, measures: taken, spent, saved }) => ({
        year,
        measures: taken.map((k) => measures[places[k]!]!.id),
        spent,
        saved_kL_year: saved,
      })),
    }
  );
}

/** Sets to be told apart: the best, then the plan, the steps before and after the best, and no measure at all. */
export function rivalSets({ plan, measures }: ChoicesContext, best: Step, sets: BestSets): Uint8Array[] {
  const { steps } = sets.byWorth ?? sets.bySaving;
  const at = steps.findIndex(({ set }) => sameSet(set, best.set));
  const candidates = [
    best.set,
    plan,
    steps[at - 1]?.set,
    steps[at + 1]?.set,
    new Uint8Array(measures.length),
  ];
  const rivals: Uint8Array[] = [];
  for (const set of candidates)
    if (set !== undefined && !rivals.some((other) => sameSet(other, set))) rivals.push(set);
  return rivals;
}
