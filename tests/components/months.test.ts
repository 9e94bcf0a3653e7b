import { expect, test } from "vitest";
import {
  firstShown,
  monthReadings,
  monthsFinding,
  monthsTable,
  partsOf,
  prepareMonths,
  quietRun,
} from "../../components/charts/months/prepare.ts";
import { roundBelow } from "../../components/charts/months/rain.ts";
import { formatter } from "../../src/words/format.ts";
import { bed, demoSurvey, viewOf } from "./views.ts";

const say = formatter("metric", "en");
const demo = viewOf(demoSurvey());
const summer = [0, 0, 0, 10, 40, 80, 100, 70, 30, 5, 0, 0];

test("the quiet months run past New Year", () => {
  expect(quietRun(summer)).toEqual({ from: 9, to: 2 });
  expect(quietRun(new Array(12).fill(5))).toBeNull();
  expect(quietRun(new Array(12).fill(0))).toBeNull();
});

test("all beds together are the sum of those that somebody waters", () => {
  const view = {
    ...demo,
    beds: [
      bed({ id: "a", need_L_week: summer, today_L_week: summer }),
      bed({ id: "b", need_L_week: summer, today_L_week: summer, supply: "tank-only" }),
      bed({ id: "c", need_L_week: summer, supply: "none" }),
    ],
  };
  const months = prepareMonths(view, null);
  expect(months.need_L_week).toEqual(summer.map((x) => 2 * x));
  expect(months.today_L_week).toEqual(months.need_L_week);
  expect(months.parts.map((p) => p.source)).toEqual(["tank", "mains"]);
});

test("today is not drawn for all beds together where one is not known", () => {
  const view = {
    ...demo,
    beds: [bed({ id: "a", today_L_week: summer }), bed({ id: "b", today_L_week: null })],
  };
  expect(prepareMonths(view, null).today_L_week).toBeNull();
  expect(prepareMonths(view, "a").today_L_week).toEqual(summer);
});

test("tank water and mains water add up to the need of a bed that has both", () => {
  const months = prepareMonths(demo, "front");
  expect(months.parts.map(({ source }) => source)).toEqual(["tank", "mains"]);
  months.need_L_week.forEach((need, m) => {
    expect(months.parts.reduce((sum, part) => sum + part.L_week[m]!, 0)).toBeCloseTo(need, 6);
  });
  const [tank, mains] = months.parts.map(({ L_week }) => L_week.reduce((a, b) => a + b, 0));
  expect(tank).toBeGreaterThan(0);
  expect(mains).toBeGreaterThan(0);
});

test("what a tank cannot give a bed that has no other water is in no part", () => {
  const parts = partsOf([
    { supply: "tank-only", need_L_week: summer, fromTank_L_week: new Array(12).fill(30) },
  ]);
  expect(parts).toEqual([{ source: "tank", L_week: summer.map((need) => Math.min(need, 30)) }]);
});

test("a demo with an unknown bed shows the largest bed whose watering is known", () => {
  expect(demo.unknown.map((b) => b.id)).toEqual(["hedge"]);
  expect(firstShown(demo)).toBe("oval");
});

test("the finding names the month of most need and the months that rain does", () => {
  const months = { ...prepareMonths(demo, null), need_L_week: summer, today_L_week: null };
  expect(monthsFinding(months, say).replaceAll("\u00A0", " ")).toBe(
    "The gardens need most in July: 100 litres a week; from October to March rain does the work",
  );
});

test("where no month needs watering, rain is said to be enough", () => {
  const months = { ...prepareMonths(demo, null), need_L_week: new Array(12).fill(0) };
  expect(monthsFinding(months, say)).toBe("The gardens: rain is enough all year");
});

test("what is read aloud and what stands in the table are the same twelve months", () => {
  const months = prepareMonths(demo, "oval");
  const table = monthsTable(months, say);
  const july = monthReadings(months, say)[6]!;
  expect(table.rows).toHaveLength(12);
  expect(july).toContain(say.litresBare(months.need_L_week[6]!));
  expect(table.rows[6]![1]).toBe(months.need_L_week[6]);
});

test("the line to measure rain by is the largest round figure below the wettest month", () => {
  expect([0.04, 1, 3.9, 37.5, 70].map(roundBelow)).toEqual([0.02, 1, 2, 20, 50]);
});
