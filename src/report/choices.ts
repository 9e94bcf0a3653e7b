import type { Step } from "../engine/frontier.ts";
import { netPresentValue } from "../engine/money.ts";
import type { Tariff } from "../engine/tariff.ts";
import type { CautionCode } from "../survey/cautions.ts";
import { moneyOf } from "../survey/measures/costs.ts";
import type { Survey } from "../survey/survey.ts";
import type { Caution } from "./cautions.ts";
import { dearerQuotes, orderRows, rivalSets, stepRow } from "./choices-best.ts";
import { type ChoiceCaution, choiceCautions } from "./choices-cautions.ts";
import {
  type BestSets,
  bestSets,
  bestWithin,
  type ChoicesContext,
  choicesContext,
  idsOf,
  outlayOfSet,
} from "./choices-context.ts";
import { measureRows, planRows, shareRows } from "./choices-measures.ts";
import { proposalRows, proposedContext } from "./choices-proposals.ts";
import { choicesFormat, choicesVersion, type GroundsChoices } from "./choices-schema.ts";
import { tankParts } from "./choices-sizes.ts";
import { scenarioRows, usualQuestions, type WeatherQuestion } from "./choices-weather.ts";
import { reportOf } from "./report.ts";
import { type Rival, type SpreadOutcome, type SpreadRun, spreadRun } from "./spread.ts";
import type { WorkedOut } from "./work-out.ts";

export interface ChoicesRequest {
  /** What may be spent in all; the survey's own where null. */
  budget: number | null;
  /** What is asked of the weather; the usual where not given. */
  questions?: readonly WeatherQuestion[];
}

/** Turns cautions into sentences. */
export interface SayCautions {
  caution(caution: Caution): string;
  choiceCaution(code: ChoiceCaution): string;
}

/** A decision under way: the best sets are there, draws may be made, and the document can be written at any time. */
export interface Decision {
  context: ChoicesContext;
  sets: BestSets;
  best: Step;
  /** What is asked of the weather. */
  questions: readonly WeatherQuestion[];
  /** Sets told apart under the same draws. */
  rivals: readonly Uint8Array[];
  /** Draws of what the survey leaves open, for a worker to make one after another. */
  spread(seed: number): SpreadRun;
  /** What draws made so far say, as the document holds it; null before the first. */
  sureness(drawn: SpreadOutcome): NonNullable<GroundsChoices["spread"]> | null;
  /** @param drawn what the draws made so far say; null: none were asked for */
  document(say: SayCautions, drawn: SpreadOutcome | null): GroundsChoices;
}

/** @throws ShadeNeedsSky */
export function decide(worked: WorkedOut, request: ChoicesRequest): Decision {
  const context = choicesContext(worked, request.budget);
  const sets = bestSets(context);
  const best = bestWithin(sets, context.budget);
  const rivals = rivalSets(context, best, sets);
  const questions = request.questions ?? usualQuestions(worked.outcome.mains.byYear);
  return {
    context,
    sets,
    best,
    questions,
    rivals,
    spread: (seed) =>
      spreadRun({
        survey: worked.survey,
        measures: context.measures,
        plan: context.plan,
        rivals: rivals.map((set) => rivalOf(context, set)),
        tariff: context.money.tariff,
        frame: worked.ready.frame,
        seed,
      }),
    sureness: (drawn) => (drawn.draws > 0 ? spreadRows({ context, rivals }, drawn) : null),
    document: (say, drawn) => documentOf({ context, sets, best, rivals, questions, drawn }, say),
  };
}

/** What of the document hangs on money; quick, since no run is made again. */
export type PricedRows = Pick<
  GroundsChoices,
  "measures" | "shares" | "frontier" | "frontierByWorth" | "proven" | "leftOut" | "best" | "order"
>;

/**
 * A decision whose quotes, tariff, budget or outlook were changed, and nothing else of the survey.
 * @param survey the same but for `tariff`, `money`, and the cost, quote, life and upkeep of its measures
 */
export function repriced(decision: Decision, survey: Survey, budget: number | null): PricedRows {
  return pricedRowsOf(repricedContext(decision, survey, budget));
}

export function pricedRowsOf(context: ChoicesContext): PricedRows {
  const sets = bestSets(context);
  return pricedRows(context, sets, bestWithin(sets, context.budget));
}

/** What such a decision is read from, its runs those made before. */
export function repricedContext(
  { context }: Pick<Decision, "context">,
  survey: Survey,
  budget: number | null,
): ChoicesContext {
  const worked = { ...context.worked, survey, money: moneyOf(survey) };
  return choicesContext(worked, budget, context);
}

