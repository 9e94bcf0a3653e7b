import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deepest_m, dipTable, type TankShape, volume_L } from "../../../src/survey/measuring/tank-volume.ts";
import { come, figureOf, refusal } from "./readings.ts";

const shapes: [string, TankShape, number][] = [
  ["upright", { shape: "upright", across_m: 2.4 }, 2],
  ["box", { shape: "box", length_m: 3, width_m: 1.2 }, 1.5],
  ["lying", { shape: "lying", across_m: 1.6, length_m: 3.5 }, 1.6],
  ["cone", { shape: "cone", bottom_m: 0.9, top_m: 1.4, height_m: 1.1 }, 1.1],
];

/** Width of the water's surface times its length at a height, m², by plane geometry. */
function surface_m2(tank: TankShape, h: number): number {
  switch (tank.shape) {
    case "upright":
      return (Math.PI / 4) * tank.across_m ** 2;
    case "box":
      return tank.length_m * tank.width_m;
    case "lying":
      return 2 * Math.sqrt(h * (tank.across_m - h)) * tank.length_m;
    case "cone":
      return (Math.PI / 4) * (tank.bottom_m + ((tank.top_m - tank.bottom_m) * h) / tank.height_m) ** 2;
  }
}

describe.each(shapes)("%s tank", (_, tank, full_m) => {
  test.each([0.1, 0.37, 0.5, 0.8, 1])("holds what its surface adds up to, filled to %d", (share) => {
    const depth = share * full_m;
    // midpoints of a substitution that is smooth where a lying tank's surface closes: h = depth sin²(u)
    const steps = 4000;
    let litres = 0;
    for (let i = 0; i < steps; i++) {
      const u = ((i + 0.5) / steps) * (Math.PI / 2);
      const h = depth * Math.sin(u) ** 2;
      litres += surface_m2(tank, h) * depth * Math.sin(2 * u) * (Math.PI / 2 / steps) * 1000;
    }
    expect(Math.abs(volume_L(tank, depth) / litres - 1)).toBeLessThan(1e-6);
  });

  test("never holds less when deeper", () => {
    const depth = fc.double({ min: 0, max: full_m, noNaN: true });
    fc.assert(
      fc.property(depth, depth, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        return volume_L(tank, low) <= volume_L(tank, high) + 1e-9;
      }),
    );
  });

  test("has a dip table from empty to full", () => {
    const table = dipTable(tank, full_m, 0.07);
    expect(table[0]).toEqual({ depth_m: 0, litres: 0 });
    expect(table.at(-1)!.depth_m).toBe(full_m);
    expect(table.at(-1)!.litres).toBeCloseTo(volume_L(tank, full_m), 6);
    expect(deepest_m(tank)).toBeGreaterThanOrEqual(full_m);
  });
});

describe("closed forms", () => {
  // π/4 · 2.4² · 2 m³, worked by hand
  test("an upright tank 2.4 m across and 2 m high holds 9,048 L", () => {
    expect(figureOf("capacity_L", "tank-upright", 2.4, 2).figure).toBeCloseTo(9047.79, 2);
  });

  test("a lying tank half full holds half of its cylinder", () => {
    expect(figureOf("level_L", "tank-lying", 1.6, 3.5, 0.8).figure).toBeCloseTo(
      (Math.PI * 0.64 * 3500) / 2,
      6,
    );
  });

  // a quarter of the diameter: the segment's share is 1/3 − √3/(4π) = 0.1955
  test("a lying tank dipped to a quarter holds 19.55 %", () => {
    const whole = Math.PI * 0.64 * 3500;
    const share = figureOf("level_L", "tank-lying", 1.6, 3.5, 0.4).figure / whole;
    expect(share).toBeCloseTo(1 / 3 - Math.sqrt(3) / (4 * Math.PI), 9);
  });

  test("a cone to its tip is a third of its cylinder", () => {
    const cone = figureOf("capacity_L", "tank-cone", 0, 1.2, 0.9, 0.9).figure;
    expect(cone).toBeCloseTo((1000 * (Math.PI / 4) * 1.44 * 0.9) / 3, 6);
  });

  test("a girth gives the same tank, its wall taken off", () => {
    const across = 2.4;
    const girth = Math.PI * (across + 2 * 0.01);
    expect(figureOf("capacity_L", "tank-girth", girth, 0.01, 2).figure).toBeCloseTo(
      figureOf("capacity_L", "tank-upright", across, 2).figure,
      6,
    );
  });

  test("water deeper than the tank cannot be; a hair above its top is full", () => {
    expect(refusal("tank-lying", 1.6, 3.5, 1.9)).toBe("deeper-than-tank");
    expect(figureOf("level_L", "tank-lying", 1.6, 3.5, 1.62).figure).toBeCloseTo(Math.PI * 0.64 * 3500, 6);
  });
});

describe("roofs in plan", () => {
  test("the slope is longer than the plan by its cosine", () => {
    expect(figureOf("area_m2", "roof-pitch", 20, 8, 30).figure).toBeCloseTo(
      20 * 8 * Math.cos(Math.PI / 6),
      9,
    );
    expect(figureOf("area_m2", "roof-rise", 20, 5, 3).figure).toBeCloseTo(80, 9);
    expect(refusal("roof-rise", 20, 5, 6)).toBe("rise-above-slope");
  });
});

describe("draws and diverters", () => {
  // 300 × 150 mm by a drop of 100 mm is 4.5 L a flush
  test("a cistern by tape, times flushes", () => {
    expect(figureOf("litresPerDay", "cistern", 300, 150, 100, 120).figure).toBeCloseTo(540, 9);
    expect(come("cistern", 300, 150, 100, 120).notes[0]).toEqual({
      code: "a-flush-is",
      facts: { litres: 4.5 },
    });
  });

  // a pipe 100 mm across and 3 m long holds 23.6 L: 0.236 mm of a roof of 100 m²
  test("a first-flush pipe over its roof", () => {
    expect(figureOf("firstFlush_mm", "first-flush", 100, 3, 100).figure).toBeCloseTo(0.2356, 4);
  });

  test("the water below the outlet is the tank's up to there", () => {
    expect(figureOf("unusable_L", "tank-box", 3, 1.2, 0.1).figure).toBeCloseTo(360, 9);
  });
});
