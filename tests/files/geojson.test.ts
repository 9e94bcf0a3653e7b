import { describe, expect, test } from "vitest";
import { readGeoJson, writeGeoJson } from "../../src/files/geojson.ts";
import type { Corner } from "../../src/survey/measuring/polygon.ts";

const ring = [
  [0, 0],
  [0.001, 0],
  [0.001, 0.001],
  [0, 0.001],
  [0, 0],
];
const hole = [
  [0.0004, 0.0004],
  [0.0006, 0.0004],
  [0.0006, 0.0006],
  [0.0004, 0.0006],
  [0.0004, 0.0004],
];
const polygon = (...rings: unknown[]) => ({ type: "Polygon", coordinates: rings });
const feature = (geometry: unknown, name = "Oval") => ({ type: "Feature", properties: { name }, geometry });
const read = (value: unknown) => readGeoJson(JSON.stringify(value));

describe("shapes in", () => {
  test("areas are on the ellipsoid, holes taken away", () => {
    const whole = read(polygon(ring)).shapes[0]!.area_m2;
    const holed = read(polygon(ring, hole)).shapes[0]!.area_m2;
    // 0.001° of equator is 111.319 m, of meridian 110.574 m
    expect(whole).toBeCloseTo(111.31949 * 110.57427, 1);
    expect(holed / whole).toBeCloseTo(1 - 0.04, 6);
  });

  test("whatever they are wrapped in, points and lines left aside", () => {
    const { shapes, faults } = read({
      type: "FeatureCollection",
      features: [
        feature(polygon(ring)),
        feature({ type: "Point", coordinates: [0, 0] }),
        feature(
          {
            type: "GeometryCollection",
            geometries: [{ type: "MultiPolygon", coordinates: [[ring], [ring]] }],
          },
          "Two",
        ),
        feature(null),
      ],
    });
    expect(shapes.map(({ name }) => name)).toEqual(["Oval", "Two", "Two"]);
    expect(faults).toEqual([]);
  });

  test.each([
    ["not JSON", "{", "not-json"],
    ["no GeoJSON", '{"type":"Bed"}', "not-geojson"],
    ["a list", "[1]", "not-geojson"],
    ["no polygons", '{"type":"Point","coordinates":[0,0]}', "no-polygons"],
    ["an open ring", JSON.stringify(polygon(ring.slice(0, 4))), "not-a-ring"],
    [
      "words for numbers",
      JSON.stringify(
        polygon([
          ["0", 0],
          [1, 0],
          [1, 1],
          ["0", 0],
        ]),
      ),
      "not-a-ring",
    ],
    [
      "latitude beyond the pole",
      JSON.stringify(
        polygon([
          [0, 0],
          [0, 91],
          [1, 1],
          [0, 0],
        ]),
      ),
      "outside-the-world",
    ],
    [
      "sides that cross",
      JSON.stringify(
        polygon([
          [0, 0],
          [1, 1],
          [1, 0],
          [0, 1],
          [0, 0],
        ]),
      ),
      "sides-cross",
    ],
  ])("%s is named", (_, text, code) => {
    expect(readGeoJson(text).faults.map((fault) => fault.code)).toEqual([code]);
  });

  test("a wrong shape leaves the right ones standing", () => {
    const { shapes, faults } = read({
      type: "FeatureCollection",
      features: [feature(polygon([[0, 0]])), feature(polygon(ring))],
    });
    expect(shapes).toHaveLength(1);
    expect(faults).toEqual([{ at: 0, code: "not-a-ring", facts: {} }]);
  });
});

test("outlines out come back as they were", () => {
  const outline_m: Corner[] = [
    [0, 0],
    [30, 2],
    [28, 21],
    [-3, 18],
  ];
  const text = writeGeoJson([-122.45, 47.55], [{ name: "Front beds", outline_m }]);
  const { shapes, faults } = readGeoJson(text);
  expect(faults).toEqual([]);
  expect(shapes[0]!.name).toBe("Front beds");
  shapes[0]!.outline_m.forEach(([x, y], i) => {
    expect(Math.hypot(x - outline_m[i]![0], y - outline_m[i]![1])).toBeLessThan(0.001);
  });
});
