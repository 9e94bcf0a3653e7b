import type { Frame } from "../engine/frame.ts";
import type { Points } from "../engine/give-up.ts";
import { points } from "../engine/give-up.ts";
import { namedStreams } from "../engine/named-streams.ts";
import { chanceBetter, pooledPoints, sharesOfWidth, type UnknownShare } from "../engine/spread.ts";
import { byYear_L, type Tally, total_L } from "../engine/tally.ts";
import type { Tariff } from "../engine/tariff.ts";
import { perYear } from "../engine/years.ts";
import { chosenMeasures } from "../survey/measures/chosen.ts";
import { drawsOf, withMeasuredAgain } from "../survey/sample.ts";
import type { Survey, SurveyMeasure } from "../survey/survey.ts";
import { valuerOf } from "./plan-worth.ts";
import type { WorkedOut } from "./work-out.ts";

/** A set of measures to be told apart from others under the same draws. */
export interface Rival {
  name: string;
  set: Uint8Array;
  /** Present value of what a first year's saving is worth, costs taken off; null to compare by water. */
  worth: ((saved_money_year: number) => number) | null;
}

export interface SpreadRequest {
  survey: Survey;
  /** What may be chosen; the plan is a set of these. */
  measures: readonly SurveyMeasure[];
  plan: Uint8Array;
  rivals: readonly Rival[];
  tariff: Tariff | null;
  frame: Frame;
  seed: number;
}

export interface SpreadOutcome {
  draws: number;
  seed: number;
  /** Over draws and years together. */
  giveUp_kL_year: Points | null;
  need_kL_year: Points | null;
  plan_kL_year: Points | null;
  byUnknown: UnknownShare[];
  /** Each rival's saving over the draws, mean a year, and its present value. */
  rivals: { name: string; saved_kL_year: Points | null; npv: Points | null }[];
  /** `chance[a][b]`: that rival a does better than b, by present value where both have one, else by water. */
  chance: number[][];
  /** What the difference between the first two rivals hangs on. */
  byUnknownOfChoice: UnknownShare[];
}

/** Draws one after another; what is there so far can be read at any time, so that a worker can show it and stop. */
export interface SpreadRun {
  draw(): void;
  done(): number;
  outcome(): SpreadOutcome;
  /** Every figure of every draw made so far. */
  drawn(): Drawn;
}

/** Figures by draw: of what varies by year, one for each whole year. */
export interface Drawn {
  giveUp: readonly (readonly number[])[];
  need: readonly (readonly number[])[];
  planned: readonly (readonly number[])[];
  /** By rival, mean a year. */
  saved: readonly (readonly number[])[];
  /** By rival; null where it has no present value. */
  worth: readonly (readonly number[] | null)[];
  /** Place of each unknown in its range, by draw. */
  places: ReadonlyMap<string, Float64Array>;
  seed: number;
}

/** @throws ShadeNeedsSky */
export function spreadRun({ survey, measures, plan, rivals, tariff, frame, seed }: SpreadRequest): SpreadRun {
  const draws = drawsOf(namedStreams(seed));
  const none = new Uint8Array(measures.length);
  const giveUp: number[][] = [];
  const need: number[][] = [];
  const planned: number[][] = [];
  const saved: number[][] = rivals.map(() => []);
  const worth: (number[] | null)[] = rivals.map((rival) => (rival.worth && tariff ? [] : null));

  const draw = () => {
    draws.next();
    const valuer = valuerOf(withMeasuredAgain(survey, draws.pick), measures, frame, draws.pick);
    const plan_kL = yearly_kL(valuer.evaluator.mains(plan, "need"), frame);
    const today_kL = yearly_kL(valuer.today, frame);
    giveUp.push(today_kL.map((kL, k) => kL - plan_kL[k]!));
    need.push(yearly_kL(valuer.evaluator.mains(none, "need"), frame));
    planned.push(plan_kL);
    rivals.forEach((rival, k) => {
      saved[k]!.push(valuer.saved_kL_year(rival.set, "need"));
      if (rival.worth && tariff)
        worth[k]!.push(rival.worth(valuer.saved_money_year(rival.set, "need", tariff)));
    });
  };

  const better = (a: number, b: number) =>
    worth[a] && worth[b] ? chanceBetter(worth[a], worth[b]) : chanceBetter(saved[a]!, saved[b]!);
  const gap = () => (rivals.length < 2 ? [] : gapBetween(saved, worth));
  return {
    draw,
    done: () => giveUp.length,
    drawn: () => ({ giveUp, need, planned, saved, worth, places: draws.places(), seed }),
    outcome: () => ({
      draws: giveUp.length,
      seed,
      giveUp_kL_year: pooledPoints({ byDraw: giveUp }),
      need_kL_year: pooledPoints({ byDraw: need }),
      plan_kL_year: pooledPoints({ byDraw: planned }),
      byUnknown: sharesOfWidth({ byDraw: giveUp }, draws.places()),
      rivals: rivals.map(({ name }, k) => ({
        name,
        saved_kL_year: points(saved[k]!),
        npv: points(worth[k] ?? []),
      })),
      chance: rivals.map((_, a) => rivals.map((_rival, b) => (a === b ? 0.5 : better(a, b)))),
      byUnknownOfChoice: sharesOfWidth({ byDraw: gap() }, draws.places()),
    }),
  };
}

/** What the first rival does better than the second, by draw: in present value where both have one. */
export function gapBetween(saved: Drawn["saved"], worth: Drawn["worth"]): number[][] {
  const [one, other] = worth[0] && worth[1] ? [worth[0], worth[1]] : [saved[0]!, saved[1]!];
  return one.map((value, k) => [value - other[k]!]);
}

/** Each whole year's kL; where no year is whole, the record's as a year. */
function yearly_kL(tally: Tally, { years, weather }: Frame): number[] {
  if (years.length === 0) return [perYear(total_L(tally), weather.calendar.days) / 1000];
  return Array.from(byYear_L(tally), (litres) => litres / 1000);
}

/** Draws of the plan alone, for the report and the page. @throws ShadeNeedsSky */
export function planRun({ survey, money, ready }: WorkedOut, seed: number): SpreadRun {
  const measures = chosenMeasures(survey);
  return spreadRun({
    survey,
    measures,
    plan: new Uint8Array(measures.length).fill(1),
    rivals: [],
    tariff: money.tariff,
    frame: ready.frame,
    seed,
  });
}

/** So many of them at once. */
export function planSpread(worked: WorkedOut, draws: number, seed: number): SpreadOutcome {
  const run = planRun(worked, seed);
  for (let k = 0; k < draws; k++) run.draw();
  return run.outcome();
}
