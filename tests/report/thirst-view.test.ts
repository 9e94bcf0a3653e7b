import { expect, test } from "vitest";
import { bedYear } from "../../src/report/bed-year.ts";
import { pointOfMonth, valueAt } from "../../src/report/months-of-years.ts";
import { toThirstView } from "../../src/report/thirst-view.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";
import { report, workFiles } from "../helpers/worked.ts";

const worked = workFiles("demo/school.survey.json", "demo/seattle.csv");
const reported = report(worked);
const view = toThirstView(worked, reported, cautionSentence);
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((all, each) => all + each, 0);
const bedOf = (id: string) => view.beds.find((bed) => bed.id === id)!;
const placeOf = (id: string) => worked.survey.beds.findIndex((bed) => bed.id === id);

test("beds stand in the order of their thirst for each square metre", () => {
  const thirst = view.beds.map((bed) => bed.gross_L_year / bed.area_m2);
  expect(thirst).toEqual([...thirst].sort((a, b) => b - a));
});

test("the dry and the wet year are the report's, the middle one lies between them", () => {
  expect(view.told).toMatchObject({ dry: reported.mains.dryYear, wet: reported.mains.wetYear });
  const needIn = (year: number) => reported.mains.byYear.find((row) => row.year === year)!.need_kL;
  const { middle, dry, wet } = view.told!;
  expect(needIn(middle)).toBeLessThanOrEqual(needIn(dry));
  expect(needIn(middle)).toBeGreaterThanOrEqual(needIn(wet));
});

test("rain used and drained make the rain, as the report has them", () => {
  for (const bed of view.beds) {
    const row = reported.beds.find(({ id }) => id === bed.id)!;
    expect(bed.rainUsed_L_year).toBeCloseTo(row.rain_used_mm_year * bed.area_m2, 6);
    expect(bed.rainUsed_L_year + bed.drained_L_year).toBeCloseTo(bed.rain_L_year, 6);
  }
});

test("the months of a year add up to what the year took", () => {
  const oval = bedOf("oval");
  const days = (year: number, m: number) => new Date(Date.UTC(year, m + 1, 0)).getUTCDate();
  view.years.forEach((year, y) => {
    const row = [...oval.needRows_L_week.subarray(y * 12, y * 12 + 12)];
    expect(sum(row.map((litres, m) => (litres / 7) * days(year, m)))).toBeCloseTo(oval.needByYear_L[y]!, 3);
  });
});

test("each month's middle lies between its wet and its dry one, and a tank gives no more than all of it", () => {
  for (const { ofYears } of [...view.beds, view.all!])
    ofYears!.need_L_week.forEach((need, m) => {
      expect(need).toBeGreaterThanOrEqual(ofYears!.wet_L_week[m]! - 1e-9);
      expect(need).toBeLessThanOrEqual(ofYears!.dry_L_week[m]! + 1e-9);
    });
  const front = bedOf("front").ofYears!;
  front.fromTank_L_week.forEach((tank, m) => {
    expect(tank).toBeLessThanOrEqual(front.need_L_week[m]! + 1e-9);
  });
});

test("the middle of four years is halfway between the second and the third", () => {
  const rows = new Float64Array(48);
  [40, 10, 30, 20].forEach((litres, y) => {
    rows[y * 12 + 6] = litres;
  });
  const parts = pointOfMonth(rows, 6, 0.5);
  expect(valueAt(rows, parts)).toBe(25);
  expect(valueAt(rows, pointOfMonth(rows, 6, 0.9))).toBeCloseTo(37, 9);
});

test("all beds together are the sum of those that are watered", () => {
  const watered = view.beds.filter(({ supply }) => supply !== "none");
  expect(view.all!.gross_L_year).toBeCloseTo(sum(watered.map((bed) => bed.gross_L_year)), 6);
  expect(view.all!.mean.need_L_week[6]).toBeCloseTo(sum(watered.map((bed) => bed.need_L_week[6]!)), 6);
  expect(view.all!.today_L_week).toBeNull();
});

test("under today's habit a bed's soil is run, not guessed: what lacks is stress, what is beyond drains", () => {
  const quad = bedOf("quad");
  expect(quad.lacks).toBe(true);
  expect(quad.underHabit!.stressDays_year).toBeGreaterThan(quad.stressDays_year);
  const oval = bedOf("oval");
  expect(oval.underHabit!.drained_L_year).toBeGreaterThan(oval.drained_L_year);
  expect(bedOf("hedge").underHabit).toBeNull();
});

test.each(["need", "today", "rain"] as const)("a year day by day closes, watered by %s", (as) => {
  const of = bedYear(worked, placeOf("oval"), 2014, as)!;
  expect(of.stored_mm).toHaveLength(365);
  for (let i = 1; i < 365; i++) {
    const change = of.stored_mm[i]! - of.stored_mm[i - 1]!;
    const balance = of.rain_mm[i]! + of.watered_mm[i]! - of.used_mm[i]! - of.drained_mm[i]!;
    expect(Math.abs(balance - change)).toBeLessThan(1e-9);
  }
  expect(Math.max(...of.stored_mm)).toBeLessThanOrEqual(of.available_mm);
  expect(Math.min(...of.stored_mm)).toBeGreaterThanOrEqual(0);
});

test("a year by rain alone is stressed more than one watered to need", () => {
  const stressed = (as: "need" | "rain") => sum(bedYear(worked, placeOf("oval"), 2015, as)!.stressed);
  expect(stressed("rain")).toBeGreaterThan(stressed("need") + 30);
  expect(sum(bedYear(worked, placeOf("oval"), 2015, "rain")!.watered_mm)).toBe(0);
});

test("what a tank gave a bed is no more than the bed got, and over the years what the outcome says", () => {
  let tank_L = 0;
  for (const year of view.years) {
    const of = bedYear(worked, placeOf("front"), year, "need")!;
    of.fromTank_mm.forEach((mm, i) => {
      expect(mm).toBeLessThanOrEqual(of.watered_mm[i]! + 1e-9);
    });
    tank_L += sum(of.fromTank_mm) * of.letOut_L_mm;
  }
  expect(tank_L).toBeCloseTo(sum(worked.outcome.beds[placeOf("front")]!.fromTankByMonth_L!), 6);
});

test("a year that the record lacks, and a habit that is not known, have no picture", () => {
  expect(bedYear(worked, 0, 1999, "need")).toBeNull();
  expect(bedYear(worked, placeOf("hedge"), 2014, "today")).toBeNull();
});
