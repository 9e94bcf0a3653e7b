import type { WeatherRecord } from "../engine/weather/record.ts";
import { choicesOf } from "../report/choices.ts";
import { givenWeather } from "../report/given-weather.ts";
import { workOut } from "../report/work-out.ts";
import type { Survey } from "../survey/survey.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { choiceCautionSentence } from "../words/en/choices.ts";
import { faultWords } from "../words/en/faults.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { readClimate } from "./climate-file.ts";
import type { Read } from "./parts.ts";

/** The decision document of a survey read without faults, on its record or on years of its place. */
export function choose(
  survey: Survey,
  record: WeatherRecord | null,
  asked: { budget: number | null; draws: number; seed: number },
): Read<object> {
  const given = givenWeather(survey, record, readClimate);
  if ("faults" in given)
    return {
      ok: false,
      faults: given.faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) })),
    };
  try {
    const worked = workOut(given.survey, given.record, { notes: given.notes });
    const say = { caution: cautionSentence, choiceCaution: choiceCautionSentence };
    return { ok: true, value: choicesOf(worked, asked, say) };
  } catch (error) {
    const refusals = refusalsOf(
      error,
      survey.beds.map(({ id }) => id),
    );
    if (refusals === null) throw error;
    return { ok: false, faults: refusals };
  }
}
