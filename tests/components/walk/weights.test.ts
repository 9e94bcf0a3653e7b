import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { mostWanted } from "../../../components/walk/order.ts";
import { stopsOf } from "../../../components/walk/stops.ts";
import { type Width, weightsOf } from "../../../components/walk/weights.ts";
import { readRecord } from "../../../src/files/record.ts";
import { planSpread } from "../../../src/report/spread.ts";
import { workOut } from "../../../src/report/work-out.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { root } from "../../structure/sources.ts";

const demo = (file: string) => readFileSync(join(root, "demo", file), "utf8");
const school = JSON.parse(demo("school.survey.json")) as Survey;
const litres = { oval: 600_000, quad: 40_000, hedge: 12_000, front: 20_000 };
const weighed = { beds: new Map(Object.entries(litres)), need_kL_year: 700 };
// 100 kL between the 10 and 90 % points: a variance of (100 / 2.563)² kL²
const points = { p10: 150, p50: 200, p90: 250 };
const width = (byUnknown: Width["byUnknown"]): Width => ({
  giveUp_kL_year: points,
  need_kL_year: null,
  byUnknown,
});
const shareOf = (weights: ReturnType<typeof weightsOf>, at: string) =>
  weights.filter((one) => one.at === at).reduce((sum, { share }) => sum + share, 0);

/** Nothing left to judge beside the draws: every area read, every habit told. */
const measured: Survey = {
  ...school,
  beds: school.beds.map((bed) => ({
    ...bed,
    watering: { ...bed.watering, habit: { minutes: 1, days: [], months: [] } },
  })),
  found: school.beds.map((_, i) => ({
    id: `f${i}`,
    at: `beds[${i}].area_m2`,
    how: "rectangle",
    readings: [],
    figure: 1,
    when: "2025-03-02",
  })),
};

describe("what an open reading does to the answer", () => {
  test("a planting's unknown is its thirst, a measured field is its own", () => {
    const weights = weightsOf(
      measured,
      width([
        { at: "weather", share: 0.5 },
        { at: "beds[0].plantings[0].lawn-cool.moderate", share: 0.3 },
        { at: "found.beds[4].watering.flow_L_min", share: 0.1 },
        { at: "beds[3].leafCover", share: 0.1 },
      ]),
      weighed,
    );
    expect(shareOf(weights, "beds[0].plantings[0].thirst")).toBeCloseTo(0.3, 12);
    expect(shareOf(weights, "beds[4].watering.flow_L_min")).toBeCloseTo(0.1, 12);
    expect(shareOf(weights, "beds[3].leafCover")).toBeCloseTo(0.1, 12);
    expect(weights.some(({ at }) => at === "weather")).toBe(false);
  });

  test("what rests on a table's row is divided by need among the beds that use it", () => {
    const bare: Survey = { ...measured, beds: measured.beds.map(({ soil: _, ...bed }) => bed) };
    const weights = weightsOf(bare, width([{ at: "site.soil", share: 0.712 }]), weighed);
    expect(shareOf(weights, "beds[0].soil.texture")).toBeCloseTo((0.712 * 600) / 672, 12);
    expect(shareOf(weights, "beds[3].soil.texture")).toBeCloseTo((0.712 * 20) / 672, 12);
  });

  test("an area that nobody measured and a habit that nobody told count beside the draws", () => {
    const weights = weightsOf(school, width([]), weighed);
    const drawn = (100 / 2.563) ** 2;
    const areas = Object.values({ ...litres, front: 0 }).map((L) => (0.25 * (L / 1000)) ** 2);
    const habit = (0.5 * 12) ** 2;
    const all = areas.reduce((sum, one) => sum + one, drawn + habit);
    expect(shareOf(weights, "beds[0].area_m2")).toBeCloseTo((0.25 * 600) ** 2 / all, 12);
    // its area has a reading
    expect(shareOf(weights, "beds[3].area_m2")).toBe(0);
    expect(shareOf(weights, "beds[5].watering.habit.minutes")).toBeCloseTo(habit / all, 12);
  });

  test("of the demo, the oval is what tells most", () => {
    const read = readRecord(demo("seattle.csv"));
    if (!("record" in read)) throw new Error("the demo's record has faults");
    const worked = workOut(school, read.record);
    const need = new Map(worked.survey.beds.map(({ id, area_m2 }) => [id, 400 * area_m2]));
    const weights = weightsOf(school, planSpread(worked, 24, 1), { beds: need, need_kL_year: 0 });
    expect(weights.reduce((sum, { share }) => sum + share, 0)).toBeLessThanOrEqual(1);
    expect(mostWanted(stopsOf(school), weights)?.key).toMatch(/^beds\/oval\//);
  });
});
