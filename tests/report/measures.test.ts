import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { netPresentValue } from "../../src/engine/money.ts";
import { reportOf } from "../../src/report/report.ts";
import { reportSchema } from "../../src/report/schema.ts";
import { workOut } from "../../src/report/work-out.ts";
import { applyMeasures } from "../../src/survey/measures/apply.ts";
import { chosenMeasures, waterToNeed } from "../../src/survey/measures/chosen.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { asRead, plainRecord, siteWithMeasures } from "../helpers/sites.ts";
import { recordAt, surveyOf, textOf } from "../helpers/worked.ts";

const record = plainRecord(2);
const reportFor = (survey: Survey) => reportOf(workOut(survey, record), ({ code }) => code);
const demoReport = (survey: Survey) =>
  reportOf(workOut(survey, recordAt("demo/seattle.csv")), ({ code }) => code);

describe("the plan", () => {
  test("is the survey with its chosen measures done, watered to need; shares add up to today less plan", () => {
    fc.assert(
      fc.property(siteWithMeasures(9), (site) => {
        const survey = asRead(site);
        const { mains, measures } = reportFor(survey);
        const ids = chosenMeasures(survey).map(({ id }) => id);
        const done = reportFor({ ...applyMeasures(survey, ids), measures: [] });
        const moved = chosenMeasures(survey).some(({ addDraw }) => addDraw);
        expect(mains.plan_kL_year).toBeCloseTo(done.mains.need_kL_year, 6);
        if (!moved)
          expect(mains.today_kL_year).toBeCloseTo(
            reportFor({ ...survey, measures: [] }).mains.today_kL_year,
            6,
          );
        expect(measures.map(({ id }) => id)).toEqual([...ids, waterToNeed]);
        const sum = measures.reduce((total, { share_kL_year }) => total + share_kL_year, 0);
        expect(sum).toBeCloseTo(mains.today_kL_year - mains.plan_kL_year, 6);
      }),
      { numRuns: 10 },
    );
  });

  test("without measures is the need, and has no rows", () => {
    const { measures: _, ...survey } = surveyOf(textOf("demo/school.survey.json"));
    const { mains, measures } = demoReport(survey);
    expect(mains.plan_kL_year).toBe(mains.need_kL_year);
    expect(measures).toEqual([]);
  });

  test("the demo's report keeps to its schema, and no measure is left unsaid", () => {
    const report = demoReport(surveyOf(textOf("demo/school.survey.json")));
    reportSchema.parse(report);
    expect(report.cautions).not.toContain("measures-not-run");
    expect(report.mains.plan_kL_year).toBeLessThan(report.mains.need_kL_year);
  });
});

describe("a leak mended, by hand", () => {
  const site: Survey = {
    format: "grounds-survey",
    version: 1,
    site: { name: "Invented place", latitude: 40, longitude: 10 },
    beds: [],
    roofs: [],
    tanks: [],
    leaks: [{ id: "a", name: "Leak", litresPerDay: 100 }],
    tariff: { currency: "EUR", perKL: 3, perKLAlso: [{ name: "Sewer", perKL: 1 }], riseShare: 0.02 },
    money: { discountShare: 0.03, horizon_years: 20 },
    measures: [
      {
        id: "mend",
        name: "Mend it",
        cost: 500,
        life_years: 8,
        upkeepPerYear: 10,
        mendLeak: { leaks: ["a"] },
      },
    ],
  };

  test("saves its litres, priced with sewer, bought again in years 8 and 16", () => {
    const [row, need] = reportFor(site).measures;
    expect(row!.share_kL_year).toBeCloseTo(36.525, 9);
    const outlay = { lines: [{ cost: 500, life_years: 8 }], grant: 0, upkeepPerYear: 10 };
    const outlook = { discountShare: 0.03, riseShare: 0.02, horizon_years: 20 };
    expect(row!.npv).toBeCloseTo(netPresentValue(outlay, 36.525 * 4, outlook), 6);
    expect(row!.payback_years).toBeCloseTo(500 / (36.525 * 4 - 10), 9);
    expect(row!.costPerKL).toBeCloseTo((500 * (0.03 / (1 - 1.03 ** -8)) + 10) / 36.525, 9);
    expect(need).toMatchObject({ id: waterToNeed, share_kL_year: 0, costPerKL: null });
  });

  test("without a price has no money but its cost a kL; without a cost has its water alone", () => {
    const { tariff: _, ...unpriced } = site;
    expect(reportFor(unpriced).measures[0]).toMatchObject({ npv: null, payback_years: null });
    expect(reportFor(unpriced).measures[0]!.costPerKL).toBeGreaterThan(0);
    const free = { ...site, measures: [{ id: "mend", name: "Mend it", mendLeak: { leaks: ["a"] } }] };
    expect(reportFor(free).measures[0]).toMatchObject({ npv: null, payback_years: null, costPerKL: null });
  });

  test("what stands in for money is listed with its source", () => {
    const { money: _, ...silent } = site;
    expect(reportFor(silent).assumed.find(({ where }) => where === "money.discountShare")).toMatchObject({
      value: 0.03,
      source: expect.stringMatching(/real discount rate/),
    });
  });
});
