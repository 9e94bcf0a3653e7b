import { describe, expect, test } from "vitest";
import { readInputs } from "../../../src/cli/survey-input.ts";
import { kcbByMonth } from "../../../src/engine/plants.ts";
import { netOf_mm } from "../../../src/engine/rounds/run-time.ts";
import { roundingBounds, roundsDocument } from "../../../src/report/rounds.ts";
import { roundsSchema } from "../../../src/report/rounds-schema.ts";
import { workOutRounds } from "../../../src/report/rounds-work.ts";
import { roundsWords } from "../../../src/words/en/rounds.ts";
import { demoRecord, demoSurvey, thirtyYears } from "../../helpers/demo-rounds.ts";
import { surveyOf, textOf } from "../../helpers/worked.ts";

const long = workOutRounds(demoSurvey(), thirtyYears());
const watered = long.table.beds.filter(({ id }) => id !== "bank");

/** Half a year later, for a place where summer is in January. */
function southern() {
  const record = thirtyYears();
  const survey = surveyOf(textOf("demo/southern.survey.json"));
  return workOutRounds(survey, { ...record, firstDay: record.firstDay + 182 });
}

/** Fifty years generated for its own place. */
function ofItsClimate() {
  const { survey, record, notes } = readInputs("demo/southern.survey.json", null);
  return workOutRounds(survey, record, { notes });
}

const runs = [
  ["the school, thirty years", long],
  ["the school, other thirty years", workOutRounds(demoSurvey(), thirtyYears(2))],
  ["the school, its own record", workOutRounds(demoSurvey(), demoRecord())],
  ["the southern garden, thirty years", southern()],
  ["the southern garden, years of its own climate", ofItsClimate()],
] as const;

describe.each(runs)("the month table run back through the engine: %s", (_name, { table, survey }) => {
  const beds = table.beds.filter((_, k) => survey.beds[k]!.watering.supply !== "none");
  test("waters most beds", () => {
    expect(beds.filter(({ cost }) => cost.allYears.need_L > 0).length).toBeGreaterThanOrEqual(4);
  });
  test.each(beds)("$id stays within the stated bounds", ({ cost: { allYears } }) => {
    expect(allYears.given_L).toBeLessThanOrEqual((1 + roundingBounds.overShare) * allYears.need_L);
    expect(allYears.stressDays).toBeLessThanOrEqual(allYears.needStressDays + roundingBounds.stressDays_year);
  });
});

test("waterings come about as often as FAO-56's RAW ÷ (ETc less rain) says, for a bed that any day is open to", () => {
  const free = demoSurvey((survey) => {
    for (const bed of survey.beds) {
      bed.watering.runBy = "timer";
      bed.obstructions = undefined;
      bed.dryOn = undefined;
      bed.watering.allowedDays = undefined;
    }
    survey.restrictions = undefined;
  });
  const { need, table } = workOutRounds(free, thirtyYears());
  const july = 6;
  for (const id of ["oval", "front"]) {
    const bed = need.beds.find(({ rounds }) => rounds.id === id)!;
    const { calendar, rain_mm, et0_mm } = need.ready.weather;
    const julys = Array.from(calendar.month, (month, i) => (month === july ? i : -1)).filter((i) => i >= 0);
    const mean = (values: Float64Array) => julys.reduce((sum, i) => sum + values[i]!, 0) / julys.length;
    const { base } = kcbByMonth(bed.ready.grown.bed, false);
    const leastDemand_mm = base[july]! * mean(et0_mm) - mean(rain_mm);
    const mostDemand_mm = 1.2 * mean(et0_mm);
    const raw_mm = bed.ready.grown.trigger_mm;
    const row = table.beds.find((one) => one.id === id)!.middle[july]!;
    const perWatering_mm = netOf_mm(bed.ready.grown.bed, row.minutes);
    const interval = row.month_L > 0 ? (31 * row.litres) / row.month_L : Number.NaN;
    expect(perWatering_mm).toBeLessThanOrEqual(raw_mm * 1.01);
    expect(interval).toBeGreaterThanOrEqual((0.9 * perWatering_mm) / mostDemand_mm);
    expect(interval).toBeLessThanOrEqual((1.35 * perWatering_mm) / leastDemand_mm);
  }
});

