import type { WeatherRecord } from "../../../src/engine/weather/record.ts";
import { readRecord } from "../../../src/files/record.ts";
import { reportOf } from "../../../src/report/report.ts";
import type { GroundsReport } from "../../../src/report/schema.ts";
import { toView } from "../../../src/report/to-view.ts";
import type { AnswerView } from "../../../src/report/view.ts";
import { type WorkedOut, workOut } from "../../../src/report/work-out.ts";
import type { Fault } from "../../../src/survey/faults.ts";
import { type WeatherNotes, weatherForSurvey } from "../../../src/survey/normals/for-survey.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { cautionSentence } from "../../../src/words/en/cautions.ts";
import { refusalsOf } from "../../../src/words/en/refusals.ts";
import type { Answers, PlaceWeather, ToldFault, WeatherOf, Wrong } from "./messages.ts";
import { told } from "./told.ts";

interface LastAnswer {
  worked: WorkedOut;
  report: GroundsReport;
}

/** The last survey worked out: what workings and the screens of water are read from. */
let last: LastAnswer | null = null;

export function lastAnswer(): LastAnswer | null {
  return last;
}

/** Works a survey out, or lists what stands in the way. */
export function answerOf(document: object, weather: WeatherOf): Answers["answer"] {
  const read = readSurvey(document);
  if ("faults" in read) return wrong("survey", read.faults.map(told));
  const given = weatherFor(read.survey, weather);
  if ("faults" in given) return wrong("weather", given.faults.map(told));
  try {
    const worked = workOut(given.survey, given.record, { notes: given.notes });
    const report = reportOf(worked, cautionSentence);
    last = { worked, report };
    const view = toView(worked, report, cautionSentence);
    return { view: { ...view, cautions: [...view.cautions, ...limitsOf(read.survey, weather)] } };
  } catch (error) {
    const refusals = refusalsOf(
      error,
      read.survey.beds.map((bed) => bed.id),
    );
    if (!refusals) throw error;
    return wrong("weather", refusals);
  }
}

/** What to bear in mind of a place's means, in the server's own sentences. */
function limitsOf({ site }: Survey, weather: WeatherOf): AnswerView["cautions"] {
  if (weather.is === "record" || site.normals || !weather.place) return [];
  return weather.place.limits.map((sentence) => ({ code: "normals-of-cell", sentence }));
}

interface Given {
  survey: Survey;
  record: WeatherRecord;
  notes: WeatherNotes | null;
}

/** Records are read once for each text: the survey changes far more often. */
let lastRecord: { csv: string; record: WeatherRecord } | null = null;

function weatherFor(survey: Survey, weather: WeatherOf): Given | { faults: readonly Fault[] } {
  if (weather.is === "normals") return generated(survey, weather.place);
  if (lastRecord?.csv !== weather.csv) {
    const read = readRecord(weather.csv);
    if ("faults" in read) return read;
    lastRecord = { csv: weather.csv, record: read.record };
  }
  return { survey, record: lastRecord.record, notes: null };
}

let lastGenerated: { key: string; given: Pick<Given, "record" | "notes"> } | null = null;

/** Years from the site's own normals, else from those of its place; the place's height and coast stand in. */
function generated(survey: Survey, place: PlaceWeather | null): Given | { faults: readonly Fault[] } {
  const normals = survey.site.normals ?? place?.normals;
  const isOwn = survey.site.normals !== undefined;
  const { elevation_m = isOwn ? undefined : place?.guesses.elevation_m } = survey.site;
  const { coastal = isOwn ? undefined : place?.guesses.coastal } = survey.site;
  const site = {
    ...survey.site,
    ...(elevation_m !== undefined && { elevation_m }),
    ...(coastal !== undefined && { coastal }),
  };
  const key = JSON.stringify([normals, site.elevation_m]);
  if (lastGenerated?.key !== key) {
    const found = weatherForSurvey({ site: { ...site, normals } }, null);
    if ("faults" in found) return found;
    lastGenerated = { key, given: { record: found.record, notes: found.notes } };
  }
  return { survey: { ...survey, site }, ...lastGenerated.given };
}

function wrong(of: Wrong, faults: readonly ToldFault[]): Answers["answer"] {
  return { wrong: of, faults };
}
