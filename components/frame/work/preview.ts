import { formatIso } from "../../../src/engine/weather/dates.ts";
import { type WeatherColumn, weatherColumns } from "../../../src/engine/weather/record.ts";
import { parseDelimited } from "../../../src/files/delimited.ts";
import { applyMapping } from "../../../src/survey/record/apply.ts";
import { guessMapping } from "../../../src/survey/record/guess.ts";
import type { Given, Mapping } from "../../../src/survey/record/mapping.ts";
import { unitsOf } from "../../../src/survey/record/source-units.ts";
import { gapLines } from "../../../src/words/en/record-gaps.ts";
import { columnNames } from "../../../src/words/en/weather.ts";
import {
  answerWords,
  importWords,
  noteWords,
  questionWords,
  unitNames,
} from "../../../src/words/en/weather-import.ts";
import type { ToldFault } from "./messages.ts";
import { told } from "./told.ts";

/** A column of the record and what feeds it. */
export interface MappedLine {
  column: WeatherColumn;
  words: string;
  /** Header in the file; null where nothing feeds it. */
  header: string | null;
  unit: string | null;
  /** 0–1, the less sure of column and unit. */
  certainty: number;
  units: readonly { id: string; words: string }[];
}

export interface AskedQuestion {
  words: string;
  answers: readonly { words: string; given: Given }[];
}

/** What a file would become: how it is read, what is asked, what would be filled, what is wrong. */
export interface RecordPreview {
  name: string;
  headers: readonly string[];
  lines: readonly MappedLine[];
  /** How its dates are read; null where none were found. */
  dates: string | null;
  unused: readonly string[];
  questions: readonly AskedQuestion[];
  faults: readonly ToldFault[];
  /** Present once nothing is asked and nothing wrong. */
  record: {
    csv: string;
    from: string;
    to: string;
    days: number;
    notes: readonly string[];
    gaps: readonly string[];
    /** Header line and the first days. */
    firstRows: readonly (readonly string[])[];
  } | null;
}

/** Rows of a raw file at most: a century of days at ten places. */
const mostRows = 400_000;
const shownRows = 6;

/** Reads a weather file as far as it can be read. @param given what somebody said about it */
export function previewOf(name: string, text: string, given: Given): RecordPreview {
  const { rows, openQuoteRow, cut, longLine } = parseDelimited(text, { maxRows: mostRows });
  const nothing = (faults: ToldFault[]): RecordPreview => ({
    name,
    headers: [],
    lines: [],
    dates: null,
    unused: [],
    questions: [],
    faults,
    record: null,
  });
  if (longLine !== null) return nothing([rowFault(longLine, "record-long-line")]);
  if (openQuoteRow !== null) return nothing([rowFault(openQuoteRow, "record-open-quote")]);
  if (cut) return nothing([{ path: "", sentence: importWords.tooManyRows(mostRows) }]);
  const mapping = guessMapping(rows, given);
  const questions = mapping.questions.map((question) => ({
    words: questionWords(question),
    answers: question.answers.map((answer) => ({
      words: answerWords(question, answer),
      given: answer.given,
    })),
  }));
  const applied = questions.length === 0 ? applyMapping(rows, mapping) : null;
  return {
    name,
    headers: headersOf(mapping),
    lines: weatherColumns.map((column) => lineOf(column, mapping)),
    dates: datesOf(mapping),
    unused: mapping.unused,
    questions,
    faults: applied && "faults" in applied ? applied.faults.map(told) : [],
    record: applied && "record" in applied ? recordOf(applied) : null,
  };
}

function recordOf({
  text,
  record,
  notes,
}: Extract<ReturnType<typeof applyMapping>, { text: string }>): RecordPreview["record"] {
  return {
    csv: text,
    from: formatIso(record.firstDay),
    to: formatIso(record.firstDay + record.days - 1),
    days: record.days,
    notes: notes.map(noteWords),
    gaps: gapLines(record),
    firstRows: text
      .split("\n", shownRows)
      .filter((line) => line !== "")
      .map((line) => line.split(",")),
  };
}

function headersOf({ fields, unused }: Mapping): string[] {
  return [...Object.values(fields).map((field) => field.header), ...unused];
}

function lineOf(column: WeatherColumn, { fields }: Mapping): MappedLine {
  const field = fields[column];
  return {
    column,
    words: columnNames[column],
    header: field?.header ?? null,
    unit: field?.unit ?? null,
    certainty: field ? Math.min(field.certainty, field.unitCertainty) : 1,
    units: unitsOf(column).map(({ id }) => ({ id, words: unitNames[id] ?? id })),
  };
}

function datesOf({ dates }: Mapping): string | null {
  if (!dates) return null;
  return dates.kind === "column"
    ? `${dates.header}, ${importWords.dateOrder(dates.order)}`
    : importWords.dateParts[dates.kind];
}

function rowFault(row: number, code: string): ToldFault {
  return told({ path: `row ${row}`, code, facts: {} });
}
