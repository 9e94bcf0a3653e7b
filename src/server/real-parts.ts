import { readFileSync } from "node:fs";
import { join } from "node:path";
import { schemaFiles } from "../cli/schemaFiles.ts";
import type { WeatherRecord } from "../engine/weather/record.ts";
import { readRecord } from "../files/record.ts";
import { reportOf } from "../report/report.ts";
import { programVersion } from "../report/version.ts";
import { workOut } from "../report/work-out.ts";
import type { Fault as CodedFault } from "../survey/faults.ts";
import { readSurvey } from "../survey/read.ts";
import { recordFromRows } from "../survey/record/strict.ts";
import type { Survey } from "../survey/survey.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { faultWords } from "../words/en/faults.ts";
import { choose } from "./choose.ts";
import { readClimate } from "./climate-file.ts";
import { documentOf } from "./document-of.ts";
import type { DocumentSchemas } from "./openapi.ts";
import type { Demo, PageFile, Read, ServerParts } from "./parts.ts";
import { readPlaces, timeZoneAt } from "./places.ts";
import { roundsOf } from "./real-rounds.ts";

/** The server's parts as they are in earnest. */
export function realParts(root: string, port: () => number, page: readonly PageFile[]): ServerParts<Survey> {
  return {
    version: programVersion,
    schemas: documentSchemas(),
    port,
    readSurvey: (document) => {
      const read = readSurvey(document);
      return "survey" in read ? { ok: true, value: read.survey } : inWords(read.faults);
    },
    readRecord: (weather) => {
      const read = typeof weather === "string" ? readRecord(weather) : recordFromRows(weather);
      return "record" in read ? { ok: true, value: read.record } : inWords(read.faults);
    },
    estimate,
    rounds: roundsOf,
    choose,
    demo: readDemo(root),
    page,
    places: { places: readPlaces, climate: readClimate, timeZoneAt },
    logFault: (error) => console.error(error),
  };
}

/** The demo's survey and record, from their files. */
export function readDemo(root: string): Demo {
  const text = (file: string) => readFileSync(join(root, "demo", file), "utf8");
  const survey = JSON.parse(text("school.survey.json"));
  return { name: survey.site.name, survey, weather: text("seattle.csv") };
}

function estimate(survey: Survey, record: WeatherRecord | null): Read<object> {
  return documentOf(survey, record, (given) =>
    reportOf(workOut(given.survey, given.record, { notes: given.notes }), cautionSentence),
  );
}

function inWords(faults: readonly CodedFault[]): Read<never> {
  return { ok: false, faults: faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) })) };
}

/** The published documents by the name that their addresses have: `grounds-rounds.schema.json` is rounds. */
function documentSchemas(): DocumentSchemas {
  return Object.fromEntries(
    schemaFiles().map(({ name, text }) => [name.replace(/^grounds-|\.schema\.json$/g, ""), JSON.parse(text)]),
  ) as DocumentSchemas;
}
