import { headerIsDate } from "./header-words.ts";
import type { Layout } from "./layout.ts";
import {
  type Answer,
  type Cells,
  type DateMapping,
  type DateOrder,
  dateOrders,
  type Given,
  type Question,
} from "./mapping.ts";
import { columnNamed } from "./named-column.ts";
import { dateTokens, dayInOrder, monthNumber, yearAndDay } from "./source-dates.ts";

export interface DateGuess {
  dates: DateMapping | null;
  questions: Question[];
}

/** Rows looked at to find the column of dates; the order of its parts is told from every row. */
const sample_rows = 300;

/** Share of the rows that must read as dates. */
const nearlyAll = 0.98;

/** Finds the dates of a file: one column, year with month and day, or year with the day of the year. */
export function guessDates(rows: Cells, layout: Layout, given: Given): DateGuess {
  const parts = partColumns(layout, rows, given);
  const column = given.columns?.date
    ? columnNamed(layout.headers, given.columns.date)
    : dateColumn(rows, layout);
  if (column >= 0 && !(parts && given.columns?.year)) return guessOrder(rows, layout, column, given.dates);
  return parts ? { dates: parts, questions: [] } : { dates: null, questions: [noDates(layout)] };
}

function dateColumn(rows: Cells, layout: Layout): number {
  let best = -1;
  let bestScore = 0;
  layout.headers.forEach((header, at) => {
    const named = headerIsDate("date", header);
    const cells = sampled(rows, layout.body, at);
    const read = cells.filter((cell) => dateTokens(cell) || (named && yearAndDay(cell) !== null)).length;
    const score = (read / Math.max(1, cells.length)) * (named ? 1 : 0.8);
    if (score > bestScore + 1e-9) {
      best = at;
      bestScore = score;
    }
  });
  return bestScore >= 0.5 ? best : -1;
}

function partColumns(layout: Layout, rows: Cells, given: Given): DateMapping | null {
  const find = (part: "year" | "month" | "day" | "dayOfYear", low: number, high: number): number => {
    const name = given.columns?.[part];
    if (name) return columnNamed(layout.headers, name);
    return layout.headers.findIndex((header, at) => {
      if (!headerIsDate(part, header)) return false;
      return sampled(rows, layout.body, at).every(
        (cell) => monthNumber(cell) >= low && monthNumber(cell) <= high,
      );
    });
  };
  const year = find("year", 0, 2200);
  const month = find("month", 1, 12);
  const day = find("day", 1, 31);
  const dayOfYear = find("dayOfYear", 1, 366);
  if (year >= 0 && month >= 0 && day >= 0) return { kind: "parts", year, month, day, certainty: 0.98 };
  return year >= 0 && dayOfYear >= 0 ? { kind: "day-of-year", year, day: dayOfYear, certainty: 0.95 } : null;
}

/** Tells day-first from month-first by what is a date at all; where that leaves both, it asks. */
function guessOrder(rows: Cells, layout: Layout, at: number, said: DateOrder | undefined): DateGuess {
  const header = layout.headers[at]!;
  const mapping = (order: DateOrder, certainty: number): DateMapping => {
    return { kind: "column", header, at, order, certainty };
  };
  if (said) return { dates: mapping(said, 1), questions: [] };
  const tokens = layout.body.flatMap((row) => dateTokens(rows[row]![at] ?? "") ?? []);
  const free = tokens.filter((each) => each.order === null);
  const fixed = tokens.find((each) => each.order !== null)?.order ?? "ymd";
  if (free.length === 0) return { dates: mapping(fixed, 1), questions: [] };
  const readings = dateOrders
    .map((order) => {
      const days = free.map((each) => dayInOrder(each, order));
      return {
        order,
        days,
        valid: days.filter((day) => day !== null).length / days.length,
        steps: stepShare(days),
      };
    })
    .sort((a, b) => b.valid - a.valid || b.steps - a.steps);
  const possible = readings.filter((reading) => reading.valid >= nearlyAll).sort((a, b) => b.steps - a.steps);
  const best = possible[0] ?? readings[0]!;
  const rivals = possible.filter((other) => other !== best && (isDayMonth(best, other) || other.steps > 0.5));
  if (rivals.length === 0)
    return { dates: mapping(best.order, possible.length === 0 ? best.valid / 2 : 1), questions: [] };
  const example = rows[layout.body[0]!]![at]!;
  return {
    dates: mapping(best.order, 0.5),
    questions: [
      { code: "import-date-order", facts: { header, example }, answers: [best, ...rivals].map(orderAnswer) },
    ],
  };
}

/** Day-first against month-first: nothing in the file can tell, however evenly its days follow each other. */
function isDayMonth(a: { order: DateOrder }, b: { order: DateOrder }): boolean {
  return a.order !== "ymd" && b.order !== "ymd";
}

function orderAnswer({ order, days }: { order: DateOrder; days: (number | null)[] }): Answer {
  return { given: { dates: order }, flag: `--dates ${order}`, facts: { order, day: days[0] ?? null } };
}

/** Share of the rows whose day is the one after the row's before. */
function stepShare(days: readonly (number | null)[]): number {
  let steps = 0;
  for (let at = 1; at < days.length; at++)
    if (days[at] !== null && days[at] === days[at - 1]! + 1) steps += 1;
  return days.length < 2 ? 0 : steps / (days.length - 1);
}

function noDates({ headers }: Layout): Question {
  const answers = headers.slice(0, 30).map((header): Answer => {
    return {
      given: { columns: { date: header } },
      flag: `--column ${quoted(`date=${header}`)}`,
      facts: { header },
    };
  });
  return { code: "import-no-dates", facts: { headers }, answers };
}

function sampled(rows: Cells, body: readonly number[], at: number): string[] {
  const step = Math.max(1, Math.floor(body.length / sample_rows));
  const cells: string[] = [];
  for (let index = 0; index < body.length; index += step) cells.push(rows[body[index]!]![at] ?? "");
  return cells;
}

/** A flag's value as a shell takes it. */
export function quoted(text: string): string {
  return /^[\w=./%-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;
}
