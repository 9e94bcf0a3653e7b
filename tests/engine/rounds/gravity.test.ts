import { expect, test } from "vitest";
import { flowAtLevel_L_min, minutesToDraw } from "../../../src/engine/rounds/gravity.ts";

/** Flow goes with the square root of the head: a quarter of the head, half the flow. Common practice (Torricelli). */
const one = { flowAt: [{ level_L: 4000, flow_L_min: 12 }], unusable_L: 0 };

test("a tap measured at one level flows half as fast at a quarter of the head", () => {
  expect(flowAtLevel_L_min(one, 1000)).toBeCloseTo(6, 9);
  expect(flowAtLevel_L_min(one, 4000)).toBeCloseTo(12, 9);
  expect(flowAtLevel_L_min(one, 0)).toBe(0);
});

test("the head counts from the outlet", () => {
  const raised = { ...one, unusable_L: 800 };
  expect(flowAtLevel_L_min(raised, 1600)).toBeCloseTo(6, 9);
  expect(flowAtLevel_L_min(raised, 800)).toBe(0);
});

test("measured levels give their own flow back, levels between them one between", () => {
  const tap = {
    flowAt: [
      { level_L: 4500, flow_L_min: 14 },
      { level_L: 1500, flow_L_min: 8 },
    ],
    unusable_L: 250,
  };
  expect(flowAtLevel_L_min(tap, 4500)).toBeCloseTo(14, 9);
  expect(flowAtLevel_L_min(tap, 1500)).toBeCloseTo(8, 9);
  expect(flowAtLevel_L_min(tap, 3000)).toBeCloseTo(Math.sqrt((14 ** 2 + 8 ** 2) / 2), 9);
});

test("emptying an upright tank through its tap takes twice as long as at the first flow", () => {
  expect(minutesToDraw(one, 4000, 4000)).toBeCloseTo((2 * 4000) / 12, 6);
});

test("minutes are those of flowing minute by minute", () => {
  const tap = {
    flowAt: [
      { level_L: 4500, flow_L_min: 14 },
      { level_L: 2500, flow_L_min: 11 },
      { level_L: 1500, flow_L_min: 8 },
    ],
    unusable_L: 250,
  };
  let level_L = 4000;
  let minutes = 0;
  const step = 0.01;
  while (level_L > 1000) {
    level_L -= step * flowAtLevel_L_min(tap, level_L);
    minutes += step;
  }
  expect(minutesToDraw(tap, 4000, 3000)).toBeCloseTo(minutes, 0);
});

test("more than lies above the outlet never comes", () => {
  expect(minutesToDraw({ ...one, unusable_L: 500 }, 1000, 600)).toBe(Number.POSITIVE_INFINITY);
});
