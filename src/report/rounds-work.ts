import { prepareGrounds } from "../engine/prepare.ts";
import { type Conflict, conflictsOf } from "../engine/rounds/conflicts.ts";
import { type Programme, programmeFor } from "../engine/rounds/programme.ts";
import { type RoundsNeed, type RoundsTable, roundsNeed, roundsTable } from "../engine/rounds/table.ts";
import { type FilledRecord, fillGaps } from "../engine/weather/gaps.ts";
import type { WeatherRecord } from "../engine/weather/record.ts";
import { prepareWeather } from "../engine/weather/series.ts";
import type { WeatherNotes } from "../survey/normals/for-survey.ts";
import { type Resolved, resolve } from "../survey/resolve.ts";
import { resolveRounds } from "../survey/resolve-rounds.ts";
import type { Survey } from "../survey/survey.ts";
import { usualStarts } from "./rounds-starts.ts";

/** A survey's rounds worked out on a record: what the document, the sheets and the calendar are read from. */
export interface RoundsWorked {
  survey: Survey;
  resolved: Resolved;
  filled: FilledRecord;
  need: RoundsNeed;
  table: RoundsTable;
  conflicts: readonly Conflict[];
  programme: Programme | null;
}

export interface RoundsWorkOptions {
  /** Start times of the timer that the programme of few entries is for. */
  starts?: number;
  /** How the years were generated, where they were. */
  notes?: WeatherNotes | null;
}

/**
 * Works out the month table of a survey that was read without faults, on a record that was.
 * @throws UnfillableGap, ShadeNeedsSky
 */
export function workOutRounds(
  survey: Survey,
  record: WeatherRecord,
  { starts = usualStarts, notes = null }: RoundsWorkOptions = {},
): RoundsWorked {
  const filled = fillGaps(record);
  const resolved = resolve(survey, Object.keys(filled.columns));
  resolved.assumed.unshift(...(notes?.assumed ?? []));
  const weather = prepareWeather(filled, resolved.grounds.place);
  const need = roundsNeed(prepareGrounds(resolved.grounds, weather), resolveRounds(survey));
  const onTimers = need.beds.filter(({ ready: { grown } }) => {
    const { byHand, supply } = grown.bed.watering;
    return !byHand && supply !== "none";
  });
  return {
    survey,
    resolved,
    filled,
    need,
    table: roundsTable(need),
    conflicts: conflictsOf(need),
    programme: programmeFor(need, onTimers, starts),
  };
}
