import { describe, expect, test } from "vitest";
import { offsetRule, offsets_m2 } from "../../../src/survey/measuring/offsets.ts";
import { polygonArea } from "../../../src/survey/measuring/polygon.ts";
import * as shapes from "../../../src/survey/measuring/shapes.ts";
import { come, figureOf, refusal } from "./readings.ts";

const area = (how: string, ...readings: number[]) => figureOf("area_m2", how, ...readings).figure;

describe("plain shapes, against closed forms", () => {
  test.each([
    ["rectangle", [8, 5], 40],
    ["triangle", [3, 4, 5], 6],
    ["triangle", [13, 14, 15], 84],
    ["circle", [4], 4 * Math.PI],
    ["ellipse", [6, 4], 6 * Math.PI],
    ["trapezium", [8, 5, 4], 26],
    ["l-shape", [10, 8, 4, 3], 68],
    ["four-sides", [3, 4, 12, 13, 5], 36],
    ["oval", [100, 73], 7300 + Math.PI * 36.5 ** 2],
    ["path", [25, 1.2], 30],
    ["ring", [3, 1], Math.PI * (16 - 9)],
  ])("%s of %j", (how, readings, wanted) => {
    expect(area(how, ...readings)).toBeCloseTo(wanted, 9);
  });

  // Kahan's needle: Heron's formula as printed loses it, the ordered brackets keep it.
  test("a needle of a triangle keeps its area", () => {
    expect(shapes.triangle_m2(100000, 99999.99979, 0.00029)).toBeCloseTo(9.9999999895, 6);
  });

  test("a triangle is the corners' polygon", () => {
    const [a, b, c] = [7, 9, 11];
    const x = (a * a - b * b + c * c) / (2 * c);
    const corners = [
      [0, 0],
      [c, 0],
      [x, Math.sqrt(a * a - x * x)],
    ] as const;
    expect(area("triangle", a, b, c)).toBeCloseTo(polygonArea(corners), 9);
  });
});

describe("offsets along a base line", () => {
  // Simpson's rule is exact for a parabola; the trapezoid rule falls short of a bulge by h²/12 (f'(b) − f'(a)).
  const parabola = (x: number) => 1 + x * (8 - x);
  const along = [0, 1, 2, 3, 4, 5, 6, 7, 8];
  const under = 8 + 4 * 64 - 512 / 3;

  test("Simpson's rule gives a parabola's area exactly", () => {
    expect(area("offsets", 1, 1, ...along.map(parabola))).toBeCloseTo(under, 9);
  });

  test("the trapezoid rule misses it by what theory says", () => {
    expect(offsets_m2(1, along.map(parabola), "trapezoid")).toBeCloseTo(under + (1 / 12) * (-8 - 8), 9);
  });

  test("which rule applies", () => {
    expect(offsetRule(9, true)).toBe("simpson");
    expect(offsetRule(8, true)).toBe("trapezoid");
    expect(offsetRule(9, false)).toBe("trapezoid");
    expect(come("offsets", 1, 2, 0, 1, 2, 1).notes.map(({ code }) => code)).toEqual([
      "rule-trapezoid",
      "one-offset-more-for-simpson",
    ]);
  });

  test("uneven places are trapezoids between neighbours", () => {
    expect(area("offsets-uneven", 0, 1, 2, 3, 5, 1)).toBeCloseTo(4 + 6, 9);
    expect(refusal("offsets-uneven", 0, 1, 2, 3, 2, 1)).toBe("along-not-rising");
  });
});

describe("shapes together", () => {
  test("are added and taken away", () => {
    expect(area("rectangle + circle - triangle", 10, 6, 2, 3, 4, 5)).toBeCloseTo(60 + Math.PI - 6, 9);
  });

  test("each with its own repeats", () => {
    expect(area("rectangle 2,1 - circle 3", 10.1, 9.9, 6, 2.1, 2, 1.9)).toBeCloseTo(60 - Math.PI, 9);
  });

  test("paced lengths take the pace's own length", () => {
    expect(area("paced rectangle", 20, 25, 40, 10)).toBeCloseTo(400 * 0.64, 9);
    expect(area("paced circle", 30, 40, 8)).toBeCloseTo(16 * Math.PI * 0.5625, 9);
  });
});

describe("what cannot be is named", () => {
  test.each([
    ["triangle", [2, 3, 6], "side-too-long"],
    ["four-sides", [3, 4, 2, 2, 5], "side-too-long"],
    ["l-shape", [10, 8, 12, 3], "cut-too-large"],
    ["rectangle - circle", [2, 2, 5], "nothing-left"],
    ["rectangle", [2], "readings-do-not-fit"],
    ["rectangle", [2, -1], "below-nothing"],
    ["offsets", [1, 2, 3], "too-few-offsets"],
    ["rectangle + jug", [2, 3, 1, 15], "only-areas-add"],
    ["paced jug", [20, 25, 1, 15], "only-areas-are-paced"],
    ["plan", [10, 100, 1, 0, 0, 10, 10, 10, 0, 0, 10], "sides-cross"],
    ["plan", [10, 100, 1, 0, 0, 10, 10], "too-few-corners"],
  ])("%s of %j: %s", (how, readings, code) => {
    expect(refusal(how, ...readings)).toBe(code);
  });

  test("a triangle that just closes is one", () => {
    expect(area("triangle", 2, 3, 5)).toBe(0);
  });
});

test("pots and raised beds bound the roots and hold potting mix", () => {
  const pots = come("pots", 12, 0.4, 0.35);
  expect(pots.figures.area_m2!.figure).toBeCloseTo(12 * Math.PI * 0.04, 9);
  expect(pots.figures.rootDepth_m!.figure).toBe(0.35);
  expect(pots.words).toEqual({ "soil.texture": "potting-mix" });
  expect(come("raised-beds", 3, 2, 1.2, 0.5).figures.area_m2!.figure).toBeCloseTo(7.2, 9);
});
