import { estimateRuns, type Runs } from "../engine/estimate.ts";
import { type FilledRecord, fillGaps } from "../engine/weather/gaps.ts";
import type { WeatherRecord } from "../engine/weather/record.ts";
import { prepareWeather, type WeatherSeries } from "../engine/weather/series.ts";
import { applyMeasures } from "../survey/measures/apply.ts";
import { chosenMeasures } from "../survey/measures/chosen.ts";
import { type MoneyOf, moneyOf } from "../survey/measures/costs.ts";
import type { WeatherNotes } from "../survey/normals/for-survey.ts";
import { type Resolved, resolve } from "../survey/resolve.ts";
import type { Survey } from "../survey/survey.ts";

/** A survey worked out on a record: what the report, the table, the charts and the workings are read from. */
export interface WorkedOut extends Runs {
  survey: Survey;
  resolved: Resolved;
  /** The survey with the measures chosen done, its blanks filled; null where none is chosen. */
  intended: Intended | null;
  money: MoneyOf;
  filled: FilledRecord;
  weather: WeatherSeries;
  /** How the years were generated; null for a record of somebody's own. */
  notes: WeatherNotes | null;
}

export interface Intended {
  survey: Survey;
  resolved: Resolved;
}

export interface WorkOutOptions {
  /** Write down every bed's days, for the day-by-day table. */
  keepDays?: boolean;
  notes?: WeatherNotes | null;
}

/**
 * Works out a survey that was read without faults on a record that was.
 * @throws UnfillableGap, ShadeNeedsSky
 */
export function workOut(survey: Survey, record: WeatherRecord, options: WorkOutOptions = {}): WorkedOut {
  return workOutFilled(survey, fillGaps(record), options);
}

/** The same on a record without gaps. @throws ShadeNeedsSky */
export function workOutFilled(survey: Survey, filled: FilledRecord, options: WorkOutOptions = {}): WorkedOut {
  const resolved = resolve(survey, Object.keys(filled.columns));
  const weather = prepareWeather(filled, resolved.grounds.place);
  const intended = withMeasures(survey, filled);
  const keep = { days: options.keepDays ?? false, shares: true };
  const runs = estimateRuns(resolved.grounds, weather, keep, intended?.resolved.grounds);
  const money = moneyOf(survey);
  return { survey, resolved, intended, money, filled, weather, notes: options.notes ?? null, ...runs };
}

/** The survey with the measures chosen; null where none is. */
function withMeasures(survey: Survey, { columns }: FilledRecord): Intended | null {
  const ids = chosenMeasures(survey).map(({ id }) => id);
  if (ids.length === 0) return null;
  const planned = applyMeasures(survey, ids);
  return { survey: planned, resolved: resolve(planned, Object.keys(columns)) };
}
