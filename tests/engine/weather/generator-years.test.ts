import { mean, median, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { generateRecord, type MonthlyNormals } from "../../../src/engine/weather/generator.ts";
import { generatorFactors } from "../../../src/tables/weather-generator.ts";
import colorado from "../../fixtures/colorado-rain.json" with { type: "json" };
import { monthSums } from "./month-sums.ts";
import { recordsSeen, wholeYears } from "./records-seen.ts";

const withoutYears = { ...generatorFactors, yearWetnessSpread: 0 };

/** Standard deviation over mean of the years' rain. */
function spread(years: readonly number[]): number {
  return sampleStandardDeviation([...years]) / mean([...years]);
}

function generatedSpread(normals: MonthlyNormals, factors = generatorFactors): number {
  const record = generateRecord({ normals, years: 2000, seed: 31, factors });
  const months = monthSums(record, (slot) => record.columns.rain_mm[slot]!);
  return spread(months[0]!.map((_, year) => months.reduce((sum, years) => sum + years[year]!, 0)));
}

describe("rain from year to year", () => {
  /**
   * A spread from n years of about normal sums has a 95 % interval of s √((n − 1)/χ²): for three degrees of
   * freedom, χ² 9.348 and 0.2158, it reaches from 0.567 to 3.73 times the spread seen.
   */
  it.each(recordsSeen)(
    "differs as in the record of $place, as far as four years tell",
    ({ days, normals }) => {
      const seen = spread(wholeYears(days).map((year) => year.reduce((sum, day) => sum + day.rain_mm, 0)));
      const generated = generatedSpread(normals);
      expect(generated).toBeGreaterThan(seen * Math.sqrt(3 / 9.348));
      expect(generated).toBeLessThan(seen * Math.sqrt(3 / 0.2158));
    },
  );

  const stations = colorado.rows.map((row) => {
    const normals = { rain_mm: row.rain_mm, rainDays: row.cellRainDays };
    return {
      seen: row.annualSpread,
      generated: generatedSpread(normals),
      chainAlone: generatedSpread(normals, withoutYears),
    };
  });

  it("differs as at forty stations with 80 years or more", () => {
    // A station's own spread stands to 1/√(2 · 80), 8 % of it; the year's spread is one figure for the whole world.
    const over = stations.map(({ seen, generated }) => generated / seen);
    expect(median(over)).toBeGreaterThan(0.85);
    expect(median(over)).toBeLessThan(1.1);
    expect(over.filter((ratio) => ratio < 0.6 || ratio > 1.4)).toEqual([]);
  });

  it("would differ too little without the year's own wetness: the chain alone is below every one of them", () => {
    const over = stations.map(({ seen, chainAlone }) => chainAlone / seen);
    expect(median(over)).toBeLessThan(0.8);
    expect(over.filter((ratio) => ratio >= 1)).toEqual([]);
  });

  it("leaves mean rain as it is", () => {
    const normals = recordsSeen[0]!.normals;
    const total = (factors: typeof generatorFactors) =>
      mean([...generateRecord({ normals, years: 4000, seed: 8, factors }).columns.rain_mm]) * 365.25;
    const expected = normals.rain_mm.reduce((sum, rain) => sum + rain, 0);
    // 4,000 years of spread 0.18 put the mean within 1 % at 3.5 standard errors.
    expect(Math.abs(total(generatorFactors) / expected - 1)).toBeLessThan(0.01);
  });
});