test("a dry year's table gives no less than the middle one", () => {
  for (const { cost } of watered)
    expect(cost.dry!.given_L).toBeGreaterThanOrEqual(cost.middle.given_L * 0.95);
});

test("minutes and days are those a person keeps: whole minutes, allowed days, within the limit of the method", () => {
  const { table, survey } = workOutRounds(demoSurvey(), demoRecord());
  for (const bed of table.beds) {
    const { allowedDays, maxMinutes = 1440 } = survey.beds.find(({ id }) => id === bed.id)!.watering;
    const names = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];
    for (const { minutes, pattern } of [...bed.middle, ...(bed.dry ?? [])]) {
      expect(Number.isInteger(minutes)).toBe(true);
      expect(minutes).toBeLessThanOrEqual(maxMinutes);
      if (pattern.kind === "week" && allowedDays)
        pattern.weekdays.forEach((on, day) => {
          if (on) expect(allowedDays).toContain(names[day]);
        });
    }
  }
});

test("the document keeps to its own schema, and its litres to its minutes and flow", () => {
  const document = roundsDocument(long, roundsWords, { madeOn: "2026-06-01" });
  expect(roundsSchema.parse(document)).toEqual(document);
  expect(document.months.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  const flows = new Map(long.resolved.grounds.beds.map(({ id, watering }) => [id, watering.flow_L_min]));
  for (const { beds } of document.months)
    for (const { id, minutes, litres, cycles, everyDays } of beds) {
      expect(litres).toBeCloseTo(minutes * flows.get(id)!, 6);
      expect(minutes > 0).toBe(cycles > 0);
      expect(everyDays === null).toBe(minutes === 0);
    }
});

test("plants that were counted get their litres each", () => {
  const survey = demoSurvey((demo) => {
    const cloister = demo.beds.find(({ id }) => id === "cloister")!;
    cloister.plantings = [
      { kind: "shrubs", thirst: "moderate", share: 1, count: { plants: 25, canopy_m: 0.8 } },
    ];
  });
  const document = roundsDocument(workOutRounds(survey, demoRecord()), roundsWords, { month: 7 });
  const row = document.months[0]!.beds.find(({ id }) => id === "cloister")!;
  expect(row.plants).toHaveLength(1);
  expect(row.plants[0]!.litresEach * 25).toBeCloseTo(row.litres, 6);
});

test("in the southern half of the year the table waters in January and rests in July", () => {
  const record = thirtyYears();
  const shifted = { ...record, firstDay: record.firstDay + 182 };
  const survey = demoSurvey((demo) => {
    demo.site.latitude = -demo.site.latitude;
    demo.site.absences = undefined;
    for (const bed of demo.beds) bed.leafCoverMonthly = undefined;
  });
  const { table } = workOutRounds(survey, shifted);
  const oval = table.beds.find(({ id }) => id === "oval")!;
  expect(oval.middle[0]!.minutes).toBeGreaterThan(0);
  expect(oval.middle[6]!.minutes).toBe(0);
});

test("where the rules leave too little, what gives is said", () => {
  const survey = demoSurvey((demo) => {
    demo.restrictions = [
      {
        id: "one-day",
        name: "Sprinklers on Sundays only",
        days: ["mon", "tue", "wed", "thu", "fri", "sat"],
        methods: ["rotor"],
      },
    ];
  });
  const { conflicts, table } = workOutRounds(survey, demoRecord());
  const oval = conflicts.filter(({ bed }) => bed === "oval");
  expect(oval.some(({ month, stressDays }) => month === 6 && stressDays > 5)).toBe(true);
  expect(oval[0]!.against).toContainEqual({ restriction: "one-day" });
  expect(table.beds.find(({ id }) => id === "oval")!.middle.every(({ minutes }) => minutes === 0)).toBe(true);
});
