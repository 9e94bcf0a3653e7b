import { describe, expect, test } from "vitest";
import { distributionUniformity } from "../../../src/engine/uniformity.ts";
import { precipitationRate_mm_h, uniformityWithInterval } from "../../../src/survey/measuring/catch-cans.ts";
import {
  flowAtOneMetre_L_min,
  gravityFlow_L_min,
  largestMiss,
} from "../../../src/survey/measuring/gravity-hose.ts";
import { habitOf, loggedOverTold } from "../../../src/survey/measuring/habit-log.ts";
import { lineLoss } from "../../../src/survey/measuring/meter-flow.ts";
import { sprinklerFindings } from "../../../src/survey/measuring/sprinkler-checks.ts";
import { come, figureOf, refusal } from "./readings.ts";

describe("flows", () => {
  // common practice: a litre in fifteen seconds is four litres a minute
  test("a litre in 15 s is 4 L/min", () => {
    expect(figureOf("flow_L_min", "jug", 1, 15).figure).toBeCloseTo(4, 12);
  });

  test("repeats narrow a flow, up to what the jug's own volume leaves", () => {
    const once = figureOf("flow_L_min", "jug", 9, 36);
    const often = figureOf("flow_L_min", "jug 1,4", 9, 35.8, 36.1, 36.2, 35.9);
    expect(often.standardError).toBeLessThan(once.standardError);
    // nine litres of a jug read to 0.05 L and 2 %: 2.1 % of 15 L/min
    expect(often.standardError).toBeGreaterThan(15 * 0.02);
  });

  test("a zone at the meter: 0.125 kL in five minutes is 25 L/min", () => {
    const flow = figureOf("flow_L_min", "zone-meter", 1000, 0.001, 812.4, 812.525, 5);
    expect(flow.figure).toBeCloseTo(25, 9);
    expect(flow.standardError).toBeLessThan(1);
    expect(refusal("zone-meter", 1000, 0.001, 812.525, 812.4, 5)).toBe("register-ran-back");
  });

  test("two outlets open: what a shared line loses", () => {
    const { notes } = come("zone-meter-two", 1000, 0.001, 10, 10.1, 5, 10.1, 10.25, 5);
    // 20 L/min alone, 30 together: 15 each, a quarter less
    expect(notes[0]!.facts!.share).toBeCloseTo(0.25, 9);
    expect(lineLoss(20, 40)).toBe(0);
  });
});

describe("a hose from a tank", () => {
  const runs = [0.25, 1, 2.25].map((head_m) => ({ head_m, flow_L_min: 8 * Math.sqrt(head_m) }));

  test("follows the square root of the head", () => {
    expect(flowAtOneMetre_L_min(runs)).toBeCloseTo(8, 12);
    expect(gravityFlow_L_min(8, 4)).toBe(16);
    expect(gravityFlow_L_min(8, -1)).toBe(0);
    expect(largestMiss(runs)).toBeCloseTo(0, 12);
  });

  test("keeps its flow at each level, lowest first, and says where the rule fails", () => {
    // 10 L in 60 s at 1.44 m, 10 L in 120 s at 0.36 m: half the head's root, half the flow
    const found = come("gravity-hose", 4000, 1.44, 10, 60, 1000, 0.36, 10, 120);
    expect(found.values!.flowAt).toEqual([
      { level_L: 1000, flow_L_min: 5 },
      { level_L: 4000, flow_L_min: 10 },
    ]);
    expect(found.notes.map(({ code }) => code)).toEqual(["flow-at-one-metre"]);
    expect(
      come("gravity-hose", 4000, 1.44, 10, 60, 1000, 0.36, 10, 70).notes.map(({ code }) => code),
    ).toContain("not-square-root");
    expect(refusal("gravity-hose", 4000, 1.44, 10, 60)).toBe("one-level-only");
  });
});

