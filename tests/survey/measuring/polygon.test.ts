import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Corner,
  crossingSides,
  polygonArea,
  polygonPerimeter,
} from "../../../src/survey/measuring/polygon.ts";

describe("a polygon", () => {
  test("has the area of the shoelace, either way round and far from the origin", () => {
    const square: Corner[] = [
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ];
    expect(polygonArea(square)).toBe(12);
    expect(polygonArea(square.toReversed())).toBe(12);
    expect(polygonArea(square.map(([x, y]): Corner => [x + 5e6, y - 3e6]))).toBeCloseTo(12, 6);
    expect(polygonPerimeter(square)).toBe(14);
  });

  test("of many corners on a circle has nearly the circle's area", () => {
    const n = 360;
    const round = Array.from({ length: n }, (_, i): Corner => {
      const angle = (2 * Math.PI * i) / n;
      return [10 * Math.cos(angle), 10 * Math.sin(angle)];
    });
    expect(polygonArea(round)).toBeCloseTo(0.5 * n * 100 * Math.sin((2 * Math.PI) / n), 9);
    expect(crossingSides(round)).toBeNull();
  });

  test.each<[string, Corner[], [number, number] | null]>([
    [
      "bow tie",
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
      [0, 2],
    ],
    [
      "corner on a side",
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 0],
        [0, 4],
      ],
      [0, 2],
    ],
    [
      "spike that runs back",
      [
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 3],
      ],
      [0, 1],
    ],
    [
      "reentrant corner",
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 1],
        [0, 4],
      ],
      null,
    ],
    [
      "same corner twice",
      [
        [0, 0],
        [4, 0],
        [2, 2],
        [2, 4],
        [2, 2],
        [0, 2],
      ],
      [1, 3],
    ],
  ])("%s", (_, corners, wanted) => {
    expect(crossingSides(corners)).toEqual(wanted);
  });

  test("that runs round a centre never crosses itself", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 9, noNaN: true }), { minLength: 3, maxLength: 30 }),
        (radii) => {
          const corners = radii.map((radius, i): Corner => {
            const angle = (2 * Math.PI * i) / radii.length;
            return [radius * Math.cos(angle), radius * Math.sin(angle)];
          });
          return crossingSides(corners) === null;
        },
      ),
    );
  });
});
