import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FirstNames, firstDocument } from "../../../src/survey/first/document.ts";
import type { FirstEntries, FirstToday } from "../../../src/survey/first/entries.ts";
import { habitOf, monthsOf } from "../../../src/survey/first/habit.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { thirsts } from "../../../src/survey/words.ts";
import { openEntry } from "../../../src/tables/first-answer.ts";

const names: FirstNames = {
  garden: "The garden",
  roof: "The roof",
  tank: "The tank",
  addTank: "Put up the tank",
  connectRoof: "Lead the roof to it",
  useTank: "Water from it",
};
const about = { name: "An invented place", names, on: "2025-02-03" };
const place = { name: "Somewhere", latitude: -34.9, longitude: 138.6 };
const whole: FirstEntries = {
  place,
  garden_m2: 300,
  thirst: "moderate",
  mulched: true,
  roof_m2: 200,
  tank: { capacity_L: 10_000, isThere: true },
};

function surveyOf(entries: FirstEntries): Survey {
  const document = firstDocument(entries, about);
  if (!document) throw new Error("There is a place.");
  const read = readSurvey(document.survey);
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.survey;
}

describe("what was said is in the survey, and nothing else", () => {
  test("the six entries", () => {
    const { beds, roofs, tanks, measures, site } = surveyOf(whole);
    expect(beds[0]).toMatchObject({ area_m2: 300, watering: { supply: "tank-then-mains", tank: "tank" } });
    expect(beds[0]!.plantings[0]!.thirst).toBe("moderate");
    expect(roofs[0]).toMatchObject({ area_m2: 200, tank: "tank" });
    expect(tanks[0]!.capacity_L).toBe(10_000);
    expect(measures).toBeUndefined();
    expect(site).not.toHaveProperty("elevation_m");
    expect(beds[0]).not.toHaveProperty("leafCover");
    expect(beds[0]).not.toHaveProperty("soil");
    expect(beds[0]!.watering).not.toHaveProperty("habit");
    expect(beds[0]!.watering).not.toHaveProperty("flow_L_min");
  });

  test("a place alone is a survey without beds", () => {
    expect(surveyOf({ place })).toMatchObject({ beds: [], roofs: [], tanks: [] });
  });

  test("without a place there is none", () => {
    expect(firstDocument({ ...whole, place: undefined } as FirstEntries, about)).toBeNull();
  });

  test.each([
    ["its size", { place, thirst: "low" } as const, "area_m2"],
    ["its thirst", { place, garden_m2: 80 } as const, "thirst"],
  ])("a garden without %s is kept as typed, and counts later", (_, entries, lacking) => {
    const document = firstDocument(entries, about)!;
    expect(document.survey.beds).toEqual([]);
    const read = readSurvey(document.typed);
    if (!("faults" in read)) throw new Error("Something is still wanted.");
    expect(read.faults.map(({ path }) => path)).toEqual([expect.stringContaining(lacking)]);
  });

  test("a tank that is thought of stands nowhere yet: it comes as measures", () => {
    const { tanks, beds, roofs, measures } = surveyOf({
      ...whole,
      tank: { capacity_L: 10_000, isThere: false },
    });
    expect(tanks).toEqual([]);
    expect(beds[0]!.watering.supply).toBe("mains-only");
    expect(roofs[0]).not.toHaveProperty("tank");
    expect(measures!.map((measure) => Object.keys(measure).at(-1))).toEqual([
      "addTank",
      "connectRoof",
      "useTank",
    ]);
  });

  test("no tank and no roof: neither is there", () => {
    const { tanks, roofs } = surveyOf({ ...whole, roof_m2: 0, tank: { capacity_L: 0, isThere: true } });
    expect([tanks, roofs]).toEqual([[], []]);
  });

  test("not known is left out; not watered is a habit of no minutes", () => {
    const habit = (today: FirstToday) => surveyOf({ ...whole, today }).beds[0]!.watering.habit;
    expect(habit({ is: "unknown" })).toBeUndefined();
    expect(habit({ is: "not-watered" })?.minutes).toBe(0);
  });
});

