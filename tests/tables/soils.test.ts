import { describe, expect, test } from "vitest";
import { textureWater, totalEvaporableWater } from "../../src/engine/soil-texture.ts";
import { textureClass } from "../../src/engine/texture-class.ts";
import { soil, soils } from "../../src/tables/soils.ts";

describe("soils", () => {
  test("loam by FAO-56 Table 19: middle of 0.20–0.30, less the middle of 0.13–0.18", () => {
    const { fieldCapacity, wiltingPoint, tew_mm, rew_mm } = soil("loam");
    expect([fieldCapacity.middle, wiltingPoint.middle, tew_mm.middle, rew_mm.middle]).toEqual([
      0.25, 0.095, 19, 9,
    ]);
  });

  test("field capacity less available water is the wilting point, within the ends printed for it", () => {
    for (const { fieldCapacity, available, wiltingPoint } of soils) {
      expect(fieldCapacity.middle - available.middle).toBeCloseTo(wiltingPoint.middle, 5);
    }
  });

  test("REW is never above TEW", () => {
    for (const { rew_mm, tew_mm } of soils) {
      expect(rew_mm.middle).toBeLessThanOrEqual(tew_mm.middle);
      expect(rew_mm.high).toBeLessThanOrEqual(tew_mm.high);
    }
  });

  const worked = soils.filter((row) => row.sand_pct !== undefined);

  test("three textures are worked out, those that Table 19 lacks", () => {
    expect(worked.map((row) => row.texture)).toEqual(["sandy-clay-loam", "clay-loam", "sandy-clay"]);
  });

  test.each(worked)("$texture by Saxton and Rawls at the middle of its class", (row) => {
    const { fieldCapacity, wiltingPoint } = textureWater(row.sand_pct! / 100, row.clay_pct! / 100);
    expect(textureClass(row.sand_pct!, row.clay_pct!)).toBe(row.texture);
    expect(row.fieldCapacity.middle).toBeCloseTo(fieldCapacity, 6);
    expect(row.wiltingPoint.middle).toBeCloseTo(wiltingPoint, 6);
    expect(row.tew_mm.middle).toBeCloseTo(totalEvaporableWater(fieldCapacity, wiltingPoint), 5);
    expect(row.rew_mm).toMatchObject({ low: 8, middle: 9, high: 10 });
  });
});