describe("leaks", () => {
  test("the range of a drop's size stands beside a drip's litres", () => {
    const { figures, notes } = come("drips", 60);
    const { low, high } = notes[0]!.facts as { low: number; high: number };
    expect(low).toBeCloseTo(21.6, 9);
    expect(high).toBeCloseTo(31.104, 9);
    expect(figures.litresPerDay!.figure).toBeCloseTo((low + high) / 2, 9);
    expect(figures.litresPerDay!.standardError).toBeGreaterThan((high - low) / Math.sqrt(12));
  });

  test("half a litre a minute is 720 L a day", () => {
    expect(figureOf("litresPerDay", "leak-jug", 1, 120).figure).toBeCloseTo(720, 9);
  });
});

describe("catch cans", () => {
  // worked by hand, no print found: 16 cans, the lowest four 30 + 34 + 36 + 40 = 140 of 35 each, mean 50
  const sixteen = [30, 34, 36, 40, 44, 46, 48, 50, 50, 52, 54, 56, 60, 62, 66, 72];

  test("the lowest quarter over the mean", () => {
    expect(distributionUniformity(sixteen)).toBeCloseTo(0.7, 12);
    expect(figureOf("distributionUniformity", "catch-cans", 0, 15, 100, ...sixteen).figure).toBeCloseTo(
      0.7,
      12,
    );
  });

  // 50 mL over a mouth of 100 mm is 50,000 mm³ on 7,854 mm²: 6.366 mm in a quarter of an hour
  test("the rate is depth over time", () => {
    expect(precipitationRate_mm_h(sixteen, 100, 15)).toBeCloseTo(25.4648, 4);
  });

  test("the interval holds the figure, is the same for the same seed, and narrows with more cans", () => {
    const few = uniformityWithInterval(sixteen);
    expect(few.low).toBeLessThan(0.7);
    expect(few.high).toBeGreaterThan(0.7);
    expect(uniformityWithInterval(sixteen)).toEqual(few);
    const many = uniformityWithInterval(Array(6).fill(sixteen).flat());
    expect(many.high - many.low).toBeLessThan(few.high - few.low);
    // six times the cans: near √6 narrower
    expect((few.high - few.low) / (many.high - many.low)).toBeGreaterThan(1.6);
  });

  test("few cans, wind and empty cans are said", () => {
    const codes = (wind: number) =>
      come("catch-cans", wind, 15, 100, ...sixteen).notes.map(({ code }) => code);
    expect(codes(0)).toContain("few-cans");
    expect(codes(2)).toContain("windy");
    expect(refusal("catch-cans", 0, 15, 100, 3, 4, 5)).toBe("too-few-cans");
    expect(refusal("catch-cans", 0, 15, 100, 0, 0, 0, 0)).toBe("cans-empty");
  });
});

test("sprinklers with faults are mended before cans are set", () => {
  expect(sprinklerFindings({ sprinklers: 8, seen: { tilted: 2, overspray: 3 } })).toEqual({
    faults: [
      { fault: "overspray", sprinklers: 3, share: 0.375 },
      { fault: "tilted", sprinklers: 2, share: 0.25 },
    ],
    cansWorthwhile: false,
  });
  expect(sprinklerFindings({ sprinklers: 8, seen: { overspray: 1 } }).cansWorthwhile).toBe(true);
});

describe("the habit against a week's log", () => {
  const week = [30, 0, 20, 0, 40, 0, 0];

  test("is the mean of the waterings there were, on their days", () => {
    expect(habitOf(week)).toEqual({ minutes: 30, days: ["mon", "wed", "fri"] });
    expect(habitOf([0, 0, 0, 0, 0, 0, 0])).toEqual({ minutes: 0, days: [] });
    expect(come("habit-week", ...week).values).toEqual({ "habit.days": ["mon", "wed", "fri"] });
  });

  test("is compared with what was told", () => {
    expect(loggedOverTold(week, { minutes: 20, days: ["mon", "wed", "fri"] })).toBe(1.5);
    expect(loggedOverTold(week, { minutes: 0, days: ["mon"] })).toBeNull();
  });
});
