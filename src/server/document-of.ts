import type { WeatherRecord } from "../engine/weather/record.ts";
import { type GivenWeather, givenWeather } from "../report/given-weather.ts";
import type { Survey } from "../survey/survey.ts";
import { faultWords } from "../words/en/faults.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { readClimate } from "./climate-file.ts";
import type { Read } from "./parts.ts";

/** The document made of a survey and its record, or of years of its place; else every reason why there is none. */
export function documentOf(
  survey: Survey,
  record: WeatherRecord | null,
  make: (given: GivenWeather) => object,
): Read<object> {
  const given = givenWeather(survey, record, readClimate);
  if ("faults" in given)
    return {
      ok: false,
      faults: given.faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) })),
    };
  try {
    return { ok: true, value: make(given) };
  } catch (error) {
    const bedIds = survey.beds.map(({ id }) => id);
    const faults = refusalsOf(error, bedIds);
    if (faults === null) throw error;
    return { ok: false, faults };
  }
}
