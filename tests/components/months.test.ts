import { expect, test } from "vitest";
import {
  firstShown,
  monthReadings,
  monthsFinding,
  monthsTable,
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

test("the parts by source add up to the need", () => {
  const months = prepareMonths(demo, null);
  months.need_L_week.forEach((need, m) => {
    const parts = months.parts.reduce((sum, part) => sum + part.L_week[m]!, 0);
    expect(parts).toBeCloseTo(need, 6);
  });
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