test("whatever is entered, a place makes a survey in order", () => {
  const today: fc.Arbitrary<FirstToday> = fc.oneof(
    fc.constantFrom<FirstToday>({ is: "unknown" }, { is: "not-watered" }),
    fc.record({
      is: fc.constant("minutes" as const),
      minutesPerWeek: fc.double({ min: 0, max: 10_080, noNaN: true }),
      season: fc.constantFrom("all-year" as const, "warm-half" as const, "hottest-three" as const),
    }),
    fc.record({
      is: fc.constant("bills" as const),
      summer_kL: fc.double({ min: 0, max: 50_000, noNaN: true }),
      winter_kL: fc.double({ min: 0, max: 50_000, noNaN: true }),
      months: fc.integer({ min: 1, max: 12 }),
    }),
  );
  const entries = fc.record(
    {
      garden_m2: fc.double({ min: 0.1, max: 50_000, noNaN: true }),
      thirst: fc.constantFrom(...thirsts),
      grass: fc.boolean(),
      mulched: fc.boolean(),
      roof_m2: fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 100_000, noNaN: true })),
      tank: fc.record({ capacity_L: fc.double({ min: 0, max: 1e7, noNaN: true }), isThere: fc.boolean() }),
      today,
    },
    { requiredKeys: [] },
  );
  const latitude = fc.double({ min: -89, max: 89, noNaN: true });
  fc.assert(
    fc.property(entries, latitude, (some, north) => {
      surveyOf({ ...(some as FirstEntries), place: { ...place, latitude: north } });
    }),
  );
});

describe("today's watering", () => {
  test("bills come back: what the garden is given in a bill's months is their difference, less what is not its", () => {
    const found = habitOf({ is: "bills", summer_kL: 200, winter_kL: 60, months: 3 }, -34.9)!;
    const weeks = (3 * 365.25) / 7 / 12;
    const given_kL = (found.habit.minutes * found.flow_L_min! * found.habit.days.length * weeks) / 1000;
    expect(given_kL).toBeCloseTo(140 * openEntry("bills.outdoors").middle, 9);
    expect(found.habit.months).toEqual([1, 2, 12]);
  });

  test("a winter bill as large as summer's says that nothing goes on the garden", () => {
    expect(habitOf({ is: "bills", summer_kL: 60, winter_kL: 60, months: 3 }, 50)!.habit.minutes).toBe(0);
    expect(habitOf({ is: "bills", summer_kL: 50, winter_kL: 60, months: 3 }, 50)!.habit.minutes).toBe(0);
  });

  test("bills are kept as what was found, with their figures and a width", () => {
    const [found] = surveyOf({ ...whole, today: { is: "bills", summer_kL: 200, winter_kL: 60, months: 3 } })
      .found!;
    expect(found).toMatchObject({ readings: [200, 60, 3], guess: true, at: "beds[0].watering.flow_L_min" });
    expect(found!.standardError! / Number(found!.figure)).toBeGreaterThan(0.05);
  });

  test.each([
    ["warm-half", 50, [4, 5, 6, 7, 8, 9]],
    ["warm-half", -34.9, [1, 2, 3, 10, 11, 12]],
    ["hottest-three", 50, [6, 7, 8]],
    ["hottest-three", -34.9, [1, 2, 12]],
    ["all-year", 0, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]],
  ] as const)("%s at latitude %f is %j", (season, latitude, months) => {
    expect(monthsOf(season, latitude)).toEqual(months);
  });

  test("minutes a week are shared among waterings", () => {
    const { habit } = habitOf({ is: "minutes", minutesPerWeek: 90, season: "all-year" }, 50)!;
    expect(habit.minutes * habit.days.length).toBeCloseTo(90, 12);
  });
});
