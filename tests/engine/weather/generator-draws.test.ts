import { sampleKurtosis, sampleSkewness } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { randomStream, splitMix64, xoshiro128 } from "../../../src/engine/weather/rng.ts";
import { gammas, logNormal, normals } from "../../../src/engine/weather/variates.ts";
import { standardErrorsOff } from "./month-sums.ts";

describe("random numbers", () => {
  it("are those of the authors' xoshiro128**", () => {
    // Blackman and Vigna's xoshiro128starstar.c 1.1 from state 1, 2, 3, 4, as the test of Rust's rand_xoshiro has them.
    const next = xoshiro128([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, next)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  it("are seeded by SplitMix64", () => {
    // Steele, Lea and Flood's SplitMix64 from 1234567, as printed by Rosetta Code, "Pseudo-random numbers/Splitmix64".
    expect(splitMix64(1234567n, 5)).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
      4593380528125082431n,
      16408922859458223821n,
    ]);
  });

  it("stay inside 0 and 1 and fill a hundred bins evenly", () => {
    const rng = randomStream(42);
    const bins = new Array<number>(100).fill(0);
    for (let i = 0; i < 100_000; i++) {
      const u = rng.uniform();
      if (u > 0 && u < 1) bins[Math.floor(u * 100)]! += 1;
    }
    expect(bins.reduce((sum, n) => sum + n, 0)).toBe(100_000);
    const chiSquare = bins.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0);
    // Chi-square with 99 degrees of freedom: 148.2 at one in a thousand.
    expect(chiSquare).toBeLessThan(148.2);
  });

  it("of two streams of one seed have nothing to do with each other", () => {
    const [a, b] = [randomStream(1, 0), randomStream(1, 1)];
    const products = Array.from({ length: 20_000 }, () => (a.uniform() - 0.5) * (b.uniform() - 0.5) * 12);
    expect(Math.abs(standardErrorsOff(products, 0))).toBeLessThan(4);
  });
});

describe("draws", () => {
  const n = 200_000;

  it("from the standard normal have its moments", () => {
    const draw = normals(randomStream(11));
    const values = Array.from({ length: n }, draw);
    expect(Math.abs(standardErrorsOff(values, 0))).toBeLessThan(4);
    expect(
      Math.abs(
        standardErrorsOff(
          values.map((x) => x * x),
          1,
        ),
      ),
    ).toBeLessThan(4);
    // Standard errors of skewness and kurtosis are the roots of 6/n and 24/n.
    expect(Math.abs(sampleSkewness(values))).toBeLessThan(4 * Math.sqrt(6 / n));
    expect(Math.abs(sampleKurtosis(values))).toBeLessThan(4 * Math.sqrt(24 / n));
  });

  it.each([0.5, 0.55, 0.8, 1, 3])(
    "from a gamma of shape %d have its mean, variance and third moment",
    (shape) => {
      const draw = gammas(randomStream(12));
      const values = Array.from({ length: n }, () => draw(shape));
      expect(Math.min(...values.slice(0, 1000))).toBeGreaterThan(0);
      expect(Math.abs(standardErrorsOff(values, shape))).toBeLessThan(4);
      const centred = values.map((x) => x - shape);
      expect(
        Math.abs(
          standardErrorsOff(
            centred.map((x) => x ** 2),
            shape,
          ),
        ),
      ).toBeLessThan(4);
      expect(
        Math.abs(
          standardErrorsOff(
            centred.map((x) => x ** 3),
            2 * shape,
          ),
        ),
      ).toBeLessThan(4);
    },
  );

  it("of a log-normal factor have mean 1 and the spread asked for", () => {
    const draw = normals(randomStream(13));
    const values = Array.from({ length: n }, () => logNormal(0.3, draw()));
    expect(Math.abs(standardErrorsOff(values, 1))).toBeLessThan(4);
    expect(
      Math.abs(
        standardErrorsOff(
          values.map((x) => (x - 1) ** 2),
          0.09,
        ),
      ),
    ).toBeLessThan(4);
    expect(logNormal(0, 2.5)).toBe(1);
  });
});
