import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber, formatIso, parseIso } from "../../../src/engine/weather/dates.ts";
import { fillGaps, UnfillableGap } from "../../../src/engine/weather/gaps.ts";
import type { WeatherColumn, WeatherRecord } from "../../../src/engine/weather/record.ts";

type Values = (day: number) => number;

/** A record over whole years: a value for each day and column, then the days named left blank. */
function recordOf(
  fromYear: number,
  toYear: number,
  columns: Partial<Record<WeatherColumn, Values>>,
  blank: Partial<Record<WeatherColumn, readonly [from: string, to: string][]>>,
): WeatherRecord {
  const firstDay = dayNumber(fromYear, 1, 1);
  const days = dayNumber(toYear, 12, 31) - firstDay + 1;
  const filled: WeatherRecord["columns"] = { rain_mm: new Float64Array(days) };
  for (const [column, value] of Object.entries(columns) as [WeatherColumn, Values][])
    filled[column] = Float64Array.from({ length: days }, (_, slot) => value(firstDay + slot));
  for (const [column, spans] of Object.entries(blank) as [WeatherColumn, [string, string][]][])
    for (const [from, to] of spans)
      filled[column]!.fill(Number.NaN, parseIso(from)! - firstDay, parseIso(to)! - firstDay + 1);
  return { firstDay, days, columns: filled };
}

const on = (record: { firstDay: number }, values: Float64Array | undefined, iso: string) =>
  values?.[parseIso(iso)! - record.firstDay];
const year: Values = (day) => Number(formatIso(day).slice(0, 4));

describe("gaps of up to seven days", () => {
  it("take a straight line between the neighbours", () => {
    const record = recordOf(
      2013,
      2014,
      { tmax_c: (day) => day * 0.5 },
      { tmax_c: [["2013-06-02", "2013-06-08"]] },
    );
    const filled = fillGaps(record);
    expect(on(record, filled.columns.tmax_c, "2013-06-05")).toBeCloseTo(dayNumber(2013, 6, 5) * 0.5, 9);
    expect(filled.filledDays).toBe(7);
    expect(filled.shareFilled).toBe(7 / 730);
    expect([...filled.flags].reduce((sum, flag) => sum + flag, 0)).toBe(7);
    expect(filled.flags[dayNumber(2013, 6, 2) - record.firstDay]).toBe(1);
    expect(filled.flags[dayNumber(2013, 6, 1) - record.firstDay]).toBe(0);
  });

  it("leave the record that was given as it was", () => {
    const record = recordOf(2013, 2014, { tmax_c: year }, { tmax_c: [["2013-06-02", "2013-06-03"]] });
    fillGaps(record);
    expect(on(record, record.columns.tmax_c, "2013-06-02")).toBeNaN();
  });
});

describe("longer gaps and gaps at an end", () => {
  it("of eight days take the mean of that date over the other years", () => {
    const record = recordOf(2010, 2013, { wind_ms: year }, { wind_ms: [["2011-06-02", "2011-06-09"]] });
    const filled = fillGaps(record);
    expect(on(record, filled.columns.wind_ms, "2011-06-09")).toBeCloseTo((2010 + 2012 + 2013) / 3, 9);
  });

  it("leave years out of the mean that lack the date too", () => {
    const span: [string, string][] = [
      ["2011-06-02", "2011-06-20"],
      ["2012-06-10", "2012-06-30"],
    ];
    const record = recordOf(2010, 2013, { et0_mm: year }, { et0_mm: span });
    const filled = fillGaps(record);
    expect(on(record, filled.columns.et0_mm, "2011-06-09")).toBeCloseTo((2010 + 2012 + 2013) / 3, 9);
    expect(on(record, filled.columns.et0_mm, "2011-06-10")).toBeCloseTo((2010 + 2013) / 2, 9);
  });

  it("at an end have one neighbour only, so even one day takes the mean of its date", () => {
    const blank: [string, string][] = [
      ["2011-01-01", "2011-01-01"],
      ["2013-12-31", "2013-12-31"],
    ];
    const record = recordOf(2011, 2013, { sun_h: (day) => year(day) - 2010 }, { sun_h: blank });
    const filled = fillGaps(record);
    expect(on(record, filled.columns.sun_h, "2011-01-01")).toBe(2.5);
    expect(on(record, filled.columns.sun_h, "2013-12-31")).toBe(1.5);
  });

  const inFebruary: Values = (day) => year(day) * 100 + Number(formatIso(day).slice(8));

  it("take 29 February from the other leap years", () => {
    const record = recordOf(2007, 2016, { tmin_c: inFebruary }, { tmin_c: [["2012-02-20", "2012-03-10"]] });
    expect(on(record, fillGaps(record).columns.tmin_c, "2012-02-29")).toBeCloseTo(201_200 + 29, 6);
  });

  it("take 29 February from 28 February of the other years where no other leap year is there", () => {
    const record = recordOf(2010, 2013, { tmin_c: inFebruary }, { tmin_c: [["2012-02-29", "2012-03-10"]] });
    const mean = (201_028 + 201_128 + 201_328) / 3;
    expect(on(record, fillGaps(record).columns.tmin_c, "2012-02-29")).toBeCloseTo(mean, 6);
  });
});

