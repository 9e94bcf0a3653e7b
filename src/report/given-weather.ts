import type { WeatherRecord } from "../engine/weather/record.ts";
import type { Fault } from "../survey/faults.ts";
import type { Climate } from "../survey/normals/climate.ts";
import { type WeatherNotes, weatherForSurvey } from "../survey/normals/for-survey.ts";
import type { Assumed } from "../survey/resolve.ts";
import type { Survey } from "../survey/survey.ts";

/** A survey with the record to work it out on. */
export interface GivenWeather {
  survey: Survey;
  record: WeatherRecord;
  /** How the years were generated; null for a record of somebody's own. */
  notes: WeatherNotes | null;
}

/**
 * The record given, else years generated from the survey's normals or its place's; then the place's height and
 * coast stand in where the survey does not say.
 * @param climate hands out the world's normals; asked only where they are wanted
 */
export function givenWeather(
  survey: Survey,
  record: WeatherRecord | null,
  climate: () => Climate | null,
  options: { years?: number; seed?: number } = {},
): GivenWeather | { faults: Fault[] } {
  if (record) return { survey, record, notes: null };
  const found = weatherForSurvey(survey, survey.site.normals ? null : climate(), options);
  if ("faults" in found) return found;
  const { guesses } = found.notes;
  if (!guesses) return { survey, record: found.record, notes: found.notes };
  const { elevation_m = guesses.elevation_m, coastal = guesses.coastal } = survey.site;
  const assumed: Assumed[] =
    survey.site.coastal === undefined
      ? [{ where: "site.coastal", value: coastal, source: "land and sea of CRU CL 1.0's cells: a guess" }]
      : [];
  return {
    survey: { ...survey, site: { ...survey.site, elevation_m, coastal } },
    record: found.record,
    notes: { ...found.notes, assumed: [...found.notes.assumed, ...assumed] },
  };
}
