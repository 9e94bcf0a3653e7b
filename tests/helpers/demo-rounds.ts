import { readFileSync } from "node:fs";
import { generateRecord } from "../../src/engine/weather/generator.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { readRecord } from "../../src/files/record.ts";
import { readSurvey } from "../../src/survey/read.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { generatorFactors } from "../../src/tables/weather-generator.ts";

const demo = new URL("../../demo/", import.meta.url);

/** The demo's survey, changed where a test wants it. */
export function demoSurvey(change: (survey: Survey) => void = () => {}): Survey {
  const outcome = readSurvey(readFileSync(new URL("school.survey.json", demo), "utf8"));
  if ("faults" in outcome) throw new Error(JSON.stringify(outcome.faults));
  change(outcome.survey);
  return outcome.survey;
}

export function demoRecord(): WeatherRecord {
  const outcome = readRecord(readFileSync(new URL("seattle.csv", demo), "utf8"));
  if ("faults" in outcome) throw new Error(JSON.stringify(outcome.faults));
  return outcome.record;
}

/** Thirty years in the manner of the demo's place: invented normals, wet winters and dry summers. */
export function thirtyYears(seed = 1): WeatherRecord {
  const normals = {
    rain_mm: [140, 95, 95, 70, 50, 35, 15, 25, 40, 90, 165, 150],
    rainDays: [18, 14, 16, 13, 10, 9, 5, 5, 8, 13, 18, 18],
    tmin_c: [3, 3, 4, 6, 9, 12, 14, 14, 12, 8, 5, 3],
    tmax_c: [9, 10, 12, 15, 19, 21, 25, 25, 22, 15, 11, 8],
  };
  return generateRecord({ normals, years: 30, seed, factors: generatorFactors });
}
