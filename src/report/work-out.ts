import { estimateRuns, type Runs } from "../engine/estimate.ts";
import { type FilledRecord, fillGaps } from "../engine/weather/gaps.ts";
import type { WeatherRecord } from "../engine/weather/record.ts";
import { prepareWeather, type WeatherSeries } from "../engine/weather/series.ts";
import { type Resolved, resolve } from "../survey/resolve.ts";
import type { Survey } from "../survey/survey.ts";

/** Said in the report where the record was made from monthly means. */
export interface Generated {
  years: number;
  seed: number;
}

/** A survey worked out on a record: what the report, the table, the charts and the workings are read from. */
export interface WorkedOut extends Runs {
  survey: Survey;
  resolved: Resolved;
  filled: FilledRecord;
  weather: WeatherSeries;
  generated: Generated | null;
}

export interface WorkOutOptions {
  /** Write down every bed's days, for the day-by-day table. */
  keepDays?: boolean;
  generated?: Generated | null;
}

/**
 * Works out a survey that was read without faults on a record that was.
 * @throws UnfillableGap, ShadeNeedsSky
 */
export function workOut(survey: Survey, record: WeatherRecord, options: WorkOutOptions = {}): WorkedOut {
  const filled = fillGaps(record);
  const resolved = resolve(survey, Object.keys(filled.columns));
  const weather = prepareWeather(filled, resolved.grounds.place);
  const runs = estimateRuns(resolved.grounds, weather, options.keepDays ?? false);
  return { survey, resolved, filled, weather, generated: options.generated ?? null, ...runs };
}
