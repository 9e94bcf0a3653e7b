import fc from "fast-check";
import { quantileSorted } from "simple-statistics";
import { expect, test } from "vitest";
import { dryAndWetYear, points, quantile } from "../../src/engine/give-up.ts";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { wholeYears } from "../../src/engine/years.ts";
import { place } from "../helpers/plain-grounds.ts";

const year = (name: number, need_L: number) => ({ year: name, today_L: 0, need_L, plan_L: need_L });

// R's type 7 for 1…4: 10 % is 1.3, 50 % is 2.5, 90 % is 3.7 (by its definition, (n − 1) p + 1).
test("quantiles are linear between order statistics", () => {
  const found = points([4, 1, 3, 2])!;
  expect(found.p10).toBeCloseTo(1.3, 12);
  expect(found.p50).toBeCloseTo(2.5, 12);
  expect(found.p90).toBeCloseTo(3.7, 12);
  expect(points([])).toBeNull();
});

// A library's own median as an outside check: simple-statistics, whose quantile at 0.5 agrees with type 7.
test("the middle agrees with a statistics library", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1 }), (figures) => {
      const sorted = figures.toSorted((a, b) => a - b);
      expect(quantile(sorted, 0.5)).toBeCloseTo(quantileSorted(sorted, 0.5), 6);
    }),
  );
});

test("the dry and the wet year are those nearest the 90 % and 10 % points of need; of two as near, the earlier", () => {
  const years = [year(2001, 10), year(2002, 30), year(2003, 20), year(2004, 30)];
  expect(dryAndWetYear(years)).toEqual({ dryYear: 2002, wetYear: 2001 });
  expect(dryAndWetYear([])).toEqual({ dryYear: null, wetYear: null });
});

test("only full calendar years count", () => {
  const years = (from: number, days: number) => {
    const columns = { rain_mm: new Float64Array(days), et0_mm: new Float64Array(days) };
    return wholeYears(prepareWeather({ firstDay: from, days, columns }, place).calendar).map((y) => y.year);
  };
  expect(years(dayNumber(2011, 8, 20), 900)).toEqual([2012, 2013]);
  expect(years(dayNumber(2012, 1, 1), 366)).toEqual([2012]);
  expect(years(dayNumber(2012, 1, 2), 365)).toEqual([]);
  expect(years(dayNumber(2012, 1, 1), 365)).toEqual([]);
});
