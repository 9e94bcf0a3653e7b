import { describe, expect, test } from "vitest";
import type { Bed, Planting } from "../../src/engine/grounds.ts";
import { bedRoots, climateAdjustedKcb, density, heightTerm, kcbByMonth } from "../../src/engine/plants.ts";

const planting: Planting = {
  share: 1,
  kcbFull: 0.8,
  climateAdjusted: true,
  height_m: 0.3,
  rootDepth_m: 0.5,
  depletionFraction: 0.5,
  monthly: Array(12).fill(1),
  establishing: null,
};
const bed = (plantings: Planting[], more: Partial<Bed> = {}) =>
  ({ plantings, leafCover: Array(12).fill(0.6), rootDepth_m: null, depletionFraction: null, ...more }) as Bed;

describe("density", () => {
  test("is bound by 1.5 fc for thin tall plants, by the power for the rest, and by 1", () => {
    expect(density(0.2, 5)).toBeCloseTo(0.3, 12);
    expect(density(0.8, 0.4)).toBeCloseTo(0.8 ** (1 / 1.4), 12);
    expect(density(1, 10)).toBeLessThanOrEqual(1);
    expect(density(0, 1)).toBeCloseTo(0.015, 12);
  });
});

describe("Kcb of a bed", () => {
  test("weights each planting by share, with its own height in the density", () => {
    const { base } = kcbByMonth(
      bed([
        { ...planting, share: 0.6, height_m: 0.6, kcbFull: 0.75 },
        { ...planting, share: 0.4, height_m: 1.4, kcbFull: 0.55 },
      ]),
      false,
    );
    expect(base[0]).toBeCloseTo(0.6 * 0.75 * density(0.6, 0.6) + 0.4 * 0.55 * density(0.6, 1.4), 12);
  });

  test("applies monthly multipliers last, and leaf cover by month", () => {
    const monthly = Array.from({ length: 12 }, (_, m) => (m === 6 ? 0.5 : 1));
    const leafCover = Array.from({ length: 12 }, (_, m) => (m === 0 ? 0.05 : 0.6));
    const { base, slope } = kcbByMonth(bed([{ ...planting, monthly }], { leafCover }), false);
    expect(base[6]).toBeCloseTo(base[5]! / 2, 12);
    expect(slope[6]).toBeCloseTo(slope[5]! / 2, 12);
    expect(base[0]).toBeCloseTo(0.8 * density(0.05, 0.3), 12);
  });

  test("moves with the climate only above 0.45, tested before, and only where it may", () => {
    const slopeOf = (more: Partial<Planting>) => kcbByMonth(bed([{ ...planting, ...more }]), false).slope[0]!;
    expect(slopeOf({ kcbFull: 0.45 })).toBe(0);
    expect(slopeOf({ climateAdjusted: false })).toBe(0);
    expect(slopeOf({})).toBeCloseTo(density(0.6, 0.3) * heightTerm(0.3), 12);
    expect(climateAdjustedKcb(0.45, 1, 1)).toBe(0.45);
  });

  test("takes the establishing figure of the plantings that have one, and of no other", () => {
    const young = {
      ...planting,
      share: 0.5,
      kcbFull: 0.2,
      establishing: { kcbFull: 0.5, climateAdjusted: false },
    };
    const old = { ...planting, share: 0.5, kcbFull: 0.2 };
    const grown = kcbByMonth(bed([young, old]), false).base[0]!;
    const establishing = kcbByMonth(bed([young, old]), true).base[0]!;
    expect(establishing - grown).toBeCloseTo(0.5 * 0.3 * density(0.6, 0.3), 12);
  });
});

describe("roots of a bed", () => {
  test("are its own, else its plantings' by share", () => {
    const two = [
      { ...planting, share: 0.25, rootDepth_m: 1, depletionFraction: 0.6, height_m: 2 },
      { ...planting, share: 0.75, rootDepth_m: 0.2, depletionFraction: 0.4, height_m: 0.4 },
    ];
    expect(bedRoots(bed(two)).rootDepth_m).toBeCloseTo(0.4, 12);
    expect(bedRoots(bed(two)).depletionFraction).toBeCloseTo(0.45, 12);
    expect(bedRoots(bed(two)).height_m).toBeCloseTo(0.8, 12);
    expect(bedRoots(bed(two, { rootDepth_m: 0.3, depletionFraction: 0.35 }))).toMatchObject({
      rootDepth_m: 0.3,
      depletionFraction: 0.35,
    });
  });
});
