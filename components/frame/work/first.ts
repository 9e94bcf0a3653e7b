import type { WeatherRecord } from "../../../src/engine/weather/record.ts";
import { type FirstOutcome, firstRun } from "../../../src/report/first-answer.ts";
import type { Fault } from "../../../src/survey/faults.ts";
import type { FirstPlace } from "../../../src/survey/first/entries.ts";
import { weatherForSurvey } from "../../../src/survey/normals/for-survey.ts";
import { firstNames } from "../../../src/words/en/first.ts";
import type { Answers, AskOf, PlaceWeather } from "./messages.ts";
import { otherMessages } from "./other-messages.ts";
import { told } from "./told.ts";

const years = 20;
const seed = 1;
/** Told after so many draws; the last is all of them. */
const steps = [16, 60, 200] as const;

/** Told while draws are made; the next request makes an end of it. */
export async function firstAnswer(
  { entries, place, weather }: AskOf<"first">,
  tell: (told: Answers["first"], isLast: boolean) => void,
  isOvertaken: () => boolean,
): Promise<void> {
  const found = recordOf(place, weather);
  if ("faults" in found) return tell({ faults: found.faults.map(told) }, true);
  const whole: FirstPlace = { ...weather.guesses, ...place };
  const run = firstRun({ entries, place: whole, names: firstNames, record: found.record, seed });
  let outcome: FirstOutcome | null = null;
  for (const step of steps) {
    while (run.done() < step) {
      run.draw();
      if (run.done() % 8 === 0) await otherMessages();
      if (isOvertaken()) return;
    }
    outcome = run.outcome();
    tell({ outcome, isLast: step === steps.at(-1) }, step === steps.at(-1));
  }
}

let last: { key: string; record: WeatherRecord } | null = null;

function recordOf(
  place: FirstPlace,
  weather: PlaceWeather,
): { record: WeatherRecord } | { faults: readonly Fault[] } {
  const { normals } = weather;
  const key = JSON.stringify(normals);
  if (last?.key === key) return last;
  const { name, latitude, longitude, elevation_m } = place;
  const site = { name, latitude, longitude, ...(elevation_m !== undefined && { elevation_m }), normals };
  const found = weatherForSurvey({ site }, null, { years });
  if ("faults" in found) return found;
  last = { key, record: found.record };
  return last;
}
