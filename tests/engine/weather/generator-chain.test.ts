import { describe, expect, it } from "vitest";
import { generateRecord } from "../../../src/engine/weather/generator.ts";
import { gammaShape, wetChances } from "../../../src/engine/weather/rain-chain.ts";
import { generatorFactors as factors } from "../../../src/tables/weather-generator.ts";
import { standardErrorsOff } from "./month-sums.ts";
import { publishedFigures } from "./published-figures.ts";

/** The same share of wet days all year, so that the chain is the same on every day. */
function steadyRain(wetShare: number, years: number): Float64Array {
  const lengths = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const rainDays = lengths.map((length) => length * wetShare);
  const normals = { rainDays, rain_mm: rainDays.map((days) => days * 6) };
  return generateRecord({ normals, years, seed: 21, factors }).columns.rain_mm;
}

/** Lengths of the whole spells, wet or dry; the first and the last are cut and left out. */
function spells(rain_mm: Float64Array, wet: boolean): number[] {
  const lengths: number[] = [];
  let start = 0;
  for (let i = 1; i < rain_mm.length; i++) {
    if (rain_mm[i]! > 0 === rain_mm[i - 1]! > 0) continue;
    if (rain_mm[i - 1]! > 0 === wet && start > 0) lengths.push(i - start);
    start = i;
  }
  return lengths;
}

describe("the chain of wet and dry days", () => {
  it.each([0.05, 0.3, 0.5, 0.85])("has spells of the length that theory gives, wet share %d", (f) => {
    // A spell of a two-state chain is geometric: mean 1/(1 − p), with p the chance to stay.
    const rain_mm = steadyRain(f, 400);
    const stayWet = 0.25 + 0.75 * f;
    const stayDry = 1 - 0.75 * f;
    for (const [wet, stay] of [
      [true, stayWet],
      [false, stayDry],
    ] as const) {
      const lengths = spells(rain_mm, wet);
      expect(lengths.length).toBeGreaterThan(1000);
      expect(Math.abs(standardErrorsOff(lengths, 1 / (1 - stay)))).toBeLessThan(4);
      for (const n of [1, 2, 3, 5]) {
        const longer = lengths.map((length) => (length > n ? 1 : 0));
        expect(Math.abs(standardErrorsOff(longer, stay ** n))).toBeLessThan(4);
      }
    }
  });

  it("gives the published identities of such a chain", () => {
    const figures = publishedFigures("markov-wet-day-fraction") as Record<string, number>;
    const { pWetAfterDry, pWetAfterWet, wetFraction, lag1Persistence } = figures;
    expect(pWetAfterWet! - pWetAfterDry!).toBeCloseTo(lag1Persistence!, 4);
    const { afterDry, afterWet } = wetChances(wetFraction!, wetFraction!, lag1Persistence!);
    expect(Math.abs(afterDry - pWetAfterDry!)).toBeLessThan(1e-4);
    expect(Math.abs(afterWet - pWetAfterWet!)).toBeLessThan(1e-4);
    expect(Math.abs(1 / (1 - afterWet) - figures.meanWetSpell_d!)).toBeLessThan(1e-3);
    expect(Math.abs(1 / afterDry - figures.meanDrySpell_d!)).toBeLessThan(1e-3);
  });

  it("has the chances of Geng, Penning de Vries and Supit within a month", () => {
    for (const f of [0, 0.1, 0.4, 0.9]) {
      const { afterDry, afterWet } = wetChances(f, f, factors.rainPersistence);
      expect(afterDry).toBeCloseTo(0.75 * f, 12);
      if (f > 0) expect(afterWet).toBeCloseTo(0.25 + 0.75 * f, 12);
    }
  });

  it("keeps every day's share of wet days, whatever yesterday's was", () => {
    for (let before = 0; before <= 1; before += 0.05) {
      for (let today = 0; today <= 1; today += 0.05) {
        const { afterDry, afterWet } = wetChances(before, today, factors.rainPersistence);
        for (const chance of [afterDry, afterWet]) {
          expect(chance).toBeGreaterThanOrEqual(-1e-12);
          expect(chance).toBeLessThanOrEqual(1 + 1e-12);
        }
        expect(before * afterWet + (1 - before) * afterDry).toBeCloseTo(today, 12);
      }
    }
  });
});

describe("amounts of wet days", () => {
  it("have a shape of mean over scale, held to 0.5 to 1", () => {
    expect(gammaShape(10, factors)).toBeCloseTo(10 / (-2.16 + 1.83 * 10), 12);
    expect(gammaShape(5, factors)).toBeCloseTo(5 / (-2.16 + 1.83 * 5), 12);
    // Below 2.16/0.83 mm the scale falls under the mean, below 2.16/1.83 mm under zero.
    for (const light_mm of [2.6, 1.5, 1.18, 0.5, 0.01]) expect(gammaShape(light_mm, factors)).toBe(1);
    expect(gammaShape(1000, factors)).toBeGreaterThan(0.5);
  });
});
