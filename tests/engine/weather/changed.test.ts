import { describe, expect, test } from "vitest";
import { changedRecord } from "../../../src/engine/weather/changed.ts";
import { dayNumber, fromDay } from "../../../src/engine/weather/dates.ts";
import type { WeatherRecord } from "../../../src/engine/weather/record.ts";
import { plainRecord } from "../../helpers/sites.ts";

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);
const record: WeatherRecord = plainRecord(6, 2011);
const rainOf = ({ columns }: WeatherRecord) => sum(columns.rain_mm);

describe("a drier or warmer record", () => {
  test("takes each month's factor off its rain and leaves the rest", () => {
    const byMonth = Array.from({ length: 12 }, (_, month) => (month === 6 ? 0 : 1));
    const { columns } = changedRecord(record, { kind: "rain", byMonth });
    columns.rain_mm.forEach((rain, i) => {
      const july = fromDay(record.firstDay + i).month === 7;
      expect(rain).toBe(july ? 0 : record.columns.rain_mm[i]);
    });
    expect(columns.et0_mm).toBe(record.columns.et0_mm);
  });

  test("moves temperatures and dew point alike, and an ET0 that is given as Hargreaves' would move", () => {
    const days = 2;
    const warm: WeatherRecord = {
      firstDay: 0,
      days,
      columns: {
        rain_mm: Float64Array.of(0, 3),
        tmin_c: Float64Array.of(10, 0),
        tmax_c: Float64Array.of(20, 4),
        tdew_c: Float64Array.of(8, -1),
        et0_mm: Float64Array.of(4, 1),
      },
    };
    const { columns } = changedRecord(warm, { kind: "warmer", by_c: 2 });
    expect([...columns.tmin_c!]).toEqual([12, 2]);
    expect([...columns.tmax_c!]).toEqual([22, 6]);
    expect([...columns.tdew_c!]).toEqual([10, 1]);
    expect(columns.et0_mm![0]).toBeCloseTo((4 * (17 + 17.8)) / (15 + 17.8), 9);
    expect([...columns.rain_mm]).toEqual([0, 3]);
  });

  test("repeats years in a row, day for day, 29 February included", () => {
    const dry = structuredClone(record);
    const from = dayNumber(2013, 1, 1) - dry.firstDay;
    dry.columns.rain_mm.fill(0.01, from, from + 730);
    const again = changedRecord(dry, { kind: "years-again", from: 2013, years: 2 });
    expect(again.days).toBe(dry.days);
    expect(again.columns.rain_mm.every((rain) => rain === 0.01)).toBe(true);
    // 2012 and 2016 are leap years, 2013 and 2014 are not: the 28th stands in
    const leapDay = dayNumber(2012, 2, 29) - again.firstDay;
    const source = dayNumber(2014, 2, 28) - dry.firstDay;
    expect(again.columns.et0_mm![leapDay]).toBe(dry.columns.et0_mm![source]);
  });

  test("a record without a whole year stays as it is", () => {
    const short: WeatherRecord = { firstDay: 40, days: 30, columns: { rain_mm: new Float64Array(30) } };
    expect(changedRecord(short, { kind: "years-again", from: 1970, years: 10 })).toBe(short);
  });

  test("makes dry spells longer by the factor, near enough, and loses no rain", () => {
    const spells = ({ columns }: WeatherRecord) =>
      columns.rain_mm.reduce(
        ({ count, dry }, rain) => ({ count: count + (rain >= 1 && dry ? 1 : 0), dry: rain < 1 }),
        { count: 0, dry: true },
      ).count;
    const longer = changedRecord(record, { kind: "longer-dry-spells", times: 2, seed: 4 });
    expect(rainOf(longer)).toBeCloseTo(rainOf(record), 6);
    expect(spells(record) / spells(longer)).toBeGreaterThan(1.6);
    expect(spells(record) / spells(longer)).toBeLessThan(2.5);
    expect(changedRecord(record, { kind: "longer-dry-spells", times: 2, seed: 4 })).toEqual(longer);
  });
});
