import { describe, expect, test } from "vitest";
import { randomStream } from "../../../src/engine/weather/rng.ts";
import { chartSteps, coverPicture, type Leaf, leafPath } from "../../../src/survey/measuring/cover-chart.ts";
import { countGreen } from "../../../src/survey/measuring/green.ts";
import { wilson } from "../../../src/survey/measuring/wilson.ts";
import { come, figureOf, refusal } from "./readings.ts";

/** Side of the picture in pixels. */
const side = 500;

/** The leaf's outline in short straight pieces. */
function outline({ from, edges, to }: Leaf): [number, number][] {
  const curve = (
    a: readonly [number, number],
    control: readonly [number, number],
    b: readonly [number, number],
  ) =>
    Array.from({ length: 40 }, (_, i): [number, number] => {
      const t = i / 40;
      const mix = (k: 0 | 1) => (1 - t) ** 2 * a[k] + 2 * t * (1 - t) * control[k] + t * t * b[k];
      return [mix(0), mix(1)];
    });
  return [...curve(from, edges[0], to), ...curve(to, edges[1], from)];
}

/** Fills outlines row by row, pixels whose middle lies inside, each pixel once. */
function painted(shapes: readonly Leaf[]): Uint8Array {
  const pixels = new Uint8Array(side * side);
  for (const corners of shapes.map(outline)) {
    const heights = corners.map(([, y]) => y);
    const lowest = Math.min(side - 1, Math.floor(Math.max(...heights) * side));
    for (let row = Math.floor(Math.min(...heights) * side); row <= lowest; row++) {
      const y = (row + 0.5) / side;
      const crossings = corners.flatMap(([x1, y1], i) => {
        const [x2, y2] = corners[(i + 1) % corners.length]!;
        return y1 <= y !== y2 <= y ? [x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)] : [];
      });
      crossings.sort((a, b) => a - b);
      for (let k = 0; k + 1 < crossings.length; k += 2) {
        const last = Math.min(side - 1, Math.ceil(crossings[k + 1]! * side - 0.5) - 1);
        for (let column = Math.max(0, Math.ceil(crossings[k]! * side - 0.5)); column <= last; column++)
          pixels[row * side + column]!++;
      }
    }
  }
  return pixels;
}

describe("the chart of leaf cover", () => {
  test("has ten steps", () => {
    expect(chartSteps).toHaveLength(10);
  });

  describe.each(chartSteps)("%d", (cover) => {
    test.each([1, 2, 3])("has the cover stated, within half a percent of the square, seed %d", (seed) => {
      const picture = coverPicture(cover, randomStream(seed));
      const pixels = painted(picture.shapes);
      const filled = pixels.reduce((sum, times) => sum + (times > 0 ? 1 : 0), 0) / pixels.length;
      const seen = picture.shows === "leaves" ? filled : 1 - filled;
      expect(Math.abs(seen - cover)).toBeLessThan(0.005);
      // no shape lies over another: each pixel is filled once
      expect(pixels.reduce((most, times) => Math.max(most, times), 0)).toBe(1);
    });

    test("stays within its square", () => {
      const all = coverPicture(cover, randomStream(4)).shapes.flatMap(outline).flat();
      expect(Math.min(...all)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...all)).toBeLessThanOrEqual(1);
    });
  });

  test("draws a leaf as one path", () => {
    const [leaf] = coverPicture(0.3, randomStream(1)).shapes;
    expect(leafPath(leaf!, 100)).toMatch(/^M[\d.]+ [\d.]+Q[\d. ]+Q[\d. ]+Z$/);
  });
});

describe("Wilson's interval", () => {
  // Newcombe 1998, Statistics in Medicine 17:857–872, Table I, method 3, 95 % (from memory)
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])("%d of %d", (hits, points, low, high) => {
    const found = wilson(hits, points);
    expect(Math.abs(found.low - low)).toBeLessThan(0.00005001);
    expect(Math.abs(found.high - high)).toBeLessThan(0.00005001);
  });

  test("its ends are where the score test just holds", () => {
    for (const [hits, points] of [
      [7, 40],
      [39, 40],
      [3, 11],
    ] as const) {
      const { share, low, high } = wilson(hits, points);
      for (const end of [low, high])
        expect(((share - end) ** 2 * points) / (end * (1 - end))).toBeCloseTo(1.959963984540054 ** 2, 9);
    }
  });

  test("none of the points still leaves an error", () => {
    expect(figureOf("leafCover", "leaf-points", 0, 40)).toEqual({
      figure: 0,
      standardError: expect.closeTo(0.0224, 4),
    });
  });
});

describe("counts and depths", () => {
  test("points of several tapes add up", () => {
    expect(figureOf("leafCover", "leaf-points 2,2", 14, 20, 20, 30).figure).toBe(0.68);
    expect(refusal("leaf-points", 21, 20)).toBe("more-hits-than-points");
  });

  test("few points say so", () => {
    expect(come("mulch-points", 8, 10).notes.map(({ code }) => code)).toEqual([
      "share-between",
      "few-points",
    ]);
  });

  test("mulch is the mean of its spots", () => {
    expect(figureOf("mulch.depth_mm", "mulch-depth 5", 40, 50, 60, 45, 55).figure).toBe(50);
  });
});

describe("green pixels of a photograph", () => {
  const picture = (...colours: [number, number, number, number][]) => Uint8ClampedArray.from(colours.flat());

  test("leaves count; soil, sky, dark and see-through do not", () => {
    const rgba = picture(
      [60, 120, 40, 255],
      [130, 160, 60, 255],
      [120, 90, 60, 255],
      [130, 170, 230, 255],
      [5, 12, 4, 255],
      [60, 120, 40, 0],
      [128, 128, 128, 255],
    );
    expect(countGreen(rgba)).toEqual({ green: 2, pixels: 6 });
  });

  test("is offered as a help", () => {
    expect(come("leaf-photograph", 400, 1000).notes).toEqual([{ code: "photograph-is-a-help" }]);
    expect(figureOf("leafCover", "leaf-photograph", 400, 1000).standardError).toBeGreaterThan(0.1);
  });
});
