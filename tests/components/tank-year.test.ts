import { expect, test } from "vitest";
import {
  prepareTankYear,
  spillByWeek,
  tankFinding,
  tankReading,
  tankTable,
  telling,
} from "../../components/charts/tank-year/prepare.ts";
import { formatter, NBSP } from "../../src/words/format.ts";
import { demoSurvey, tank, viewOf } from "./views.ts";

const say = formatter("metric", "en-GB");

test("a year holds its own days and no others", () => {
  const year = prepareTankYear(tank({}), 2014);
  expect(year.level_L).toEqual([700, 400, 0, 200]);
  expect(year.spilled_L).toBe(0);
  expect(year.shortDays).toBe(1);
});

test("without a whole year the record itself is shown", () => {
  expect(prepareTankYear(tank({}), null).level_L).toHaveLength(5);
});

test("the demo's dry year has each of its days", () => {
  const view = viewOf(demoSurvey());
  const year = prepareTankYear(view.tanks[0]!, 2012);
  expect(year.level_L).toHaveLength(366);
  const total = view.tanks[0]!.short.reduce((sum, s) => sum + s, 0);
  expect((total / view.weather.days) * 365.25).toBeCloseTo(view.tanks[0]!.shortDays_year, 9);
});

test("the ruler stands first where the tank was last half full before it ran short", () => {
  expect(telling(prepareTankYear(tank({}), 2014))).toBe(0);
  expect(telling(prepareTankYear(tank({ short: new Uint8Array(5) }), 2014))).toBe(2);
});

test("weeks of spill add up to the spill", () => {
  const spill = Array.from({ length: 30 }, (_, i) => i);
  const weeks = spillByWeek(spill);
  expect(weeks).toHaveLength(5);
  expect(weeks.reduce((a, b) => a + b, 0)).toBe(435);
});

test.each([
  [{}, "A tank: short on one day of 2014"],
  [{ short: new Uint8Array(5) }, "A tank: never short in 2014"],
  [{ capacity_L: 0, level_L: new Float64Array(5) }, "A tank holds nothing: its size is 0"],
  [{ inUse: false }, "A tank is not in use"],
  [{ asked: false }, "A tank: nothing was asked of it in 2014"],
])("a finding for %j", (parts, finding) => {
  expect(tankFinding(prepareTankYear(tank(parts), 2014), say)).toBe(finding);
});

test("a reading says the day, the level, its share, and when it was short", () => {
  const t = prepareTankYear(tank({}), 2014);
  const readings = t.level_L.map((_, i) => tankReading(t, i, say));
  expect(readings[0]).toBe(`1 January 2014: 700${NBSP}litres, 70% full`);
  expect(readings[2]).toBe(`3 January 2014: 0${NBSP}litres, 0% full; short`);
});

test("a tank of no size is read without a share of nothing", () => {
  const year = prepareTankYear(tank({ capacity_L: 0, level_L: new Float64Array(5) }), 2014);
  expect(tankReading(year, 0, say)).toContain("0% full");
});

test("the table has dates that a spreadsheet knows", () => {
  const rows = tankTable(prepareTankYear(tank({}), 2014), say).rows;
  expect(rows.map((row) => row[0])).toEqual(["2014-01-01", "2014-01-02", "2014-01-03", "2014-01-04"]);
});
