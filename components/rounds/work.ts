import { formatIso } from "../../src/engine/weather/dates.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { readLog } from "../../src/files/log.ts";
import { readRecord } from "../../src/files/record.ts";
import { namesOf, roundsDocument } from "../../src/report/rounds.ts";
import { type RoundsWorked, workOutRounds } from "../../src/report/rounds-work.ts";
import { weekDocument } from "../../src/report/week.ts";
import { type WeekWorked, workOutWeek } from "../../src/report/week-work.ts";
import type { Fault } from "../../src/survey/faults.ts";
import { type WeatherNotes, weatherForSurvey } from "../../src/survey/normals/for-survey.ts";
import { readSurvey } from "../../src/survey/read.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import { faultWords } from "../../src/words/en/faults.ts";
import { refusalsOf } from "../../src/words/en/refusals.ts";
import { roundsWords } from "../../src/words/en/rounds.ts";
import { conflictsAloud, weekWordsIn } from "../../src/words/rounds-said.ts";
import type {
  RoundsAnswers,
  RoundsAsk,
  RoundsKind,
  RoundsOf,
  RoundsWithWeek,
  WeekSaid,
  Wrong,
} from "./messages.ts";

/** What was worked out last: files are written from it, and a week that changes leaves the table standing. */
export interface Kept {
  units: UnitSystem;
  worked: RoundsWorked;
  week: WeekWorked;
  document: RoundsWithWeek;
}

let kept: Kept | null = null;
let lastTable: { key: string; worked: RoundsWorked } | null = null;

/** Files and workings are asked for now and then: what writes them is fetched when it is. */
export async function carryOut(ask: RoundsAsk): Promise<RoundsAnswers[RoundsKind]> {
  switch (ask.kind) {
    case "rounds":
      return roundsOf(ask.of);
    case "file": {
      const { fileText } = await import("./work-files.ts");
      return kept && { text: fileText(kept, ask.file) };
    }
    case "explain": {
      const { roundWorking } = await import("./workings.ts");
      return kept && roundWorking(kept, ask);
    }
    case "log": {
      const read = readLog(ask.text);
      return "faults" in read ? { faults: read.faults.map(told) } : { entries: read.entries };
    }
  }
}

function roundsOf({ survey: document, record, week, units, starts }: RoundsOf): RoundsAnswers["rounds"] {
  const read = readSurvey(document);
  if ("faults" in read) return { of: "survey", faults: read.faults.map(told) };
  const { survey } = read;
  const key = JSON.stringify([survey, record, starts]);
  if (lastTable?.key !== key) {
    const given = weatherOf(survey, record);
    if ("faults" in given) return { of: "weather", faults: given.faults.map(told) };
    try {
      lastTable = { key, worked: workOutRounds(survey, given.record, { notes: given.notes, starts }) };
    } catch (error) {
      const refusals = refusalsOf(
        error,
        survey.beds.map(({ id }) => id),
      );
      if (!refusals) throw error;
      return { of: "weather", faults: refusals };
    }
  }
  const { worked } = lastTable;
  const weekWorked = workOutWeek(worked, askOf(week, survey));
  const words = weekWordsIn(units);
  const weekDone = weekDocument(worked, weekWorked, words);
  const madeOn = formatIso(week.firstDay);
  const rounds = { ...roundsDocument(worked, roundsWords, { madeOn, week: weekDone }), week: weekDone };
  kept = { units, worked, week: weekWorked, document: rounds };
  const aloud = { ...words.aloud, ...conflictsAloud(worked.conflicts, namesOf(worked)) };
  return { rounds, aloud };
}

/** Entries of beds and tanks that the survey no longer has stay in the log and count for nothing here. */
function askOf({ levels, log, ...said }: WeekSaid, { tanks }: Survey) {
  const level_L = new Map(
    tanks.flatMap(({ id, capacity_L }): [string, number][] => {
      const level = levels[id];
      return level === undefined ? [] : [[id, Math.min(level, capacity_L)]];
    }),
  );
  return { ...said, log: [...log], level_L };
}

let lastRecord: { csv: string; record: WeatherRecord } | null = null;

function weatherOf(
  survey: Survey,
  csv: string | null,
): { record: WeatherRecord; notes: WeatherNotes | null } | { faults: readonly Fault[] } {
  if (csv === null) return weatherForSurvey(survey, null);
  if (lastRecord?.csv !== csv) {
    const read = readRecord(csv);
    if ("faults" in read) return read;
    lastRecord = { csv, record: read.record };
  }
  return { record: lastRecord.record, notes: null };
}

function told(fault: Fault): Wrong {
  return { path: fault.path, sentence: faultWords(fault) };
}
