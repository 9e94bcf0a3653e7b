import { formatIso } from "../engine/weather/dates.ts";
import type { WeatherRecord } from "../engine/weather/record.ts";
import { roundsDocument } from "../report/rounds.ts";
import { workOutRounds } from "../report/rounds-work.ts";
import { weekDocument } from "../report/week.ts";
import { workOutWeek } from "../report/week-work.ts";
import type { Survey } from "../survey/survey.ts";
import { roundsWords } from "../words/en/rounds.ts";
import { weekWordsIn } from "../words/rounds-said.ts";
import { documentOf } from "./document-of.ts";
import type { Read } from "./parts.ts";
import { readWeek } from "./rounds-week.ts";
import type { RoundsRequest } from "./routes/rounds.ts";

/** The rounds of a request whose survey and record were read without faults. */
export function roundsOf(survey: Survey, record: WeatherRecord | null, request: RoundsRequest): Read<object> {
  const asked = request.week === null ? null : readWeek(request.week, survey);
  if (asked?.ok === false) return asked;
  return documentOf(survey, record, (given) => {
    const worked = workOutRounds(given.survey, given.record, { notes: given.notes });
    const week = asked
      ? weekDocument(worked, workOutWeek(worked, asked.value), weekWordsIn("metric"))
      : undefined;
    const madeOn = asked ? formatIso(asked.value.firstDay) : null;
    return roundsDocument(worked, roundsWords, { month: request.month, madeOn, week });
  });
}
