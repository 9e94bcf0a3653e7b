import { expect, test } from "vitest";
import { distributionUniformity, efficiencyFromUniformity } from "../../src/engine/uniformity.ts";

test("four cans: the lowest over the mean", () => {
  expect(distributionUniformity([8, 12, 4, 8])).toBe(0.5);
});

test("six cans: the quarter is one can and a half", () => {
  expect(distributionUniformity([10, 20, 30, 40, 50, 60])).toBeCloseTo((10 + 0.5 * 20) / 1.5 / 35, 12);
});

test("even cans are 1, whatever their number", () => {
  for (const n of [1, 2, 3, 5, 7, 24]) expect(distributionUniformity(Array(n).fill(35))).toBeCloseTo(1, 12);
});

test("no water in any can is no uniformity", () => {
  expect(distributionUniformity([0, 0, 0, 0])).toBeNaN();
});

test("efficiency is the inverse of the run-time multiplier of DU 0.45, 0.60, 0.75, 1", () => {
  const multipliers = [0.45, 0.6, 0.75, 1].map((du) => 1 / efficiencyFromUniformity(du));
  for (const [i, printed] of [1.493, 1.316, 1.176, 1].entries())
    expect(Math.abs(multipliers[i]! - printed)).toBeLessThanOrEqual(0.001);
});