describe("rain", () => {
  it("takes the same date of the nearest year, however short the gap", () => {
    const record = recordOf(
      2010,
      2014,
      { rain_mm: (day) => year(day) - 2000 },
      { rain_mm: [["2010-05-05", "2010-05-05"]] },
    );
    expect(on(record, fillGaps(record).columns.rain_mm, "2010-05-05")).toBe(11);
  });

  it("takes the earlier of two years as near", () => {
    const record = recordOf(
      2010,
      2014,
      { rain_mm: (day) => year(day) - 2000 },
      { rain_mm: [["2012-05-05", "2012-05-05"]] },
    );
    expect(on(record, fillGaps(record).columns.rain_mm, "2012-05-05")).toBe(11);
  });

  it("passes over a year that lacks the date, and never takes a filled value", () => {
    const blank: [string, string][] = [
      ["2011-05-05", "2011-05-05"],
      ["2012-05-05", "2012-05-05"],
    ];
    const record = recordOf(2010, 2014, { rain_mm: (day) => year(day) - 2000 }, { rain_mm: blank });
    const filled = fillGaps(record);
    expect(on(record, filled.columns.rain_mm, "2011-05-05")).toBe(10);
    expect(on(record, filled.columns.rain_mm, "2012-05-05")).toBe(13);
  });

  const byDay: Values = (day) => Number(formatIso(day).slice(8)) + (year(day) - 2000) / 100;

  it("takes 29 February from the nearest leap year that has it", () => {
    const record = recordOf(2008, 2017, { rain_mm: byDay }, { rain_mm: [["2012-02-29", "2012-02-29"]] });
    expect(on(record, fillGaps(record).columns.rain_mm, "2012-02-29")).toBeCloseTo(29.08, 9);
  });

  it("takes 29 February from its own year's 28th where no year has it, filled or not", () => {
    const own = recordOf(2011, 2013, { rain_mm: byDay }, { rain_mm: [["2012-02-29", "2012-02-29"]] });
    expect(on(own, fillGaps(own).columns.rain_mm, "2012-02-29")).toBeCloseTo(28.12, 9);
    const both = recordOf(2011, 2013, { rain_mm: byDay }, { rain_mm: [["2012-02-28", "2012-02-29"]] });
    expect(on(both, fillGaps(both).columns.rain_mm, "2012-02-29")).toBeCloseTo(28.11, 9);
  });
});

describe("temperatures that a filling crosses", () => {
  it("give the filled tmin the recorded tmax", () => {
    const record = recordOf(
      2013,
      2014,
      { tmin_c: () => 10, tmax_c: () => 20 },
      { tmin_c: [["2013-06-02", "2013-06-02"]] },
    );
    record.columns.tmax_c![dayNumber(2013, 6, 2) - record.firstDay] = 4;
    const filled = fillGaps(record);
    expect(on(record, filled.columns.tmin_c, "2013-06-02")).toBe(4);
    expect(on(record, filled.columns.tmax_c, "2013-06-02")).toBe(4);
  });

  it("give the filled tmax the recorded tmin", () => {
    const record = recordOf(
      2013,
      2014,
      { tmin_c: () => 10, tmax_c: () => 20 },
      { tmax_c: [["2013-06-02", "2013-06-02"]] },
    );
    record.columns.tmin_c![dayNumber(2013, 6, 2) - record.firstDay] = 25;
    expect(on(record, fillGaps(record).columns.tmax_c, "2013-06-02")).toBe(25);
  });
});

describe("a gap that nothing can fill", () => {
  it("is refused with column and dates, all of them", () => {
    const record = recordOf(
      2013,
      2013,
      { tmin_c: () => 5 },
      { rain_mm: [["2013-03-03", "2013-03-03"]], tmin_c: [["2013-06-02", "2013-06-09"]] },
    );
    let caught: unknown;
    try {
      fillGaps(record);
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(UnfillableGap);
    const refusal = caught as UnfillableGap;
    expect(refusal.name).toBe("UnfillableGap");
    expect(refusal.gaps).toEqual([
      { column: "rain_mm", fromDay: dayNumber(2013, 3, 3), toDay: dayNumber(2013, 3, 3) },
      { column: "tmin_c", fromDay: dayNumber(2013, 6, 2), toDay: dayNumber(2013, 6, 9) },
    ]);
    expect(refusal.message).toContain("tmin_c 2013-06-02 to 2013-06-09");
  });
});

it("any record comes back whole or is refused; recorded values never change", () => {
  const cell = fc.oneof(
    { weight: 3, arbitrary: fc.double({ min: 0, max: 40, noNaN: true }) },
    fc.constant(Number.NaN),
  );
  const start = fc.integer({ min: dayNumber(1999, 1, 1), max: dayNumber(2004, 12, 31) });
  fc.assert(
    fc.property(start, fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 900 }), (firstDay, rows) => {
      const columns = {
        rain_mm: Float64Array.from(rows, (row) => row[0]),
        wind_ms: Float64Array.from(rows, (row) => row[1]),
      };
      try {
        const filled = fillGaps({ firstDay, days: rows.length, columns });
        for (let slot = 0; slot < rows.length; slot++) {
          const [rain, wind] = rows[slot]!;
          expect(filled.columns.rain_mm[slot]).not.toBeNaN();
          expect(filled.columns.wind_ms?.[slot]).not.toBeNaN();
          if (!Number.isNaN(rain)) expect(filled.columns.rain_mm[slot]).toBe(rain);
          if (!Number.isNaN(wind)) expect(filled.columns.wind_ms?.[slot]).toBe(wind);
          expect(filled.flags[slot]).toBe(Number.isNaN(rain) || Number.isNaN(wind) ? 1 : 0);
        }
      } catch (error) {
        if (!(error instanceof UnfillableGap)) throw error;
        expect(error.gaps.length).toBeGreaterThan(0);
      }
    }),
    { numRuns: 60 },
  );
});

it("a whole century with a half of it missing is filled, every day of it", () => {
  const record = recordOf(
    1900,
    1999,
    { tmin_c: year, tmax_c: year },
    { tmin_c: [["1950-01-01", "1999-12-31"]] },
  );
  expect(fillGaps(record).columns.tmin_c!.every(Number.isFinite)).toBe(true);
});
