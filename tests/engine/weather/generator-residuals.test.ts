import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { randomStream } from "../../../src/engine/weather/rng.ts";
import { normals } from "../../../src/engine/weather/variates.ts";
import { dayTemperatures, residualCourse } from "../../../src/engine/weather/warm-days.ts";
import { generatorFactors as factors } from "../../../src/tables/weather-generator.ts";
import { publishedFigures } from "./published-figures.ts";

/**
 * Richardson (1981), Water Resources Research 17:182-190: the correlations that his matrices of the residuals of
 * tmax, tmin and sun imply; printed matrices as public hydrology models carry them.
 */
const { lag0Correlation, lag1Correlation } = publishedFigures("richardson-residual-matrices") as {
  lag0Correlation: number[][];
  lag1Correlation: number[][];
};
const richardson = {
  sameDay: lag0Correlation[0]![1]!,
  dayBefore: lag1Correlation.slice(0, 2).map((row) => row.slice(0, 2)),
};

describe("residuals of temperature", () => {
  it("take their correlations from Richardson's table", () => {
    const { lag } = factors;
    expect(lag.sameDay).toBe(richardson.sameDay);
    expect([
      [lag.maxOnMax, lag.maxOnMin],
      [lag.minOnMax, lag.minOnMin],
    ]).toEqual(richardson.dayBefore);
  });

  it("keep variance 1 and these correlations, the sun left out", () => {
    const next = residualCourse(factors.lag, normals(randomStream(3)));
    const days = Array.from({ length: 400_000 }, next);
    const today = days.slice(1);
    const product = (f: (day: (typeof days)[number], before: (typeof days)[number]) => number) =>
      mean(today.map((day, i) => f(day, days[i]!)));
    // A product of two such normals has a standard deviation under 1.5, its mean over days that lean on each other
    // about 1.5 √(4/400,000) = 0.005.
    const near = (value: number, expected: number) => expect(Math.abs(value - expected)).toBeLessThan(0.015);
    near(
      product((day) => day.tmax),
      0,
    );
    near(
      product((day) => day.tmin),
      0,
    );
    near(
      product((day) => day.tmax ** 2),
      1,
    );
    near(
      product((day) => day.tmin ** 2),
      1,
    );
    near(
      product((day) => day.tmax * day.tmin),
      richardson.sameDay,
    );
    near(
      product((day, before) => day.tmax * before.tmax),
      richardson.dayBefore[0]![0]!,
    );
    near(
      product((day, before) => day.tmax * before.tmin),
      richardson.dayBefore[0]![1]!,
    );
    near(
      product((day, before) => day.tmin * before.tmax),
      richardson.dayBefore[1]![0]!,
    );
    near(
      product((day, before) => day.tmin * before.tmin),
      richardson.dayBefore[1]![1]!,
    );
  });
});

describe("temperatures of a day", () => {
  const usual = { tmax: 0, tmin: 0 };
  const day = { tmax_c: 20, tmin_c: 10, range_c: 10, wetShare: 0.4 };

  it("stand apart on wet and dry days by what the regressions over the world's stations give", () => {
    // Sommer and Kaplan (2017), wet: -0.586296 + 0.948669 T, dry: 0.386508 + 1.0061 T for the day's highest.
    const published = 0.386508 + 1.0061 * 20 - (-0.586296 + 0.948669 * 20);
    const middle = (wet: boolean) => {
      const next = residualCourse(factors.lag, normals(randomStream(5)));
      const highs = Array.from(
        { length: 100_000 },
        () => dayTemperatures({ ...day, wet }, next(), factors).tmax_c,
      );
      return mean(highs);
    };
    // Standard errors of the two means together about 0.05 °C with days that lean on each other.
    expect(Math.abs(middle(false) - middle(true) - published)).toBeLessThan(0.2);
  });

  it("do not close where the normals' lowest and highest are one", () => {
    for (const wet of [true, false]) {
      const even = { tmax_c: 12, tmin_c: 12, range_c: 0, wetShare: 0.5, wet };
      const { tmin_c, tmax_c } = dayTemperatures(even, { tmax: 2, tmin: -3 }, factors);
      expect(tmin_c).toBe(tmax_c);
      expect(Number.isFinite(dayTemperatures(even, usual, factors).tmin_c)).toBe(true);
    }
  });
});
