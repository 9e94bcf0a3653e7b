/** What is said while a weather file becomes a record: questions, what was read, what was noticed. */
import { formatIso } from "../../engine/weather/dates.ts";
import type { WeatherColumn } from "../../engine/weather/record.ts";
import type { Answer, DateOrder, Note, Question } from "../../survey/record/mapping.ts";
import { count } from "./count.ts";
import { allOf, oneOf } from "./lists.ts";
import { columnNames, columnUnits } from "./weather.ts";

type Facts = Question["facts"];

const orders: Readonly<Record<DateOrder, string>> = {
  dmy: "day, month, year",
  mdy: "month, day, year",
  ymd: "year, month, day",
};

export const unitNames: Readonly<Record<string, string>> = {
  inch: "inches",
  "0.1mm": "tenths of mm",
  C: "°C",
  F: "°F",
  "0.1C": "tenths of °C",
  share: "a share of 1",
  "0.1m/s": "tenths of m/s",
  "MJ/m2": "MJ/m² a day",
  "W/m2": "W/m² on average",
  "kWh/m2": "kWh/m² a day",
  "Wh/m2": "Wh/m² a day",
  "J/cm2": "J/cm² a day",
  "kJ/m2": "kJ/m² a day",
  "J/m2": "J/m² a day",
  h: "hours",
  min: "minutes",
  s: "seconds",
  "0.1h": "tenths of an hour",
};

const questions: Readonly<Record<string, (facts: Facts) => string>> = {
  "import-no-table": () =>
    "The file has no rows of numbers with a date. It needs a header and a row for each day.",
  "import-no-such-column": ({ header, headers }) =>
    `The file has no column "${header}". It has ${allOf(headers as readonly string[])}.`,
  "import-no-such-unit": ({ column, unit, known }) =>
    `${columnNames[column as WeatherColumn]} does not come in "${unit}" here. It may come in ${oneOf(known as readonly string[])}.`,
  "import-no-such-place": ({ header, value }) => `No row has "${value}" in the column ${header}.`,
  "import-date-order": ({ header, example }) =>
    `Dates in the column ${header}, such as ${example}, can be read in more than one way. Which part comes first?`,
  "import-no-dates": () => "No column of dates was found. Which one holds them?",
  "import-place": ({ header, places }) =>
    `The file holds ${count(Number(places))} places, told apart by the column ${header}. Which one is wanted?`,
  "import-not-daily": ({ perDay }) =>
    `The file has about ${count(Number(perDay))} rows a day. A record has one row a day: add them up to days first.`,
  "import-column": ({ column }) => `Which column holds ${lower(column)}?`,
  "import-no-rain": () => "No column of rain was found. Which one holds it?",
  "import-no-evaporation": ({ headers }) =>
    `Neither reference evapotranspiration nor both the lowest and the highest temperature of the day were found. Name them with --column et0_mm=HEADER, or --column tmin_c=HEADER and --column tmax_c=HEADER; the headers left are ${allOf(headers as readonly string[]) || "none"}.`,
  "import-unit": ({ headers }) => `Which unit is ${allOf(headers as readonly string[])} in?`,
  "import-swapped": ({ low, high, share }) =>
    `The column ${low} is above ${high} on ${percent(share)} of the days: are the two in each other's place?`,
};

const answers: Readonly<Record<string, (facts: Facts) => string>> = {
  "import-date-order": ({ order, day }) =>
    `${orders[order as DateOrder]}${day === null ? "" : `: the first row is ${formatIso(Number(day))}`}`,
  "import-no-dates": ({ header }) => String(header),
  "import-place": ({ value, days, from, to }) => `${value}: ${count(Number(days))} days, ${from} to ${to}`,
  "import-column": ({ header }) => String(header),
  "import-no-rain": ({ header }) => String(header),
  "import-no-evaporation": ({ low, high }) => `lowest ${low}, highest ${high}`,
  "import-unit": ({ unit, certainty, column, mean }) =>
    `${unitNames[String(unit)] ?? unit} (${percent(certainty)} likely; the mean day would be ${meanOf(String(column), Number(mean))})`,
  "import-swapped": ({ low, high }) => `yes: lowest ${low}, highest ${high}`,
};

const notes: Readonly<Record<string, (facts: Facts) => string>> = {
  "import-missing": ({ header, mark, count: cells }) =>
    `${header}: "${mark}" is read as not recorded, on ${days(cells)}.`,
  "import-trace": ({ header, count: cells }) => `${header}: a trace of rain is read as 0, on ${days(cells)}.`,
  "import-overshoot": ({ header, count: cells }) =>
    `${header}: humidity just above 100% is read as 100%, on ${days(cells)}.`,
  "import-wind-height": () =>
    "Wind counts as measured 2 m above the ground unless the survey's site.windHeight_m says otherwise; most stations measure at 10 m (common practice).",
  "import-left-out": ({ rows }) =>
    Number(rows) === 1
      ? "One line below the header is read as a note."
      : `${count(Number(rows))} lines below the header are read as notes.`,
};

