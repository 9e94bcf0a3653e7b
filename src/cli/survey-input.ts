import { readRecord } from "../files/record.ts";
import { type GivenWeather, givenWeather } from "../report/given-weather.ts";
import { readClimate } from "../server/climate-file.ts";
import type { Fault } from "../survey/faults.ts";
import { readSurvey } from "../survey/read.ts";
import { faultSentence } from "../words/en/faults.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { Refused, readTextFile } from "./input.ts";

const mostSurvey_MB = 20;
export const mostRecord_MB = 64;

/**
 * Reads the survey, and the record or the years generated from normals. Both files' faults are listed.
 * @throws Refused
 */
export function readInputs(
  surveyPath: string,
  weatherPath: string | null,
  generated: { years?: number; seed?: number } = {},
): GivenWeather {
  const lines: string[] = [];
  const survey = tried(lines, () => readSurvey(readTextFile(surveyPath, mostSurvey_MB)));
  const record =
    weatherPath === null ? null : tried(lines, () => readRecord(readTextFile(weatherPath, mostRecord_MB)));
  if (survey && "faults" in survey) lines.push(...sentences(survey.faults));
  if (record && "faults" in record) lines.push(...sentences(record.faults));
  if (lines.length > 0 || !survey || "faults" in survey) throw new Refused(lines);
  const own = record && "record" in record ? record.record : null;
  const given = givenWeather(survey.survey, own, readClimate, generated);
  if ("faults" in given) throw new Refused(sentences(given.faults));
  return given;
}

/** Turns what the engine refuses of a survey into lines for people. @throws Refused */
export function refusing<T>({ survey }: GivenWeather, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const bedIds = survey.beds.map(({ id }) => id);
    const refusals = refusalsOf(error, bedIds);
    if (refusals === null) throw error;
    throw new Refused(refusals.map(({ path, sentence }) => `${path}: ${sentence}`));
  }
}

export function sentences(faults: readonly Fault[]): string[] {
  return faults.map(faultSentence);
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
