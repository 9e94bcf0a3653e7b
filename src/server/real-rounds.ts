import { formatIso } from "../engine/weather/dates.ts";
import type { WeatherRecord } from "../engine/weather/record.ts";
import { givenWeather } from "../report/given-weather.ts";
import { roundsDocument } from "../report/rounds.ts";
import { workOutRounds } from "../report/rounds-work.ts";
import { weekDocument } from "../report/week.ts";
import { workOutWeek } from "../report/week-work.ts";
import type { Survey } from "../survey/survey.ts";
import { faultWords } from "../words/en/faults.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { roundsWords } from "../words/en/rounds.ts";
import { weekWords } from "../words/en/rounds-week.ts";
import { readClimate } from "./climate-file.ts";
import type { Read } from "./parts.ts";
import { readWeek } from "./rounds-week.ts";
import type { RoundsRequest } from "./routes/rounds.ts";

/** The rounds of a request whose survey and record were read without faults. */
export function roundsOf(survey: Survey, record: WeatherRecord | null, request: RoundsRequest): Read<object> {
  const asked = request.week === null ? null : readWeek(request.week, survey);
  if (asked?.ok === false) return asked;
  const given = givenWeather(survey, record, readClimate);
  if ("faults" in given)
    return {
      ok: false,
      faults: given.faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) })),
    };
  try {
    const worked = workOutRounds(given.survey, given.record, { notes: given.notes });
    const week = asked ? weekDocument(worked, workOutWeek(worked, asked.value), weekWords) : undefined;
    const madeOn = asked ? formatIso(asked.value.firstDay) : null;
    return { ok: true, value: roundsDocument(worked, roundsWords, { month: request.month, madeOn, week }) };
  } catch (error) {
    const faults = refusalsOf(
      error,
      survey.beds.map(({ id }) => id),
    );
    if (faults === null) throw error;
    return { ok: false, faults };
  }
}
