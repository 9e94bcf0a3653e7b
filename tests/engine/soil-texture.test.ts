import { describe, expect, test } from "vitest";
import { textureWater, totalEvaporableWater } from "../../src/engine/soil-texture.ts";
import { textureClass, textureClasses } from "../../src/engine/texture-class.ts";

/**
 * Saxton and Rawls 2006, Table 3, 2.5 % organic matter, as reprinted:
 * sand %, clay %, wilting point, field capacity, saturation, Ks mm/h.
 */
const printed: [string, number, number, number, number, number, number][] = [
  ["sand", 88, 5, 0.05, 0.1, 0.46, 108.1],
  ["sandy-loam", 65, 10, 0.08, 0.18, 0.45, 50.3],
  ["loam", 40, 20, 0.14, 0.28, 0.46, 15.5],
  ["silt-loam", 20, 15, 0.11, 0.31, 0.48, 16.1],
  ["sandy-clay-loam", 60, 25, 0.17, 0.27, 0.43, 11.3],
  ["clay-loam", 30, 35, 0.22, 0.36, 0.48, 4.3],
  ["silty-clay", 10, 45, 0.27, 0.41, 0.52, 3.7],
];

describe("textureWater, Saxton and Rawls 2006 Table 3", () => {
  test.each(printed)("%s", (texture, sand, clay, wp, fc, saturation, ks) => {
    const water = textureWater(sand / 100, clay / 100);
    expect(Math.abs(water.wiltingPoint - wp)).toBeLessThanOrEqual(0.006);
    expect(Math.abs(water.fieldCapacity - fc)).toBeLessThanOrEqual(0.006);
    expect(Math.abs(water.saturation - saturation)).toBeLessThanOrEqual(0.006);
    expect(Math.abs(water.saturatedConductivity_mm_h - ks)).toBeLessThanOrEqual(0.06);
    expect(textureClass(sand, clay)).toBe(texture);
  });
});

test("TEW by FAO-56 Eq. 73: 1000 (0.30 − 0.5 × 0.12) 0.10 = 24 mm", () => {
  expect(totalEvaporableWater(0.3, 0.12)).toBeCloseTo(24, 12);
});

describe("textureClass, limits of the USDA triangle", () => {
  test.each([
    [92, 3, "sand"],
    [82, 6, "loamy-sand"],
    [65, 10, "sandy-loam"],
    [50, 5, "sandy-loam"],
    [40, 20, "loam"],
    [20, 15, "silt-loam"],
    [10, 5, "silt"],
    [5, 13, "silt-loam"],
    [60, 27, "sandy-clay-loam"],
    [32.5, 33.5, "clay-loam"],
    [10, 34, "silty-clay-loam"],
    [52, 42, "sandy-clay"],
    [6, 47, "silty-clay"],
    [20, 60, "clay"],
    [45, 40, "clay"],
    [45, 27, "clay-loam"],
    [52, 10, "loam"],
    [53, 10, "sandy-loam"],
    [0, 100, "clay"],
    [100, 0, "sand"],
    [0, 0, "silt"],
  ])("%d %% sand, %d %% clay: %s", (sand, clay, texture) => {
    expect(textureClass(sand, clay)).toBe(texture);
  });

  test("the triangle is covered by all twelve", () => {
    const met = new Set<string>();
    for (let sand = 0; sand <= 100; sand++)
      for (let clay = 0; clay <= 100 - sand; clay++) met.add(textureClass(sand, clay));
    expect([...met].sort()).toEqual([...textureClasses].sort());
  });
});
