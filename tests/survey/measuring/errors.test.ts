import { describe, expect, test } from "vitest";
import { type Rng, randomStream } from "../../../src/engine/weather/rng.ts";
import { normals } from "../../../src/engine/weather/variates.ts";
import { type Figure, propagate } from "../../../src/survey/measuring/figure.ts";
import { tracedArea_m2, tracedPerimeter_m } from "../../../src/survey/measuring/plan.ts";
import { type Corner, polygonArea, polygonPerimeter } from "../../../src/survey/measuring/polygon.ts";
import { deviation, meanOfReadings } from "../../../src/survey/measuring/repeats.ts";
import { workOut } from "../../../src/survey/measuring/work-out.ts";
import { errorOfReading } from "../../../src/tables/reading-errors.ts";
import { figureOf } from "./readings.ts";

/** Draws of a simulation; its standard deviation is then known to 1/√(2n), 1.1 %. */
const draws = 4000;
/** Four times that. */
const off = 4 / Math.sqrt(2 * draws);

function simulated(seed: number, draw: (normal: () => number, rng: Rng) => number): number {
  const rng = randomStream(seed);
  const normal = normals(rng);
  return deviation(Array.from({ length: draws }, () => draw(normal, rng)));
}

describe("repeated readings", () => {
  // 12.1, 12.3, 12.5: mean 12.3, s 0.2, s/√3 by hand
  test("give mean and standard error", () => {
    const { figure, standardError } = meanOfReadings([12.1, 12.3, 12.5], 0.02);
    expect(figure).toBeCloseTo(12.3, 12);
    expect(standardError).toBeCloseTo(0.2 / Math.sqrt(3), 12);
  });

  test("that agree by luck are no surer than the instrument", () => {
    expect(meanOfReadings([5, 5, 5, 5], 0.02).standardError).toBeCloseTo(0.01, 12);
  });

  test("one alone has the instrument's error", () => {
    expect(meanOfReadings([5], 0.02)).toEqual({ figure: 5, standardError: 0.02 });
  });
});

test("errors of a product add as shares, in squares", () => {
  const { figure, standardError } = propagate(
    ([a, b]) => a! * b!,
    [
      { figure: 8, standardError: 0.04 },
      { figure: 5, standardError: 0.1 },
    ],
  );
  expect(figure).toBe(40);
  expect(standardError).toBeCloseTo(40 * Math.hypot(0.005, 0.02), 9);
});

describe("first order agrees with simulation", () => {
  const ways: [string, number[]][] = [
    ["rectangle", [8, 5]],
    ["triangle", [7, 9, 11]],
    ["circle", [4]],
    ["ellipse", [6, 4]],
    ["trapezium", [8, 5, 4]],
    ["l-shape", [10, 8, 4, 3]],
    ["four-sides", [6, 7, 8, 9, 10]],
    ["oval", [60, 40]],
    ["ring", [3, 1]],
    ["rectangle + circle - triangle", [10, 6, 2, 3, 4, 5]],
  ];
  test.each(ways)("%s of %j", (how, readings) => {
    const { standardError } = figureOf("area_m2", how, ...readings);
    const tape = readings.map((reading) => errorOfReading("tape", reading));
    const seen = simulated(7, (normal) => {
      const read = readings.map((reading, i) => reading + tape[i]! * normal());
      const outcome = workOut(how, read);
      return outcome && "figures" in outcome ? outcome.figures.area_m2!.figure : Number.NaN;
    });
    expect(Math.abs(seen / standardError - 1)).toBeLessThan(off);
  });

  test("paced rectangle: the pace's error is common to both sides", () => {
    const readings = [20, 25, 40, 30];
    const { figure, standardError } = figureOf("area_m2", "paced rectangle", ...readings);
    const errors = readings.map((reading, i) => errorOfReading(i === 0 ? "tape" : "paces", reading));
    const seen = simulated(8, (normal) => {
      const [known, paces, a, b] = readings.map((reading, i) => reading + errors[i]! * normal()) as [
        number,
        number,
        number,
        number,
      ];
      return a * b * (known / paces) ** 2;
    });
    expect(figure).toBeCloseTo(768, 9);
    expect(Math.abs(seen / standardError - 1)).toBeLessThan(2 * off);
  });

  const corners: Corner[] = [
    [100, 100],
    [420, 130],
    [450, 330],
    [300, 260],
    [120, 380],
  ];
  const scale = { known_m: { figure: 20, standardError: 0.08 }, known_px: 400, point_px: 2 };

  function traced(normal: () => number, what: (corners: Corner[], scale: number) => number): number {
    const placed = corners.map(([x, y]): Corner => [x + 2 * normal(), y + 2 * normal()]);
    const known_px = Math.hypot(400 + 2 * Math.SQRT2 * normal(), 2 * Math.SQRT2 * normal());
    return what(placed, (20 + 0.08 * normal()) / known_px);
  }

  test("area and perimeter traced on a plan", () => {
    const area: Figure = tracedArea_m2(corners, scale);
    const perimeter = tracedPerimeter_m(corners, scale);
    const areas = simulated(9, (normal) => traced(normal, (c, m) => polygonArea(c) * m * m));
    const perimeters = simulated(9, (normal) => traced(normal, (c, m) => polygonPerimeter(c) * m));
    expect(area.figure).toBeCloseTo(polygonArea(corners) / 400, 9);
    expect(Math.abs(areas / area.standardError - 1)).toBeLessThan(2 * off);
    expect(Math.abs(perimeters / perimeter.standardError - 1)).toBeLessThan(2 * off);
  });
});
