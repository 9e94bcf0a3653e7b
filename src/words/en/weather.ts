/** What a weather record that is refused is told, and what its columns are called. */
import type { WeatherColumn } from "../../engine/weather/record.ts";
import { weatherColumns } from "../../engine/weather/record.ts";
import { count } from "./count.ts";

type Facts = Readonly<Record<string, unknown>>;

export const columnNames: Readonly<Record<WeatherColumn, string>> = {
  rain_mm: "Rain",
  et0_mm: "Reference evapotranspiration",
  tmin_c: "The day's lowest temperature",
  tmax_c: "The day's highest temperature",
  tdew_c: "Dew point",
  vp_kpa: "Vapour pressure",
  rhmin_pct: "The day's lowest humidity",
  rhmax_pct: "The day's highest humidity",
  rhmean_pct: "Mean humidity",
  wind_ms: "Wind speed",
  solar_MJ_m2: "Solar radiation",
  sun_h: "Sunshine",
};

export const columnUnits: Readonly<Record<WeatherColumn, string>> = {
  rain_mm: "mm",
  et0_mm: "mm",
  tmin_c: "°C",
  tmax_c: "°C",
  tdew_c: "°C",
  vp_kpa: "kPa",
  rhmin_pct: "%",
  rhmax_pct: "%",
  rhmean_pct: "%",
  wind_ms: "m/s",
  solar_MJ_m2: "MJ/m²",
  sun_h: "hours",
};

/** How the dates of a file that is mapped are read. */
const dateForms: Readonly<Record<string, string>> = {
  dmy: "read as day, month, year",
  mdy: "read as month, day, year",
  ymd: "read as year, month, day",
  parts: "in columns of year, month and day",
  "day-of-year": "in columns of year and day of the year",
};

const mapIt = "Another program's file becomes a record by `npm run weather -- FILE.csv --out RECORD.csv`.";

/** The sentence for each code of a record's faults. */
export const recordFaultWords: Readonly<Record<string, (facts: Facts) => string>> = {
  "record-not-text": () =>
    `The record must be a text file of comma separated values. This one is not text. ${mapIt}`,
  "record-empty": () => "The record is empty. It needs a header row and a row for each day.",
  "record-no-rows": () => "The record has a header but no days. It needs a row for each day.",
  "record-open-quote": () => "A quotation mark opens in this row and never closes. Close it, or take it out.",
  "record-long-line": () => "This line is too long for a day of weather. The file needs a line for each day.",
  "record-no-date": () => `The header must have a column named date. ${mapIt}`,
  "record-no-rain": () => "The record must have a column rain_mm with the day's rain in it.",
  "record-no-evaporation": () =>
    "The record must have et0_mm, or both tmin_c and tmax_c, with values in them: without them evaporation cannot be had.",
  "record-unknown-column": ({ column }) =>
    `A record has no column named "${column}". It may have date, ${weatherColumns.join(", ")}. ${mapIt}`,
  "record-column-twice": ({ column }) => `Each column must be there once. ${column} is there again.`,
  "record-row-cells": ({ found, wanted }) =>
    `A row must have as many cells as the header, ${count(Number(wanted))}. This one has ${count(Number(found))}.`,
  "record-row-not-object": ({ found }) => `A row must be an object with a date. Found ${found}.`,
  "record-date": ({ found, order }) =>
    `The date must be a day of the calendar, ${dateForms[String(order)] ?? "written year-month-day as 2024-03-31"}. ${youEntered(found)}`,
  "record-date-twice": ({ date, first }) => `Each day must be there once. ${date} is in ${first} already.`,
  "record-not-number": ({ column, found }) =>
    `${name(column)} must be a number, or blank where it is not known. ${youEntered(found)}`,
  "record-out-of-range": ({ column, found, low, high }) =>
    `${name(column)} must be between ${count(Number(low))} and ${count(Number(high))} ${columnUnits[column as WeatherColumn]}. ${youEntered(found)}`,
  "record-crossed": ({ low, lowValue, high, highValue }) =>
    `${name(low)} must not be above the highest. Found ${low} ${lowValue} and ${high} ${highValue}.`,
  "record-swapped": ({ low, high, crossed, compared }) =>
    `${low} is above ${high} on ${count(Number(crossed))} of ${count(Number(compared))} days: the two columns look swapped.`,
  "record-too-long": ({ from, to, years }) =>
    `A record must span at most ${count(Number(years))} years. This one runs from ${from} to ${to}.`,
  "record-too-many-rows": ({ rows }) =>
    `A record must have at most ${count(Number(rows))} rows. This one has more.`,
  "record-more-faults": ({ count: more }) => `${count(Number(more))} more faults are not listed here.`,
};

/** A gap that nothing in its record can fill. */
export function unfillableGap(column: WeatherColumn, from: string, to: string): string {
  const when = from === to ? `on ${from}` : `from ${from} to ${to}`;
  return `${columnNames[column]} is missing ${when}, and no other year of the record has those days. Add the values, or leave the days out at the start or end of the record.`;
}

function name(column: unknown): string {
  return columnNames[column as WeatherColumn];
}

function youEntered(found: unknown): string {
  return found === "" ? "It is blank." : `You entered ${found}.`;
}
