import { describe, expect, test } from "vitest";
import { fillGaps } from "../../src/engine/weather/gaps.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { dailyTable } from "../../src/report/daily.ts";
import { reportSchema } from "../../src/report/schema.ts";
import { programVersion } from "../../src/report/version.ts";
import { workOut } from "../../src/report/work-out.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { record } from "../helpers/plain-grounds.ts";
import { recordAt, report, surveyOf, textOf } from "../helpers/worked.ts";

const school = surveyOf(textOf("demo/school.survey.json"));
const seattle = recordAt("demo/seattle.csv");

function reportOn(survey: Survey, weather: WeatherRecord = seattle) {
  return report(workOut(survey, weather));
}

const plain: Survey = { ...school, measures: [], draws: [], roofs: [], leaks: [] };

describe("the report", () => {
  test("of the demo is what its schema says", () => {
    expect(reportSchema.safeParse(reportOn(school)).error).toBeUndefined();
  });

  test("names the version that package.json has", () => {
    expect(programVersion).toBe(JSON.parse(textOf("package.json")).version);
  });

  test("a tank that nothing is asked of is wholly reliable, both ways", () => {
    const beds = school.beds.map((bed) => ({
      ...bed,
      watering: { ...bed.watering, supply: "mains-only" as const },
    }));
    for (const tank of reportOn({ ...plain, beds }).tanks)
      expect(tank).toMatchObject({
        draw_L_year: 0,
        reliability: 1,
        volumetricReliability: 1,
        shortDays_year: 0,
      });
  });

  test("without a whole calendar year has no points, no dry and no wet year, and says so", () => {
    const beds = school.beds.map((bed) => ({ ...bed, obstructions: [] }));
    const found = reportOn(
      { ...plain, beds },
      record(200, () => 2),
    );
    expect(found.mains).toMatchObject({
      giveUp_kL_year: { p10: null, p50: null, p90: null },
      dryYear: null,
      wetYear: null,
    });
    expect(found.cautions.join("\n")).toMatch(/200 days, less than a year/);
    expect(found.mains.byYear).toEqual([]);
  });

  test("means of a year are totals ÷ days × 365.25, and months add up to the year", () => {
    const found = reportOn(school);
    for (const bed of found.beds) {
      const months = bed.needByMonth_L.reduce((sum, litres) => sum + litres, 0);
      expect(months).toBeCloseTo(bed.gross_L_year, 6);
    }
    const rain = seattle.columns.rain_mm.reduce((sum, mm) => sum + mm, 0);
    expect(found.weather.rain_mm_year).toBeCloseTo((rain / 1461) * 365.25, 9);
  });

  test("leaks and what draws are short of count in every mains figure", () => {
    const dry = { ...school, leaks: [] };
    const [leaky, tight] = [reportOn(school).mains, reportOn(dry).mains];
    const litres = (school.leaks ?? []).reduce((sum, leak) => sum + leak.litresPerDay, 0);
    const leak_kL_year = (litres * 365.25) / 1000;
    for (const key of ["today_kL_year", "need_kL_year"] as const)
      expect(leaky[key] - tight[key]).toBeCloseTo(leak_kL_year, 6);
  });

  test("counts filled days and says so beside the result where they are more than one in ten", () => {
    const gappy: WeatherRecord = {
      ...seattle,
      columns: { ...seattle.columns, wind_ms: seattle.columns.wind_ms!.slice() },
    };
    for (let i = 2; i < 1461; i += 5) gappy.columns.wind_ms![i] = Number.NaN;
    const found = reportOn(school, gappy);
    expect(found.weather.filled).toBe(fillGaps(gappy).filledDays);
    expect(found.cautions.join("\n")).toMatch(/292 of 1,461 days .* filled/);
    expect(reportOn(school).cautions.join("\n")).not.toMatch(/filled/);
  });
});

describe("the day-by-day table", () => {
  const worked = workOut(school, seattle, { keepDays: true });
  const { header, rows } = dailyTable(worked);

  test("has the contract's columns in its order: weather, beds, tanks, mains", () => {
    const bed = [
      "et0_mm",
      "kcb",
      "ke",
      "ks",
      "etc_mm",
      "net_mm",
      "gross_L",
      "drainage_mm",
      "root_depletion_mm",
      "surface_depletion_mm",
    ];
    const tank = ["inflow_L", "draw_L", "yield_L", "spill_L", "topup_L", "level_L"];
    expect(header).toEqual([
      "date",
      "rain_mm",
      "et0_mm",
      ...school.beds.flatMap(({ id }) => bed.map((column) => `${id}.${column}`)),
      ...school.tanks.flatMap(({ id }) => tank.map((column) => `${id}.${column}`)),
      "mains_L",
    ]);
    expect(rows).toHaveLength(1461);
  });

  test("adds up to the report: gross of each bed supplied, yield of each tank, mains to need", () => {
    const found = report(worked);
    const year = (column: string) =>
      (rows.reduce((sum, row) => sum + Number(row[header.indexOf(column)]), 0) / 1461) * 365.25;
    for (const bed of found.beds) expect(year(`${bed.id}.gross_L`)).toBeCloseTo(bed.supplied_L_year, 4);
    for (const tank of found.tanks) expect(year(`${tank.id}.yield_L`)).toBeCloseTo(tank.yield_L_year, 4);
    expect(year("mains_L") / 1000).toBeCloseTo(found.mains.need_kL_year, 6);
  });

  test("keeps at least nine significant figures", () => {
    const kcb = rows.map((row) => row[header.indexOf(`${school.beds[1]!.id}.etc_mm`)]!);
    expect(Math.max(...kcb.map((cell) => cell.replace(/^0?\.0*|\D/g, "").length))).toBeGreaterThanOrEqual(9);
  });
});
