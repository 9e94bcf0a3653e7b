import { workedLines } from "../../src/explain/rounds/on-paper.ts";
import { plainSay } from "../../src/explain/say.ts";
import { writeCalendar } from "../../src/files/calendar.ts";
import { writeCsv } from "../../src/files/csv.ts";
import { writeLog } from "../../src/files/log.ts";
import { monthDays } from "../../src/report/month-days.ts";
import { monthCalendar, weekCalendar } from "../../src/report/rounds-calendar.ts";
import { roundsSheets, sheetNames } from "../../src/report/rounds-sheet.ts";
import { roundsColumns, roundsRows } from "../../src/report/rounds-table.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { calendarWordsIn } from "../../src/words/en/rounds.ts";
import { sheetWordsIn } from "../../src/words/en/rounds-sheet.ts";
import type { FileAsked } from "./messages.ts";
import type { Kept } from "./work.ts";

/** The text of a file made from the rounds worked out last. */
export function fileText(kept: Kept, file: FileAsked): string {
  const { units, worked, week, document } = kept;
  switch (file.is) {
    case "table":
      return writeCsv(roundsColumns, roundsRows(document));
    case "log":
      return writeLog(file.log);
    case "week-calendar":
      return writeCalendar(weekCalendar(worked, week, calendarWordsIn(units), file));
    case "month-calendar":
      return writeCalendar(monthCalendar(worked, file.year, file.month, calendarWordsIn(units), file));
    case "sheets":
      return sheets(kept, file);
  }
}

function sheets(
  { units, worked, document }: Kept,
  { kind, paper, year, month }: Extract<FileAsked, { is: "sheets" }>,
): string {
  const { survey } = worked;
  const { week, ...table } = document;
  const withWeek = kind === "week" || kind === "all";
  const withMonth = kind === "wall" || kind === "all";
  return roundsSheets({
    document: withWeek ? { ...table, week } : table,
    months: withMonth ? [{ year, month, days: monthDays(worked, year, month) }] : [],
    names: sheetNames(survey),
    workings: workedLines({ worked, week: null, say: plainSay(units, "en") }, month),
    outlines: new Map(
      survey.beds.flatMap(({ id, outline_m }) => (outline_m ? [[id, outline_m] as const] : [])),
    ),
    surveyVersion: fingerprint(survey),
    paper,
    withCards: kind === "cards" || kind === "all",
    words: sheetWordsIn(units),
  });
}

/** Letters that change with the survey, to tell whether a sheet on the wall is of the survey at hand (FNV-1a). */
function fingerprint(survey: Survey): string {
  let hash = 0x811c9dc5;
  for (const letter of JSON.stringify(survey))
    hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}
