import { beforeAll, describe, expect, it } from "vitest";
import { daysInMonth, fromDay } from "../../../src/engine/weather/dates.ts";
import { generateRecord, type MonthlyNormals } from "../../../src/engine/weather/generator.ts";
import type { WeatherRecord } from "../../../src/engine/weather/record.ts";
import { generatorFactors as factors } from "../../../src/tables/weather-generator.ts";
import { climates } from "./generator-climates.ts";
import { monthSums, standardErrorsOff } from "./month-sums.ts";

const seeds = Array.from({ length: 25 }, (_, i) => i + 1);
const yearsEach = 80;

/**
 * About 400 means are compared. A year's months hardly know of the next year's, so a mean over 2,000 years is
 * normal about the truth with the standard error that its own years give; at 5 of them a right generator
 * would fail with one set of seeds in 4,000. A standard error is 1 % of a wet month's rain, 2 % of a dry
 * one's and 0.05 °C: a bias worth naming would show.
 */
const mostStandardErrors = 5;

type Value = (columns: WeatherRecord["columns"], slot: number, m: number) => number;

/** Sums of the months over all seeds and years, for each of several values of a day. */
function sumsOver<Name extends string>(normals: MonthlyNormals, values: Record<Name, Value>) {
  const names = Object.keys(values) as Name[];
  const sums = Object.fromEntries(names.map((name) => [name, noMonths()])) as Record<Name, number[][]>;
  for (const seed of seeds) {
    const record = generateRecord({ normals, years: yearsEach, seed, factors });
    for (const name of names) {
      const months = monthSums(record, (slot, m) => values[name](record.columns, slot, m));
      months.forEach((years, m) => {
        sums[name][m]!.push(...years);
      });
    }
  }
  return sums;
}

const noMonths = (): number[][] => Array.from({ length: 12 }, () => []);

/** The length that monthly normals reckon with. */
const normalLength = (m: number) => (m === 1 ? 28.25 : daysInMonth(2001, m + 1));

/** The mean length over the years generated. */
function meanLength(m: number): number {
  let days = 0;
  for (let year = 2001; year < 2001 + yearsEach; year++) days += daysInMonth(year, m + 1);
  return days / yearsEach;
}

/** @param daily mean of a day of the month */
function expectMonths(sums: readonly number[][], daily: (m: number) => number): void {
  const off = sums.map((values, m) => standardErrorsOff(values, daily(m) * meanLength(m)));
  expect(off.filter((z) => !(Math.abs(z) < mostStandardErrors))).toEqual([]);
}

describe.each(Object.entries(climates))("generated years: %s", (_, normals) => {
  const threshold_mm = normals.wetDay_mm ?? 0.1;
  const wetDayMean_mm = normals.rain_mm.map((rain, m) => rain / Math.max(1e-9, normals.rainDays[m]!));
  const wetFrom_mm = wetDayMean_mm.map((mean) => Math.min(threshold_mm, mean / 2));
  let sums: Record<"rain" | "wet" | "drizzle", number[][]>;

  beforeAll(() => {
    sums = sumsOver(normals, {
      rain: ({ rain_mm }, slot) => rain_mm[slot]!,
      wet: ({ rain_mm }, slot) => (rain_mm[slot]! > 0 ? 1 : 0),
      drizzle: ({ rain_mm }, slot, m) => (rain_mm[slot]! > 0 && rain_mm[slot]! < wetFrom_mm[m]! ? 1 : 0),
    });
  });

  it("give the months' rain back", () => {
    expectMonths(sums.rain, (m) => normals.rain_mm[m]! / normalLength(m));
  });

  it("give the wet days back", () => {
    expectMonths(sums.wet, (m) => {
      if (normals.rain_mm[m] === 0) return 0;
      // Rain without a wet day to fall on is put on days of 5 mm.
      const days = normals.rainDays[m]! > 0 ? normals.rainDays[m]! : normals.rain_mm[m]! / 5;
      return Math.min(1, days / normalLength(m));
    });
  });

  it("count no day wet that the normals would not, where a wet day's mean allows it", () => {
    expect(sums.drizzle.flat().filter((days) => days > 0)).toEqual([]);
  });

  it("hold numbers in every slot of every column", () => {
    const record = generateRecord({ normals, years: 5, seed: 0, factors });
    for (const column of Object.values(record.columns)) {
      expect(column).toHaveLength(record.days);
      expect(column.every(Number.isFinite)).toBe(true);
    }
  });
});