function pricedRows(context: ChoicesContext, sets: BestSets, best: Step): PricedRows {
  const { measures, outlays } = context;
  return {
    measures: measureRows(context),
    shares: shareRows(context),
    frontier: sets.bySaving.steps.map((step) => stepRow(context, step)),
    frontierByWorth: (sets.byWorth?.steps ?? []).map((step) => stepRow(context, step)),
    proven: sets.bySaving.proven,
    leftOut: measures.filter((_, k) => outlays[k] === null).map(({ id }) => id),
    best: stepRow(context, best),
    order: orderRows(context, best),
  };
}

/** Draws made where nobody says how many, and the most that are made at once. */
export const usualDraws = 200;
export const mostDraws = 10_000;

/** The document in one go, with as many draws as asked for. */
export function choicesOf(
  worked: WorkedOut,
  request: ChoicesRequest & { draws: number; seed: number },
  say: SayCautions,
): GroundsChoices {
  const decision = decide(worked, request);
  if (request.draws === 0) return decision.document(say, null);
  const run = decision.spread(request.seed);
  for (let k = 0; k < request.draws; k++) run.draw();
  return decision.document(say, run.outcome());
}

function rivalOf(context: ChoicesContext, set: Uint8Array): Rival {
  const outlay = outlayOfSet(context, set);
  return {
    name: idsOf(context, set).join(" "),
    set,
    worth: (saved) => netPresentValue(outlay, saved, context.outlook),
  };
}

interface Parts {
  context: ChoicesContext;
  sets: BestSets;
  best: Step;
  rivals: readonly Uint8Array[];
  questions: readonly WeatherQuestion[];
  drawn: SpreadOutcome | null;
}

function documentOf(parts: Parts, say: SayCautions): GroundsChoices {
  const { context, sets, best, questions, drawn } = parts;
  const { worked, money } = context;
  const report = reportOf(worked, say.caution);
  const plans = planRows(context);
  const { scenarios, wouldChange } = scenarioRows(context, best.set, questions);
  return {
    format: choicesFormat,
    version: choicesVersion,
    engine: report.engine,
    survey: report.survey,
    assumed: report.assumed,
    cautions: report.cautions,
    beforeWork: [
      ...worked.resolved.cautions
        .filter((code) => mindedCodes.includes(code))
        .map((code) => say.caution({ code })),
      ...choiceCautions(worked.survey).map(say.choiceCaution),
    ],
    weather: report.weather,
    currency: money.currency,
    budget: context.budget,
    outlook: { ...context.outlook, topPerKL: topPrice(money.tariff) },
    mains: report.mains,
    plans,
    ...pricedRows(context, sets, best),
    wouldChange: [...dearerQuotes(context, best), ...wouldChange],
    ...tankParts(context),
    scenarios,
    ...(drawn && drawn.draws > 0 && { spread: spreadRows(parts, drawn) }),
    proposals: proposalRows(proposedContext(context, [...plans.underWatered, ...plans.overWatered])),
  };
}

/** Cautions of the survey that a committee minds; its own say more than the others. */
const mindedCodes: readonly CautionCode[] = [
  "local-rules-first",
  "tank-not-for-drinking",
  "standing-water",
  "tank-spray",
];

/** What the last kL of a large bill costs. */
function topPrice(tariff: Tariff | null): number | null {
  return tariff && tariff.steps.at(-1)!.perKL + tariff.also_perKL;
}

/** Neither does better in this share of the draws: they cannot be told apart. */
const toldApart = 0.9;

function spreadRows(
  { context, rivals }: Pick<Parts, "context" | "rivals">,
  drawn: SpreadOutcome,
): NonNullable<GroundsChoices["spread"]> {
  const none = { p10: null, p50: null, p90: null };
  const between = drawn.chance[0]?.[1] ?? null;
  return {
    draws: drawn.draws,
    seed: drawn.seed,
    giveUp_kL_year: drawn.giveUp_kL_year ?? none,
    need_kL_year: drawn.need_kL_year ?? none,
    plan_kL_year: drawn.plan_kL_year ?? none,
    byUnknown: drawn.byUnknown,
    rivals: drawn.rivals.map(({ saved_kL_year, npv }, k) => ({
      measures: idsOf(context, rivals[k]!),
      saved_kL_year: saved_kL_year ?? none,
      npv: npv ?? none,
    })),
    chance: drawn.chance,
    isDraw: between !== null && between < toldApart && between > 1 - toldApart,
    byUnknownOfChoice: drawn.byUnknownOfChoice,
  };
}
