import { createHash } from "node:crypto";
import { formatIso, fromDay } from "../engine/weather/dates.ts";
import { workedLines } from "../explain/rounds/on-paper.ts";
import { plainSay } from "../explain/say.ts";
import { writeCalendar } from "../files/calendar.ts";
import { writeCsv } from "../files/csv.ts";
import { monthDays } from "../report/month-days.ts";
import { monthCalendar, weekCalendar } from "../report/rounds-calendar.ts";
import type { GroundsRounds } from "../report/rounds-schema.ts";
import { roundsSheets, sheetNames } from "../report/rounds-sheet.ts";
import { roundsColumns, roundsRows } from "../report/rounds-table.ts";
import type { RoundsWorked } from "../report/rounds-work.ts";
import type { WeekWorked } from "../report/week-work.ts";
import type { Survey } from "../survey/survey.ts";
import { calendarWordsIn } from "../words/en/rounds.ts";
import { sheetWordsIn } from "../words/en/rounds-sheet.ts";
import type { RoundsFlags } from "./rounds-flags.ts";
import { writeWhole } from "./write-file.ts";

/** Writes the files that were asked for. @throws Refused where one cannot be written */
export function writeRoundsFiles(
  flags: RoundsFlags,
  worked: RoundsWorked,
  week: WeekWorked | null,
  { document, whole }: { document: GroundsRounds; whole: GroundsRounds },
): void {
  const now_ms = Date.now();
  const today = flags.today ?? Math.floor(now_ms / 86_400_000);
  const months = monthsFrom(today, flags.month);
  if (flags.ics !== null) {
    const ask = { now_ms, alarm_min: flags.alarm_min };
    const words = calendarWordsIn(flags.units);
    const [first] = months;
    const calendar = week
      ? weekCalendar(worked, week, words, ask)
      : monthCalendar(worked, first!.year, first!.month, words, ask);
    writeWhole(flags.ics, writeCalendar(calendar));
  }
  if (flags.html !== null) {
    const shown = flags.month === null ? months.slice(0, 1) : months;
    writeWhole(flags.html, sheets(flags, worked, { ...whole, madeOn: formatIso(today) }, shown));
  }
  if (flags.csv !== null) writeWhole(flags.csv, writeCsv(roundsColumns, roundsRows(document)));
}

/** The month asked for as it comes next from today; today's month where none is. */
function monthsFrom(today: number, month: number | null): { year: number; month: number }[] {
  const now = fromDay(today);
  if (month === null) return [{ year: now.year, month: now.month }];
  return [{ year: month >= now.month ? now.year : now.year + 1, month }];
}

function sheets(
  { paper, units }: RoundsFlags,
  worked: RoundsWorked,
  document: GroundsRounds,
  months: readonly { year: number; month: number }[],
): string {
  const { survey } = worked;
  const book = { worked, week: null, say: plainSay(units, "en") };
  return roundsSheets({
    document,
    months: months.map(({ year, month }) => ({ year, month, days: monthDays(worked, year, month) })),
    names: sheetNames(survey),
    workings: workedLines(book, months[0]!.month),
    outlines: new Map(
      survey.beds.flatMap(({ id, outline_m }) => (outline_m ? [[id, outline_m] as const] : [])),
    ),
    surveyVersion: fingerprint(survey),
    paper,
    words: sheetWordsIn(units),
  });
}

/** Eight letters that change with the survey, to tell whether a sheet on the wall is of the survey at hand. */
function fingerprint(survey: Survey): string {
  return createHash("sha256").update(JSON.stringify(survey)).digest("hex").slice(0, 8);
}
