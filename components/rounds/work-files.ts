import { writeCalendar } from "../../src/files/calendar.ts";
import { writeCsv } from "../../src/files/csv.ts";
import { writeLog } from "../../src/files/log.ts";
import { monthDays } from "../../src/report/month-days.ts";
import { namesOf } from "../../src/report/rounds.ts";
import { monthCalendar, weekCalendar } from "../../src/report/rounds-calendar.ts";
import { roundsSheets } from "../../src/report/rounds-sheet.ts";
import { roundsColumns, roundsRows } from "../../src/report/rounds-table.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { calendarWords } from "../../src/words/en/rounds.ts";
import { sheetWords } from "../../src/words/en/rounds-sheet.ts";
import type { FileAsked } from "./messages.ts";
import type { Kept } from "./work.ts";

/** The text of a file made from the rounds worked out last. */
export function fileText({ worked, week, document }: Kept, file: FileAsked): string {
  switch (file.is) {
    case "table":
      return writeCsv(roundsColumns, roundsRows(document));
    case "log":
      return writeLog(file.log);
    case "week-calendar":
      return writeCalendar(weekCalendar(worked, week, calendarWords, file));
    case "month-calendar":
      return writeCalendar(monthCalendar(worked, file.year, file.month, calendarWords, file));
    case "sheets":
      return sheets({ worked, week, document }, file);
  }
}

function sheets(
  { worked, document }: Kept,
  { kind, paper, year, month }: Extract<FileAsked, { is: "sheets" }>,
): string {
  const { survey } = worked;
  const tanks = new Map(survey.tanks.map(({ id, name }) => [id, name]));
  const { week, ...table } = document;
  const withWeek = kind === "week" || kind === "all";
  const withMonth = kind === "wall" || kind === "all";
  return roundsSheets({
    document: withWeek ? { ...table, week } : table,
    months: withMonth ? [{ year, month, days: monthDays(worked, year, month) }] : [],
    names: { bed: namesOf(worked).bed, tank: (id) => tanks.get(id) ?? id },
    outlines: new Map(
      survey.beds.flatMap(({ id, outline_m }) => (outline_m ? [[id, outline_m] as const] : [])),
    ),
    surveyVersion: fingerprint(survey),
    paper,
    withCards: kind === "cards" || kind === "all",
    words: sheetWords,
  });
}

/** Letters that change with the survey, to tell whether a sheet on the wall is of the survey at hand (FNV-1a). */
function fingerprint(survey: Survey): string {
  let hash = 0x811c9dc5;
  for (const letter of JSON.stringify(survey))
    hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}
