import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { namedStreams } from "../../src/engine/named-streams.ts";
import { randomStream } from "../../src/engine/weather/rng.ts";
import { resolve } from "../../src/survey/resolve.ts";
import { drawsOf, triangular, withMeasuredAgain } from "../../src/survey/sample.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { soil } from "../../src/tables/soils.ts";
import { asRead } from "../helpers/sites.ts";

const draws = (seed = 1) => drawsOf(namedStreams(seed));

const site: Survey = asRead({
  format: "grounds-survey",
  version: 1,
  site: { name: "Invented place", latitude: 40, longitude: 10 },
  beds: ["a", "b"].map((id) => ({
    id,
    name: id,
    area_m2: 20,
    plantings: [{ kind: "shrubs" as const, thirst: "moderate" as const, share: 1 }],
    leafCover: 0.6,
    soil: { texture: "loam" as const },
    watering: { method: "spray" as const, supply: "mains-only" as const, flow_L_min: 12 },
  })),
  roofs: [],
  tanks: [],
  found: [
    {
      id: "jug",
      at: "beds[1].watering.flow_L_min",
      how: "jug",
      readings: [50],
      figure: 12,
      standardError: 0.5,
      when: "2024-05-01",
    },
  ],
});

describe("a triangular draw", () => {
  test("stays within its range, has its mean and its standard deviation", () => {
    const range = { low: 2, middle: 3, high: 8 };
    const rng = randomStream(3);
    const drawn = Array.from({ length: 20_000 }, () => triangular(range, rng.uniform()));
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(2);
    expect(Math.max(...drawn)).toBeLessThanOrEqual(8);
    const mean = drawn.reduce((a, b) => a + b, 0) / drawn.length;
    const variance = drawn.reduce((sum, x) => sum + (x - mean) ** 2, 0) / drawn.length;
    // mean (a + b + c)/3, variance (a² + b² + c² − ab − ac − bc)/18
    const sd = Math.sqrt((4 + 9 + 64 - 6 - 16 - 24) / 18);
    expect(Math.abs(mean - 13 / 3)).toBeLessThan((4 * sd) / Math.sqrt(drawn.length));
    expect(Math.abs(Math.sqrt(variance) / sd - 1)).toBeLessThan(0.03);
  });

  test("rises with its place, from the low end to the high one", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }),
        (ends) => {
          const [low, middle, high] = ends.toSorted((a, b) => a - b) as [number, number, number];
          if (low === high) return;
          let before = low;
          for (let place = 0; place <= 1; place += 0.05) {
            const now = triangular({ low, middle, high }, place);
            expect(now).toBeGreaterThanOrEqual(before - 1e-12);
            expect(now).toBeLessThanOrEqual(high + 1e-12);
            before = now;
          }
        },
      ),
    );
  });
});

describe("draws of a survey", () => {
  const drawn = (count: number, seed = 1) => {
    const of = draws(seed);
    return Array.from({ length: count }, () => {
      of.next();
      return resolve(withMeasuredAgain(site, of.pick), undefined, of.pick).grounds.beds;
    });
  };

  test("a row of a table is one draw for every bed that uses it", () => {
    for (const [a, b] of drawn(30)) {
      expect(a!.soil).toEqual(b!.soil);
      expect(a!.watering.efficiency).toBe(b!.watering.efficiency);
      expect(a!.plantings[0]!.rootDepth_m).toBe(b!.plantings[0]!.rootDepth_m);
    }
  });

  test("what was judged bed by bed is drawn bed by bed", () => {
    const beds = drawn(30);
    expect(beds.some(([a, b]) => a!.leafCover[0] !== b!.leafCover[0])).toBe(true);
    expect(beds.some(([a, b]) => a!.plantings[0]!.kcbFull !== b!.plantings[0]!.kcbFull)).toBe(true);
  });

  test("a soil's figures move together and within their ranges", () => {
    const { fieldCapacity, available, tew_mm } = soil("loam");
    const soils = drawn(60).map(([a]) => a!.soil);
    for (const { fieldCapacity: held, wiltingPoint, tew_mm: tew } of soils) {
      expect(held).toBeGreaterThanOrEqual(fieldCapacity.low);
      expect(held).toBeLessThanOrEqual(fieldCapacity.high);
      expect(held - wiltingPoint).toBeGreaterThanOrEqual(available.low - 1e-9);
      expect(held - wiltingPoint).toBeLessThanOrEqual(available.high + 1e-9);
      expect(held > fieldCapacity.middle === tew > tew_mm.middle).toBe(true);
    }
  });

  test("what was surveyed stands, but a reading with a standard error is drawn within it", () => {
    const flows = drawn(200).map(([a, b]) => [a!.watering.flow_L_min, b!.watering.flow_L_min] as const);
    expect(new Set(flows.map(([a]) => a))).toEqual(new Set([12]));
    const readings = flows.map(([, b]) => b);
    const mean = readings.reduce((x, y) => x + y, 0) / readings.length;
    const sd = Math.sqrt(readings.reduce((sum, x) => sum + (x - mean) ** 2, 0) / readings.length);
    expect(Math.abs(mean - 12)).toBeLessThan((4 * 0.5) / Math.sqrt(readings.length));
    expect(Math.abs(sd - 0.5)).toBeLessThan(0.1);
  });

  test("the same seed draws the same, another seed another", () => {
    expect(drawn(5)).toEqual(drawn(5));
    expect(drawn(5, 2)).not.toEqual(drawn(5));
  });

  test("an unknown asked for late has the draws it would have had", () => {
    const [early, late] = [draws(), draws()];
    const range = { low: 0, middle: 0.5, high: 1 };
    const first = Array.from({ length: 4 }, () => {
      early.next();
      return early.pick("late", range);
    });
    for (let k = 0; k < 4; k++) late.next();
    expect(late.pick("late", range)).toBe(first[3]);
  });

  test("the middle of every range is what an estimate has", () => {
    const at = resolve(site).grounds.beds[0]!;
    expect(at.rainShare).toBe(1);
    expect(at.stand).toEqual({ thin: 1.5, kcMin: 0 });
    expect(at.leafCover[0]).toBe(0.6);
  });
});
