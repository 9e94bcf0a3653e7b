import { bestFor, type Frontier, frontierOf, type Step } from "../engine/frontier.ts";
import {
  capital,
  joinOutlays,
  netPresentValue,
  noOutlay,
  type Outlay,
  type Outlook,
} from "../engine/money.ts";
import { measuresApart } from "../survey/measures/apart.ts";
import { chosenMeasures, waterToNeed } from "../survey/measures/chosen.ts";
import { type MoneyOf, outlayOf, outlookFor } from "../survey/measures/costs.ts";
import type { SurveyMeasure } from "../survey/survey.ts";
import { type Valuer, valuerOf } from "./plan-worth.ts";
import type { WorkedOut } from "./work-out.ts";

/** What every part of the decision document is read from. */
export interface ChoicesContext {
  worked: WorkedOut;
  money: MoneyOf;
  measures: readonly SurveyMeasure[];
  valuer: Valuer;
  /** The same over the measures chosen alone, as the report's shares are had. */
  planValuer: Valuer;
  /** The measures chosen. */
  plan: Uint8Array;
  /** null where no cost is known. */
  outlays: readonly (Outlay | null)[];
  apart: readonly (readonly [number, number])[];
  outlook: Outlook;
  /** null: no limit. */
  budget: number | null;
}

/** @param earlier a context of the same survey but for its money: its runs are used again */
export function choicesContext(
  worked: WorkedOut,
  budget: number | null,
  earlier: ChoicesContext | null = null,
): ChoicesContext {
  const { survey, money, ready } = worked;
  const measures = survey.measures ?? [];
  const outlays = measures.map((measure) => outlayOf(measure, money));
  return {
    worked,
    money,
    measures,
    valuer: earlier?.valuer ?? valuerOf(survey, measures, ready.frame),
    planValuer: earlier?.planValuer ?? valuerOf(survey, chosenMeasures(survey), ready.frame),
    plan: Uint8Array.from(measures, ({ chosen }) => (chosen === false ? 0 : 1)),
    outlays,
    apart: measuresApart(measures),
    outlook: outlookFor(joinOutlays(outlays.map((outlay) => outlay ?? noOutlay)), money),
    budget: budget ?? survey.money?.budget ?? null,
  };
}

/** Ids of a set's measures in the survey's order, watering to need last. */
export function idsOf({ measures }: Pick<ChoicesContext, "measures">, set: Uint8Array): string[] {
  return [...measures.filter((_, k) => set[k] === 1).map(({ id }) => id), waterToNeed];
}

/** What a set costs; measures without a cost count as nothing. */
export function outlayOfSet({ outlays }: ChoicesContext, set: Uint8Array): Outlay {
  return joinOutlays(outlays.flatMap((outlay, k) => (set[k] === 1 && outlay ? outlay : [])));
}

/** Present value of a set done together; null without a price. */
export function npvOfSet(context: ChoicesContext, set: Uint8Array, valuer = context.valuer): number | null {
  const { tariff } = context.money;
  if (!tariff) return null;
  const saved = valuer.saved_money_year(set, "need", tariff);
  return netPresentValue(outlayOfSet(context, set), saved, context.outlook);
}

/** The best sets by what they save and by what they are worth. */
export interface BestSets {
  bySaving: Frontier;
  /** null without a price. */
  byWorth: Frontier | null;
}

/**
 * The frontier over the measures whose cost is known.
 * @param dearer multiplies one measure's quote
 */
export function bestSets(
  context: ChoicesContext,
  valuer: Valuer = context.valuer,
  dearer: { place: number; times: number } | null = null,
): BestSets {
  const { outlays, apart, measures } = context;
  const priced = outlays.flatMap((outlay, place) =>
    outlay ? [{ place, outlay: quoted(outlay, place, dearer) }] : [],
  );
  const whole = (set: Uint8Array) => {
    const all = new Uint8Array(measures.length);
    priced.forEach(({ place }, k) => {
      all[place] = set[k]!;
    });
    return all;
  };
  const placeOf = new Map(priced.map(({ place }, k) => [place, k]));
  const choices = {
    costs: priced.map(({ outlay }) => capital(outlay)),
    apart: apart.flatMap(([a, b]): [number, number][] =>
      placeOf.has(a) && placeOf.has(b) ? [[placeOf.get(a)!, placeOf.get(b)!]] : [],
    ),
  };
  const expand = ({ steps, proven }: Frontier): Frontier => ({
    steps: steps.map((step): Step => ({ ...step, set: whole(step.set) })),
    proven,
  });
  const { tariff } = context.money;
  return {
    bySaving: expand(frontierOf(choices, (set) => valuer.saved_kL_year(whole(set), "need"))),
    byWorth:
      tariff &&
      expand(
        frontierOf(choices, (set) => {
          const outlay = joinOutlays(priced.flatMap((each, k) => (set[k] === 1 ? each.outlay : [])));
          const saved = valuer.saved_money_year(whole(set), "need", tariff);
          return netPresentValue(outlay, saved, context.outlook);
        }),
      ),
  };
}

function quoted(outlay: Outlay, place: number, dearer: { place: number; times: number } | null): Outlay {
  if (dearer?.place !== place) return outlay;
  return { ...outlay, lines: outlay.lines.map((line) => ({ ...line, cost: line.cost * dearer.times })) };
}

/** The set for a budget: worth most where there is a price, else saving most. */
export function bestWithin({ bySaving, byWorth }: BestSets, budget: number | null): Step {
  const { steps } = byWorth ?? bySaving;
  return budget === null ? steps.at(-1)! : bestFor(steps, budget);
}
