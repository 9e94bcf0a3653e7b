import type { WeatherRecord } from "../engine/weather/record.ts";
import { choicesOf } from "../report/choices.ts";
import { workOut } from "../report/work-out.ts";
import type { Survey } from "../survey/survey.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { choiceCautionSentence } from "../words/en/choices-reasons.ts";
import { documentOf } from "./document-of.ts";
import type { Read } from "./parts.ts";

/** The decision document of a survey read without faults, on its record or on years of its place. */
export function choose(
  survey: Survey,
  record: WeatherRecord | null,
  asked: { budget: number | null; draws: number; seed: number },
): Read<object> {
  const say = { caution: cautionSentence, choiceCaution: choiceCautionSentence };
  return documentOf(survey, record, (given) =>
    choicesOf(workOut(given.survey, given.record, { notes: given.notes }), asked, say),
  );
}
