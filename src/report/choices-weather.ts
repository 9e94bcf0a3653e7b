import { frameOf } from "../engine/frame.ts";
import { points } from "../engine/give-up.ts";
import type { MainsYear } from "../engine/outcome.ts";
import { type SizePoint, sizeCurve } from "../engine/size-curve.ts";
import { byYear_L, total_L } from "../engine/tally.ts";
import { changedRecord, type WeatherChange } from "../engine/weather/changed.ts";
import { prepareWeather } from "../engine/weather/series.ts";
import { perYear } from "../engine/years.ts";
import { sameSet } from "./choices-best.ts";
import { bestSets, bestWithin, type ChoicesContext, idsOf } from "./choices-context.ts";
import type { GroundsChoices } from "./choices-schema.ts";
import { type Valuer, valuerOf } from "./plan-worth.ts";

type ScenarioRow = GroundsChoices["scenarios"][number];
type ChangeRow = GroundsChoices["wouldChange"][number];

/** A question asked of the weather. */
export interface WeatherQuestion {
  code: string;
  change: WeatherChange;
}

/**
 * The questions that are asked where nobody brings others: ours, and no forecast. The driest years are those in a row
 * with the greatest need of mains water.
 */
export function usualQuestions(byYear: readonly MainsYear[], seed = 1): WeatherQuestion[] {
  const driest = driestYears(byYear);
  return [
    ...(driest ? [{ code: "driest-years", change: { kind: "years-again" as const, ...driest } }] : []),
    { code: "less-rain", change: { kind: "rain", byMonth: Array<number>(12).fill(0.8) } },
    { code: "warmer", change: { kind: "warmer", by_c: 2 } },
    { code: "longer-dry-spells", change: { kind: "longer-dry-spells", times: 1.5, seed } },
  ];
}

/** A decade, or half of a record that is shorter than two; null without a whole year. */
function driestYears(byYear: readonly MainsYear[]): { from: number; years: number } | null {
  if (byYear.length === 0) return null;
  const years = Math.max(1, Math.min(10, Math.floor(byYear.length / 2)));
  const needFrom = (start: number) =>
    byYear.slice(start, start + years).reduce((sum, { need_L }) => sum + need_L, 0);
  let start = 0;
  for (let k = 1; k + years <= byYear.length; k++) if (needFrom(k) > needFrom(start)) start = k;
  return { from: byYear[start]!.year, years };
}

/** The plan and the best set under the record itself and under each question. */
export function scenarioRows(
  context: ChoicesContext,
  best: Uint8Array,
  questions: readonly WeatherQuestion[],
): { scenarios: ScenarioRow[]; wouldChange: ChangeRow[] } {
  const asIs = scenario(context, "record", context.valuer, null);
  const rows = questions.map(({ code, change }) =>
    scenario(context, code, valuerUnder(context, change), asIs.row),
  );
  return {
    scenarios: [asIs.row, ...rows.map(({ row }) => row)],
    wouldChange: rows.map(({ row, set }) => ({
      what: "weather",
      of: row.code,
      measures: row.measures,
      isChange: !sameSet(set, best),
    })),
  };
}

function valuerUnder({ worked, measures }: ChoicesContext, change: WeatherChange): Valuer {
  const weather = prepareWeather(changedRecord(worked.filled, change), worked.resolved.grounds.place);
  return valuerOf(worked.survey, measures, frameOf(worked.resolved.grounds.absences, weather));
}

function scenario(
  context: ChoicesContext,
  code: string,
  valuer: Valuer,
  asIs: ScenarioRow | null,
): { row: ScenarioRow; set: Uint8Array } {
  const { plan, measures, budget } = context;
  const { frame, evaluator, today } = valuer;
  const { days } = frame.weather.calendar;
  const kL_year = (litres: number) => perYear(litres, days) / 1000;
  const planned = evaluator.mains(plan, "need");
  const todays = byYear_L(today);
  const giveUp = Array.from(byYear_L(planned), (litres, k) => (todays[k]! - litres) / 1000);
  const { set } = bestWithin(bestSets(context, valuer), budget);
  const reliability = reliabilityOf(valuer, plan);
  const row: ScenarioRow = {
    code,
    rain_mm_year: perYear(sum(frame.weather.rain_mm), days),
    et0_mm_year: perYear(sum(frame.weather.et0_mm), days),
    today_kL_year: kL_year(total_L(today)),
    need_kL_year: kL_year(total_L(evaluator.mains(new Uint8Array(measures.length), "need"))),
    plan_kL_year: kL_year(total_L(planned)),
    giveUp_kL_year: points(giveUp) ?? { p10: null, p50: null, p90: null },
    measures: idsOf(context, set),
    reliability,
    breaksFirst: asIs && fallsMost(asIs.reliability, reliability),
  };
  return { row, set };
}

type Reliability = ScenarioRow["reliability"];

function reliabilityOf(valuer: Valuer, plan: Uint8Array): Reliability {
  return tankPoints(valuer, plan).map(({ tank, point }) => ({ tank, reliability: point.reliability }));
}

/** Each tank in use in the plan, as run at its size. */
function tankPoints({ evaluator, frame }: Valuer, plan: Uint8Array): { tank: string; point: SizePoint }[] {
  return evaluator.tanks(plan, "need").flatMap((inputs) => {
    const [first] = inputs.group.members;
    if (!inputs.group.inUse || !first) return [];
    const [point] = sizeCurve(inputs, first.id, [first.capacity_L], frame);
    return { tank: inputs.group.id, point: point! };
  });
}

/** The run of a tank of the plan under a question, or under the record itself; null where it is not in use. */
export function pointUnder(
  context: ChoicesContext,
  question: WeatherQuestion | null,
  tank: string,
): SizePoint | null {
  const valuer = question ? valuerUnder(context, question.change) : context.valuer;
  return tankPoints(valuer, context.plan).find((row) => row.tank === tank)?.point ?? null;
}

/** The tank whose reliability falls most; null where none falls. */
function fallsMost(before: Reliability, after: Reliability): string | null {
  const falls = after.map(({ tank, reliability }) => ({
    tank,
    fall: (before.find((row) => row.tank === tank)?.reliability ?? reliability) - reliability,
  }));
  const most = falls.reduce<{ tank: string; fall: number } | null>(
    (a, b) => (a && a.fall >= b.fall ? a : b),
    null,
  );
  return most && most.fall > 0.005 ? most.tank : null;
}

function sum(values: Float64Array): number {
  return values.reduce((total, value) => total + value, 0);
}
