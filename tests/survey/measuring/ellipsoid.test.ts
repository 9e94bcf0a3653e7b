import { describe, expect, test } from "vitest";
import {
  type LongitudeLatitude,
  metresFrom,
  placeAt,
  ringOnEllipsoid,
} from "../../../src/survey/measuring/ellipsoid.ts";
import { polygonArea } from "../../../src/survey/measuring/polygon.ts";

describe("areas on the ellipsoid", () => {
  // GeographicLib's documentation: one degree square at the equator, and four cities
  test("a degree square has the area that the library's documentation prints", () => {
    const { area_m2, perimeter_m } = ringOnEllipsoid([
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ]);
    expect(area_m2).toBeCloseTo(12308778361.469452, 3);
    expect(perimeter_m).toBeCloseTo(443770.91724830196, 5);
  });

  // Area of the earth: 4π c², c² the square of the authalic radius (WGS84: 6,371,007.181 m)
  test("an eighth of the earth has an eighth of its area", () => {
    const { area_m2 } = ringOnEllipsoid([
      [0, 0],
      [90, 0],
      [0, 90],
    ]);
    expect(area_m2 / ((4 * Math.PI * 6371007.181 ** 2) / 8)).toBeCloseTo(1, 8);
  });

  const origin: LongitudeLatitude = [145.07, -37.83];
  const field: [number, number][] = [
    [0, 0],
    [120, 10],
    [130, 90],
    [40, 120],
    [-10, 60],
  ];

  test("a field has the area of the plane to a millionth", () => {
    const { area_m2 } = ringOnEllipsoid(field.map((corner) => placeAt(origin, corner)));
    expect(Math.abs(area_m2 / polygonArea(field) - 1)).toBeLessThan(1e-6);
  });

  test("metres lead to a place and back", () => {
    for (const corner of field) {
      const back = metresFrom(origin, placeAt(origin, corner));
      expect(Math.hypot(back[0] - corner[0], back[1] - corner[1])).toBeLessThan(1e-6);
    }
  });
});
