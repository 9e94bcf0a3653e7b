import type { WeatherRecord } from "../engine/weather/record.ts";
import { readRecord } from "../files/record.ts";
import { readClimate } from "../server/climate-file.ts";
import type { Fault } from "../survey/faults.ts";
import { weatherForSurvey } from "../survey/normals/for-survey.ts";
import { readSurvey } from "../survey/read.ts";
import type { Survey } from "../survey/survey.ts";
import { faultSentence } from "../words/en/faults.ts";
import { Refused, readTextFile } from "./input.ts";

const most_MB = 20;
const mostRecord_MB = 64;

/** Reads the survey, and the record or the years generated from the place's normals. @throws Refused */
export function readInputs(
  surveyPath: string,
  weatherPath: string | null,
): { survey: Survey; record: WeatherRecord } {
  const lines: string[] = [];
  const survey = tried(lines, () => readSurvey(readTextFile(surveyPath, most_MB)));
  const record =
    weatherPath === null ? null : tried(lines, () => readRecord(readTextFile(weatherPath, mostRecord_MB)));
  if (survey && "faults" in survey) lines.push(...sentences(survey.faults));
  if (record && "faults" in record) lines.push(...sentences(record.faults));
  if (lines.length > 0 || !survey || "faults" in survey) throw new Refused(lines);
  if (record && "record" in record) return { survey: survey.survey, record: record.record };
  const generated = weatherForSurvey(survey.survey, readClimate());
  if ("faults" in generated) throw new Refused(sentences(generated.faults));
  return { survey: survey.survey, record: generated.record };
}

/** What a reader gives; its refusal's lines are kept so that the other file's faults are listed too. */
function tried<T>(lines: string[], read: () => T): T | null {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    lines.push(...error.lines);
    return null;
  }
}

function sentences(faults: readonly Fault[]): string[] {
  return faults.map(faultSentence);
}