/** The question, without its answers. */
export function questionWords({ code, facts }: Question): string {
  return questions[code]?.(facts) ?? code;
}

export function answerWords({ code }: Question, { facts }: Answer): string {
  return answers[code]?.(facts) ?? "";
}

/** A question on one line, with the flag that gives each answer. */
export function questionLine(question: Question): string {
  const offered = question.answers.map((answer) => `${answer.flag} (${answerWords(question, answer)})`);
  return offered.length === 0
    ? questionWords(question)
    : `${questionWords(question)} Answer with ${oneOf(offered)}.`;
}

export function noteWords({ code, facts }: Note): string {
  return notes[code]?.(facts) ?? code;
}

export const importWords = {
  usage: `Makes a weather record of any file of daily weather.

  npm run --silent weather -- RAW.csv --out RECORD.csv [options]

  --out RECORD.csv         where the record goes
  --column FIELD=HEADER    which column holds a field; FIELD= alone leaves the field out. May be repeated.
                           Fields: date, or year, month and day, or year and dayOfYear; rain_mm, et0_mm,
                           tmin_c, tmax_c, tdew_c, vp_kpa, rhmin_pct, rhmax_pct, rhmean_pct, wind_ms,
                           solar_MJ_m2, sun_h
  --unit FIELD=UNIT        the unit of a field's column: mm, inch, cm; C, F, K; m/s, km/h, mph, knots;
                           MJ/m2, W/m2, langley, kWh/m2, J/cm2; kPa, hPa; h, min; tenths as 0.1mm, 0.1C
  --dates dmy|mdy|ymd      the order of a date's parts
  --where COLUMN=VALUE     only the rows with this value, for files with several places in one
  --help                   this

It prints what it takes each column for and how sure it is (0 to 1). Where two readings are possible it asks, or,
away from a terminal, ends with status 2 and the flags that answer. What is given here always wins.`,
  oneFile: "Give one file to read: npm run weather -- RAW.csv --out RECORD.csv",
  noOut: "Say where the record goes with --out RECORD.csv.",
  sameFile: "The record must not replace the file it is made from. Give --out another name.",
  wantsPair: (found: string) => `This must be NAME=VALUE. Found "${found}".`,
  unknownField: (found: string, known: readonly string[]) =>
    `The name must be ${oneOf(known)}. Found "${found}".`,
  unknownFlag: (found: string, known: readonly string[]) =>
    `There is no option ${found}. There are ${allOf(known)}.`,
  flagWithoutValue: "An option lacks its value: each but --help takes one.",
  datesOrder: (found: string) => `The order must be dmy, mdy or ymd. Found "${found}".`,
  tooManyRows: (most: number) =>
    `A file must have at most ${count(most)} rows. Split it, or keep only the place that is wanted.`,
  ask: (answers: number) => `A number from 1 to ${count(answers)}: `,
  tableHead: ["field", "column", "unit", "column sure", "unit sure"],
  dateOrder: (order: DateOrder) => orders[order],
  dateParts: { parts: "year, month, day", "day-of-year": "year, day of the year" },
  notUsed: (headers: readonly string[]) => `Not used: ${headers.join(", ")}`,
  span: (read: string, rows: number, from: string, to: string) => `${read}: ${days(rows)}, ${from} to ${to}.`,
  noGaps: "No gaps.",
  gaps: (column: WeatherColumn, missing: number, longest: number) =>
    `${columnNames[column]} is missing on ${days(missing)}${missing > 1 ? `, at most ${count(longest)} on end` : ""}.`,
  filled: (filled: number, share: number) =>
    `Gaps are filled when the record is used: ${days(filled)}, ${percent(share)} of it.`,
  manyFilled: "That is more than a tenth of the record: results from it say so.",
  shortRecord: "The record is shorter than a year: results from it say so.",
  moreGaps: (more: number) => `And ${count(more)} more.`,
  cannotFill: "An estimate refuses the record as long as these gaps stand:",
  firstRows: "First rows:",
  written: (path: string) => `Written to ${path}.`,
} as const;

function meanOf(column: string, mean: number): string {
  const rounded = Math.round(mean * 10) / 10;
  if (column === "rain_mm") return `${count(Math.round(mean * 365.25))} mm a year`;
  return `${rounded} ${columnUnits[column as WeatherColumn]}`;
}

function lower(column: unknown): string {
  const name = columnNames[column as WeatherColumn];
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function days(n: unknown): string {
  return Number(n) === 1 ? "1 day" : `${count(Number(n))} days`;
}

function percent(share: unknown): string {
  const value = Number(share) * 100;
  return `${value >= 10 || value === 0 ? Math.round(value) : Math.max(0.1, Math.round(value * 10) / 10)}%`;
}
