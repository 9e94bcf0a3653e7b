import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { type Block, type BriefNames, briefOf } from "../../src/report/brief.ts";
import { type ChoicesRequest, choicesOf } from "../../src/report/choices.ts";
import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import { workOut } from "../../src/report/work-out.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";
import { briefWords } from "../../src/words/en/choices.ts";
import { choiceCautionSentence } from "../../src/words/en/choices-reasons.ts";

const say = { caution: cautionSentence, choiceCaution: choiceCautionSentence };

export function decisionOf(
  survey: Survey,
  record: WeatherRecord,
  asked: Partial<ChoicesRequest> & { draws?: number; seed?: number } = {},
): GroundsChoices {
  return choicesOf(workOut(survey, record), { budget: null, draws: 0, seed: 1, ...asked }, say);
}

/** Ids stand for themselves. */
const names: BriefNames = { bed: (id) => id, tank: (id) => id, bedAt: (place) => `bed ${place}` };

export function blocksOf(choices: GroundsChoices): Block[] {
  return briefOf(choices, briefWords(choices.currency), names);
}
