import { mean, median, sampleCorrelation, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { dayNumber, fromDay } from "../../../src/engine/weather/dates.ts";
import { fillGaps } from "../../../src/engine/weather/gaps.ts";
import { generateRecord } from "../../../src/engine/weather/generator.ts";
import type { WeatherRecord } from "../../../src/engine/weather/record.ts";
import { prepareWeather } from "../../../src/engine/weather/series.ts";
import { generatorFactors as factors } from "../../../src/tables/weather-generator.ts";
import { type DaySeen, recordsSeen } from "./records-seen.ts";

/** Generated days in the shape of the days seen. */
function generatedDays(normals: (typeof recordsSeen)[number]["normals"]): DaySeen[] {
  const { firstDay, columns } = generateRecord({ normals, years: 200, seed: 17, factors });
  return [...columns.rain_mm].map((rain_mm, slot) => {
    const { year, month } = fromDay(firstDay + slot);
    return { year, m: month - 1, rain_mm, tmin_c: columns.tmin_c![slot]!, tmax_c: columns.tmax_c![slot]! };
  });
}

/** The days seen as a record. */
function recordOf(days: readonly DaySeen[]): WeatherRecord {
  const column = (name: "rain_mm" | "tmin_c" | "tmax_c") => Float64Array.from(days, (day) => day[name]);
  const columns = { rain_mm: column("rain_mm"), tmin_c: column("tmin_c"), tmax_c: column("tmax_c") };
  return { firstDay: dayNumber(2012, 1, 1), days: days.length, columns };
}

const months = Array.from({ length: 12 }, (_, m) => m);
const columns = ["tmin_c", "tmax_c"] as const;

/** Correlation of a day's departure from its month's mean with the day before's. */
function lagOne(days: readonly DaySeen[], column: (typeof columns)[number]): number {
  const means = months.map((m) => mean(days.filter((day) => day.m === m).map((day) => day[column])));
  const off = days.map((day) => day[column] - means[day.m]!);
  return sampleCorrelation(off.slice(1), off.slice(0, -1));
}

/**
 * What the tables make of a place's monthly means against its own days. Four years have about 120 days of a
 * month, some 30 of them independent: a standard deviation seen stands to about 1/√60, 13 % of itself.
 */
describe.each(recordsSeen)("generated days beside those of $place", ({ days, normals, latitude_deg }) => {
  const generated = generatedDays(normals);

  it.each(columns)("spread about as widely round the month's mean: %s", (column) => {
    const spread = (from: readonly DaySeen[], m: number) =>
      sampleStandardDeviation(from.filter((day) => day.m === m).map((day) => day[column]));
    const over = months.map((m) => spread(generated, m) / spread(days, m));
    // The table's own range of the spreads is 0.65 to 1.3 of its middle; Seattle's mild air lies near the low end.
    expect(median(over)).toBeGreaterThan(1 / 1.3);
    expect(median(over)).toBeLessThan(1 / 0.65);
    expect(over.filter((ratio) => ratio < 0.6 || ratio > 2)).toEqual([]);
  });

  it.each(columns)("lean on the day before about as much: %s", (column) => {
    expect(Math.abs(lagOne(generated, column) - lagOne(days, column))).toBeLessThan(0.12);
  });

  it("are cooler by day and warmer by night when wet, over the year", () => {
    for (const from of [generated, days]) {
      const dryLessWet = (column: (typeof columns)[number]) =>
        mean(
          months.map((m) => {
            const month = from.filter((day) => day.m === m);
            const of = (wet: boolean) =>
              mean(month.filter((day) => day.rain_mm >= 0.1 === wet).map((day) => day[column]));
            return of(false) - of(true);
          }),
        );
      expect(dryLessWet("tmax_c") - dryLessWet("tmin_c")).toBeGreaterThan(0.5);
      expect(dryLessWet("tmin_c")).toBeLessThan(0);
    }
  });

  it("evaporate as much in a year, by FAO-56 Eq. 52", () => {
    // Eq. 52 bends with range and temperature, so days must vary rightly for the year to come back: within 2 %.
    const place = { latitude_deg, longitude_deg: 0, elevation_m: 0, coastal: false, windHeight_m: 2 };
    const perDay = (record: WeatherRecord) => {
      const { et0_mm } = prepareWeather(fillGaps(record), place);
      return et0_mm.reduce((sum, et0) => sum + et0, 0) / record.days;
    };
    const made = generateRecord({ normals, years: 200, seed: 17, factors });
    expect(Math.abs(perDay(made) / perDay(recordOf(days)) - 1)).toBeLessThan(0.02);
  });

  it("have wet days of about the same unevenness", () => {
    // Standard deviation over mean of a wet day's rain; 1 for an exponential distribution.
    const unevenness = (from: readonly DaySeen[]) => {
      const amounts = from.map((day) => day.rain_mm).filter((rain) => rain >= 0.1);
      return sampleStandardDeviation(amounts) / mean(amounts);
    };
    expect(unevenness(generated) / unevenness(days)).toBeGreaterThan(0.8);
    expect(unevenness(generated) / unevenness(days)).toBeLessThan(1.25);
  });
});
