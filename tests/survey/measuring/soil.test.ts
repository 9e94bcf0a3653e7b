import { describe, expect, test } from "vitest";
import { textureClass } from "../../../src/engine/texture-class.ts";
import { texturesWithin } from "../../../src/survey/measuring/jar.ts";
import { soilWaterWithError } from "../../../src/survey/measuring/soil-water-error.ts";
import { published } from "../../published/figures.ts";
import { come, figureOf, refusal } from "./readings.ts";

describe("the jar", () => {
  test("three layers are three shares", () => {
    const { figures, notes } = come("soil-jar", 40, 40, 20);
    expect(figures["soil.sand_pct"]!.figure).toBe(40);
    expect(figures["soil.silt_pct"]!.figure).toBe(40);
    expect(figures["soil.clay_pct"]!.figure).toBe(20);
    expect(notes[0]).toEqual({ code: "texture-is", facts: { texture: "loam" } });
  });

  test("neighbouring textures within the error are named too", () => {
    const near = texturesWithin({ figure: 40, standardError: 6 }, { figure: 26, standardError: 6 });
    expect(near[0]).toBe("loam");
    expect(near).toContain("clay-loam");
    expect(near).not.toContain("sand");
  });

  test("an empty jar is no soil", () => {
    expect(refusal("soil-jar", 0, 0, 0)).toBe("no-layers");
  });
});

// Saxton and Rawls 2006, Table 3: sand and clay of each texture as they print them
test("published points fall in their class of the triangle", () => {
  const { inputs } = published.find(({ id }) => id === "saxton-rawls-2006-texture-table")!;
  const { texture, sand_pct, clay_pct } = inputs as {
    texture: string[];
    sand_pct: number[];
    clay_pct: number[];
  };
  const found = sand_pct.map((sand, i) => textureClass(sand, clay_pct[i]!));
  expect(found).toEqual(texture.map((name) => name.replaceAll(" ", "-")));
});

test("soil water carries the error of the equations and of the jar", () => {
  const exact = soilWaterWithError({ figure: 40, standardError: 0 }, { figure: 20, standardError: 0 });
  expect(exact.fieldCapacity.figure).toBeCloseTo(0.28, 2);
  expect(exact.wiltingPoint.figure).toBeCloseTo(0.14, 2);
  expect(exact.fieldCapacity.standardError).toBe(0.05);
  const jar = soilWaterWithError({ figure: 40, standardError: 6 }, { figure: 20, standardError: 6 });
  expect(jar.fieldCapacity.standardError).toBeGreaterThan(0.05);
  expect(jar.wiltingPoint.standardError).toBeGreaterThan(exact.wiltingPoint.standardError);
});

describe("the ring", () => {
  test("the last fill counts: 20 mm in 40 minutes is 30 mm an hour", () => {
    expect(figureOf("soil.intake_mm_h", "soil-ring", 20, 12, 30, 40).figure).toBe(30);
  });

  test("says where one fill only was timed, or the soil still slows down", () => {
    expect(come("soil-ring", 20, 12).notes.map(({ code }) => code)).toEqual(["one-fill-only"]);
    expect(come("soil-ring", 20, 12, 30).notes.map(({ code }) => code)).toEqual(["intake-still-falling"]);
    expect(come("soil-ring", 20, 12, 30, 32).notes).toEqual([]);
  });
});

test("slope is rise over run", () => {
  expect(figureOf("soil.slope_pct", "slope", 0.6, 12).figure).toBeCloseTo(5, 12);
});
