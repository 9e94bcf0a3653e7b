import { describe, expect, test } from "vitest";
import { figureOf } from "../../../components/walk/aids/shapes.ts";
import { shapeFigure, usualSizes } from "../../../components/walk/drawings/shape-geometry.ts";
import { type Entry, readEntry } from "../../../components/walk/entry.ts";
import { polygonArea } from "../../../src/survey/measuring/polygon.ts";

const typed = { system: "metric", locale: "en" } as const;

/** Sizes of a shape as texts of its blanks. */
const texts: Readonly<Record<string, string[][]>> = {
  rectangle: [["6"], ["4"]],
  triangle: [["6"], ["5"], ["4"]],
  circle: [["5"]],
  ellipse: [["7"], ["4.4"]],
  trapezium: [["7"], ["4"], ["3.6"]],
  "l-shape": [["7"], ["5"], ["3.5"], ["2.4"]],
  "four-sides": [["6"], ["3.6"], ["5"], ["4.6"], ["6.6"]],
  offsets: [["0"], ["1.5"], ["2", "2.8", "3.3", "2.9", "2.2"]],
  "offsets-uneven": [["0", "2", "1.6", "3", "3.6", "2.6", "6", "3.4"]],
  oval: [["6"], ["4"]],
  path: [["9"], ["1.5"]],
  ring: [["2"], ["1.2"]],
};

describe("a shape is drawn to the scale of its lengths", () => {
  test.each(Object.entries(texts))("%s: the drawing encloses the area worked out", (way, blanks) => {
    const entry: Entry = { paced: null, terms: [{ sign: 1, way, texts: blanks }] };
    const { outcome } = readEntry(entry, typed);
    const worked = outcome && "figures" in outcome ? outcome.figures.area_m2!.figure : 0;
    const drawn = figureOf(entry, 0, typed)!;
    expect(drawn.toScale).toBe(true);
    const enclosed = polygonArea(drawn.figure.corners) - polygonArea(drawn.figure.hole ?? []);
    // bends are drawn in short straight steps: an area a little small
    expect(enclosed / worked).toBeGreaterThan(0.996);
    expect(enclosed / worked).toBeLessThan(1.0001);
  });

  test.each(Object.keys(texts))("%s: every length lies on the drawing as long as it was read", (way) => {
    const { figure } = figureOf({ paced: null, terms: [{ sign: 1, way, texts: texts[way]! }] }, 0, typed)!;
    const read = texts[way]!;
    for (const { slot, from, to } of figure.dimensions) {
      const drawn = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const wanted = read[slot]!.map(Number);
      expect(Math.min(...wanted.map((length) => Math.abs(length - drawn))), `${way} ${slot}`).toBeLessThan(
        1e-9,
      );
    }
  });
});

test("sides that do not meet are drawn apart", () => {
  const figure = shapeFigure("triangle", [9, 3, 4])!;
  expect(figure.closes).toBe(false);
  const [left, , , right] = figure.corners;
  expect(right![0] - left![0]).toBeGreaterThan(0);
});

test("before anything is typed a usual one stands there, and says that it is not to scale", () => {
  for (const way of Object.keys(usualSizes)) {
    const blanks = (texts[way] ?? [["", "", ""], [""], [""], [""]]).map(() => [""]);
    const drawn = figureOf({ paced: null, terms: [{ sign: 1, way, texts: blanks }] }, 0, typed);
    expect(drawn?.toScale, way).toBe(false);
    expect(drawn?.figure.closes, way).toBe(true);
  }
});