const warmed = Object.entries(climates).filter(([, normals]) => normals.tmin_c !== undefined);

describe.each(warmed)("generated temperatures: %s", (_, normals) => {
  const sums = sumsOver(normals, {
    tmin: ({ tmin_c }, slot) => tmin_c![slot]!,
    tmax: ({ tmax_c }, slot) => tmax_c![slot]!,
    crossed: ({ tmin_c, tmax_c }, slot) => (tmin_c![slot]! > tmax_c![slot]! ? 1 : 0),
    refused: ({ tmin_c, tmax_c }, slot) => (tmin_c![slot]! < -60 || tmax_c![slot]! > 60 ? 1 : 0),
  });

  it("give the means of lowest and highest back", () => {
    expectMonths(sums.tmin, (m) => normals.tmin_c![m]!);
    expectMonths(sums.tmax, (m) => normals.tmax_c![m]!);
  });

  it("never have a day's lowest above its highest, nor what a record refuses", () => {
    expect([...sums.crossed, ...sums.refused].flat().filter((days) => days > 0)).toEqual([]);
  });
});

describe("generated evapotranspiration", () => {
  const normals = climates["evapotranspiration alone, wet days of 1 mm and more"]!;
  const sums = sumsOver(normals, {
    et0: ({ et0_mm }, slot) => et0_mm![slot]!,
    below: ({ et0_mm }, slot) => (et0_mm![slot]! < 0 ? 1 : 0),
    onWetDays: ({ et0_mm, rain_mm }, slot) => (rain_mm[slot]! > 0 ? et0_mm![slot]! : 0),
    wet: ({ rain_mm }, slot) => (rain_mm[slot]! > 0 ? 1 : 0),
  });

  it("gives its mean back and is never below zero", () => {
    expectMonths(sums.et0, (m) => normals.et0_mm![m]!);
    expect(sums.below.flat().filter((days) => days > 0)).toEqual([]);
  });

  it("is less on wet days by the ratio of the table", () => {
    const total = (months: readonly number[][]) => months[0]!.reduce((sum, value) => sum + value, 0);
    const dryDays = seeds.length * yearsEach * 31 - total(sums.wet);
    const onDryDay = (total(sums.et0) - total(sums.onWetDays)) / dryDays;
    expect(total(sums.onWetDays) / total(sums.wet) / onDryDay).toBeCloseTo(factors.et0WetOverDry, 1);
  });
});

describe("a generated record", () => {
  const normals = climates["47.75° N 122.25° W"]!;

  it("is whole calendar years, leap days and all", () => {
    const record = generateRecord({ normals, years: 8, seed: 1, startYear: 1999, factors });
    expect(fromDay(record.firstDay)).toEqual({ year: 1999, month: 1, day: 1 });
    expect(fromDay(record.firstDay + record.days - 1)).toEqual({ year: 2006, month: 12, day: 31 });
    expect(record.days).toBe(8 * 365 + 2);
  });

  it("is the same to the last byte from the same seed, and another from another", () => {
    const bytes = (seed: number) => {
      const { columns } = generateRecord({ normals, years: 30, seed, factors });
      return Object.values(columns).map((column) => Buffer.from(column.buffer).toString("base64"));
    };
    expect(bytes(7)).toEqual(bytes(7));
    expect(bytes(8)).not.toEqual(bytes(7));
  });

  it("has the same rain whether or not the normals have temperatures", () => {
    const { tmin_c: _low, tmax_c: _high, ...rainOnly } = normals;
    const withTemperatures = generateRecord({ normals, years: 20, seed: 5, factors });
    const without = generateRecord({ normals: rainOnly, years: 20, seed: 5, factors });
    expect(without.columns.rain_mm).toEqual(withTemperatures.columns.rain_mm);
    expect(without.columns.tmin_c).toBeUndefined();
  });

  it("takes any whole number for a seed", () => {
    for (const seed of [0, -1, 2 ** 31, Number.MAX_SAFE_INTEGER]) {
      expect(generateRecord({ normals, years: 1, seed, factors }).days).toBe(365);
    }
  });
});
