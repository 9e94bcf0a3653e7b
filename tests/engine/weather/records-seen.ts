import { readFileSync } from "node:fs";
import Papa from "papaparse";
import type { MonthlyNormals } from "../../../src/engine/weather/generator.ts";

/**
 * The daily records of Seattle and New York, 2012–2015, of the package vega-datasets (weather.csv; US
 * Government data), with the monthly means of the same days as normals.
 */
export interface DaySeen {
  year: number;
  /** 0–11 */
  m: number;
  rain_mm: number;
  tmin_c: number;
  tmax_c: number;
}

export interface RecordSeen {
  place: string;
  latitude_deg: number;
  days: readonly DaySeen[];
  normals: MonthlyNormals & { tmin_c: readonly number[]; tmax_c: readonly number[] };
}

const file = new URL("../../../node_modules/vega-datasets/data/weather.csv", import.meta.url);
const rows = Papa.parse<Record<string, string>>(readFileSync(file, "utf8"), {
  header: true,
  skipEmptyLines: true,
}).data;

const stations = [
  { place: "Seattle", latitude_deg: 47.45 },
  { place: "New York", latitude_deg: 40.78 },
];

export const recordsSeen: readonly RecordSeen[] = stations.map((station) => {
  const days = rows.filter((row) => row.location === station.place).map(daySeen);
  return { ...station, days, normals: normalsOf(days) };
});

/** The days of each calendar year. */
export function wholeYears(days: readonly DaySeen[]): DaySeen[][] {
  const years = new Set(days.map((day) => day.year));
  return [...years].map((year) => days.filter((day) => day.year === year));
}

function daySeen(row: Record<string, string>): DaySeen {
  return {
    year: Number(row.date!.slice(0, 4)),
    m: Number(row.date!.slice(5, 7)) - 1,
    rain_mm: Number(row.precipitation),
    tmin_c: Number(row.temp_min),
    tmax_c: Number(row.temp_max),
  };
}

function normalsOf(days: readonly DaySeen[]): RecordSeen["normals"] {
  const years = wholeYears(days).length;
  const months = Array.from({ length: 12 }, (_, m) => days.filter((day) => day.m === m));
  const means = (value: (day: DaySeen) => number) =>
    months.map((month) => month.reduce((sum, day) => sum + value(day), 0) / month.length);
  return {
    rain_mm: months.map((month) => month.reduce((sum, day) => sum + day.rain_mm, 0) / years),
    rainDays: months.map((month) => month.filter((day) => day.rain_mm >= 0.1).length / years),
    tmin_c: means((day) => day.tmin_c),
    tmax_c: means((day) => day.tmax_c),
  };
}
