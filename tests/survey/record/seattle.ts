import { readFileSync } from "node:fs";
import { dayOfYear, fromDay, parseIso } from "../../../src/engine/weather/dates.ts";
import { parseDelimited } from "../../../src/files/delimited.ts";
import { applyMapping } from "../../../src/survey/record/apply.ts";
import { guessMapping } from "../../../src/survey/record/guess.ts";
import type { Cells, Given } from "../../../src/survey/record/mapping.ts";

/** Daily weather of Seattle, 2012–2015, as the package vega-datasets carries it (US Government data). */
export const seattleFile = new URL(
  "../../../node_modules/vega-datasets/data/seattle-weather.csv",
  import.meta.url,
);
/** The same with New York in one file. */
export const twoPlacesFile = new URL("../../../node_modules/vega-datasets/data/weather.csv", import.meta.url);

export interface Day {
  iso: string;
  year: number;
  month: number;
  day: number;
  dayOfYear: number;
  rain_mm: number;
  tmin_c: number;
  tmax_c: number;
  wind_ms: number;
}

export const seattle: readonly Day[] = readFileSync(seattleFile, "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => {
    const [iso, rain, tmax, tmin, wind] = line.split(",") as [string, string, string, string, string];
    const number = parseIso(iso)!;
    const rest = { rain_mm: Number(rain), tmin_c: Number(tmin), tmax_c: Number(tmax), wind_ms: Number(wind) };
    return { iso, ...fromDay(number), dayOfYear: dayOfYear(number), ...rest };
  });

/** A file of Seattle's days in another writing: a header, and each day's line. */
export function written(header: string, line: (day: Day) => string, days: readonly Day[] = seattle): string {
  return `${[header, ...days.map(line)].join("\n")}\n`;
}

export function two(n: number): string {
  return String(n).padStart(2, "0");
}

export function cells(text: string): Cells {
  return parseDelimited(text).rows;
}

/** The record of a text whose mapping raises no question; throws with what was asked or refused otherwise. */
export function imported(text: string, given: Given = {}) {
  const rows = cells(text);
  const mapping = guessMapping(rows, given);
  if (mapping.questions.length > 0) throw new Error(JSON.stringify(mapping.questions));
  const applied = applyMapping(rows, mapping);
  if ("faults" in applied) throw new Error(JSON.stringify(applied.faults.slice(0, 5)));
  return { mapping, ...applied };
}

export function questionsOf(text: string, given: Given = {}) {
  return guessMapping(cells(text), given).questions;
}

/** Largest difference between an imported column and Seattle's own. */
export function worst(
  values: Float64Array | undefined,
  field: "rain_mm" | "tmin_c" | "tmax_c" | "wind_ms",
): number {
  if (values?.length !== seattle.length) return Number.POSITIVE_INFINITY;
  return seattle.reduce((most, day, at) => Math.max(most, Math.abs(values[at]! - day[field])), 0);
}
