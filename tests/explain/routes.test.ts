import { describe, expect, test } from "vitest";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import type { WeatherColumn, WeatherRecord } from "../../src/engine/weather/record.ts";
import { explain } from "../../src/explain/explain.ts";
import { headlines, monthFigures } from "../../src/explain/headlines.ts";
import { plainSay } from "../../src/explain/say.ts";
import type { Working } from "../../src/explain/working.ts";
import { type WorkedOut, workOut } from "../../src/report/work-out.ts";
import { recordAt, surveyOf, textOf, workFiles } from "../helpers/worked.ts";
import { expectClean, walk } from "./walk.ts";

const say = plainSay("us", "en");

/** Days of a made record, so many from a date, each column by the day's place. */
function made(
  first: [number, number, number],
  days: number,
  columns: Partial<Record<WeatherColumn, (i: number) => number>>,
): WeatherRecord {
  const filled = Object.fromEntries(
    Object.entries(columns).map(([name, at]) => [name, Float64Array.from({ length: days }, (_, i) => at(i))]),
  );
  return { firstDay: dayNumber(...first), days, columns: filled as WeatherRecord["columns"] };
}

const season = (i: number) => Math.cos((2 * Math.PI * (i - 15)) / 365);
const rain_mm = (i: number) => (i % 9 === 0 ? 4 + (i % 7) : i % 13 === 0 ? 0.6 : 0);
const tmin_c = (i: number) => 9 - 6 * season(i);
const tmax_c = (i: number) => 20 - 8 * season(i) + (i % 3);
const warm = { rain_mm, tmin_c, tmax_c };

/** Opens all that can be reached, following a few days; its own year where the record has one. */
function expectOpens(
  worked: WorkedOut,
  followed: readonly number[] = [0, 1, 59, 120, 200, 201, 300],
): Map<string, Working> {
  const { firstDay, days } = worked.weather.calendar;
  const at = new Set(followed.filter((i) => i < days).map((i) => firstDay + i));
  const found = walk(worked, say, [...headlines(worked), ...monthFigures(worked)], at);
  expectClean(found);
  return found.opened;
}

const plain = surveyOf({
  format: "grounds-survey",
  version: 1,
  site: { name: "Invented: one bed", latitude: 47.5, longitude: -122.3, elevation_m: 40, windHeight_m: 10 },
  beds: [
    {
      id: "bed",
      name: "Bed",
      area_m2: 20,
      plantings: [{ kind: "lawn-cool", thirst: "high", share: 1 }],
      soil: { texture: "loam" },
      obstructions: [{ fromAzimuth_deg: 150, toAzimuth_deg: 230, elevation_deg: 40 }],
      watering: { method: "hose", supply: "mains-only" },
    },
  ],
  roofs: [],
  tanks: [],
});

describe("each way that a record can take to ET0", () => {
  const ways: [string, Partial<Record<WeatherColumn, (i: number) => number>>, string][] = [
    [
      "ET0 as given, sun recorded",
      { rain_mm, et0_mm: (i) => 3 - 2 * season(i), solar_MJ_m2: (i) => 14 - 9 * season(i) },
      "Hargreaves",
    ],
    ["ET0 as given beside temperatures", { ...warm, et0_mm: (i) => 3 - 2 * season(i) }, "Eq. 50"],
    ["temperatures alone", warm, "Eq. 52"],
    ["dew point and wind", { ...warm, tdew_c: (i) => tmin_c(i) - 1, wind_ms: () => 3.1 }, "Eq. 14"],
    ["vapour pressure", { ...warm, vp_kpa: () => 0.9 }, "Eq. 6"],
    [
      "both ends of humidity",
      { ...warm, rhmin_pct: () => 42, rhmax_pct: () => 91, wind_ms: () => 0.1 },
      "Eq. 17",
    ],
    [
      "mean humidity and sunshine",
      { ...warm, rhmean_pct: () => 66, sun_h: (i) => 7 - 5 * season(i) },
      "Eq. 19",
    ],
    ["solar radiation", { ...warm, solar_MJ_m2: (i) => 14 - 9 * season(i) }, "Eq. 39"],
  ];
  test.each(ways)("%s", (_name, columns, published) => {
    const worked = workOut(plain, made([2014, 1, 1], 400, columns), { keepDays: true });
    const opened = expectOpens(worked);
    const sources = [...opened.values()].flatMap(({ steps }) => steps.map(({ source }) => source ?? ""));
    expect(sources.some((source) => source.includes(published))).toBe(true);
  });

  test("where the sun stays down, and up", () => {
    const polar = { ...plain, site: { ...plain.site, latitude: 74 } };
    expectOpens(
      workOut(polar, made([2014, 1, 1], 400, { ...warm, sun_h: () => 0 })),
      [0, 10, 59, 170, 171, 350],
    );
  });

  test("a gap that was filled is said to be one", () => {
    const gap = (i: number) => (i === 200 ? Number.NaN : tmax_c(i));
    const worked = workOut(plain, made([2014, 1, 1], 400, { ...warm, tmax_c: gap }));
    const given = explain(worked, "et0/2014-07-20", say)!.given.find(({ symbol }) => symbol === "Tmax")!;
    expect(given.provenance).toBe("assumed");
    expect(given.source).toContain("filled");
  });
});

test("the scenarios open, each of them", () => {
  expectOpens(workFiles("tests/scenarios/s02-tollgate-court.survey.json", "tests/scenarios/seattle.csv"));
  expectOpens(workFiles("tests/scenarios/s06-brook-terrace.survey.json", "tests/scenarios/seattle.csv"));
  expectOpens(workFiles("tests/scenarios/s07-wallside.survey.json", "tests/scenarios/seattle-temps.csv"));
}, 60_000);

test("a survey that uses every field opens", () => {
  const survey = surveyOf(textOf("tests/survey/whole.survey.json"));
  expectOpens(
    workOut(survey, made([2024, 2, 20], 420, { ...warm, wind_ms: () => 2.4, rhmean_pct: () => 60 })),
  );
});

test("a record of a few days opens, without a spun-up start or a whole year", () => {
  const worked = workOut(plain, made([2015, 6, 1], 20, warm));
  const opened = expectOpens(worked, [0, 1, 19]);
  expect(opened.has("mains/give-up")).toBe(true);
  expect(
    explain(worked, "bed/bed/depletion/2015-06-01", say)!.given.some(({ source }) =>
      source?.includes("soil full"),
    ),
  ).toBe(true);
});

describe("tanks of every sort", () => {
  const bed = (id: string, watering: object) => ({
    ...plain.beds[0]!,
    id,
    name: id,
    obstructions: [],
    watering: { method: "drip", ...watering },
  });
  const habit = { minutes: 20, days: ["mon", "thu"], months: [6, 7, 8] };
  const roof = (id: string, tank: string) => ({
    id,
    name: id,
    area_m2: 60,
    material: "tile",
    tank,
    firstFlush_mm: 0.5,
  });
  const site = (tanks: object[], more: object = {}) =>
    surveyOf({
      ...plain,
      site: { ...plain.site, absences: [{ name: "away", from: "07-01", to: "07-20" }] },
      beds: [
        bed("first", { supply: "tank-then-mains", tank: "one", runBy: "hand", habit }),
        bed("alone", { supply: "tank-only", tank: "one" }),
        bed("alone-too", { supply: "tank-only", tank: "one", maxMinutes: 30 }),
        bed("with-habit", { supply: "tank-only", tank: "one", habit }),
        bed("bore", { supply: "other" }),
        bed("rain", { method: "none", supply: "none" }),
      ],
      roofs: [roof("north", "one"), roof("south", "one")],
      tanks,
      draws: [
        {
          id: "wash",
          name: "Wash",
          tank: "one",
          litresPerDay: 40,
          days: ["mon", "tue"],
          pausesWhenAbsent: true,
        },
        { id: "late", name: "Late", tank: "one", litresPerDay: 25, order: "after-beds" },
      ],
      leaks: [{ id: "drip", name: "Drip", litresPerDay: 12 }],
      ...more,
    });
  const record = made([2014, 1, 1], 500, { ...warm, wind_ms: () => 2 });
  const one = { id: "one", name: "One", capacity_L: 900, unusable_L: 50 };
  const sorts: [string, object[], object?][] = [
    ["spun up", [one]],
    ["with a level surveyed", [{ ...one, level_L: 300 }]],
    ["yield before spillage", [{ ...one, rule: "before-spillage" }]],
    ["topped up from the mains", [{ ...one, topUp: { belowShare: 0.2, toShare: 0.5 } }]],
    ["not in use", [{ ...one, inUse: false }]],
    ["linked", [one, { id: "two", name: "Two", capacity_L: 400, linked: ["one"], level_L: 100 }]],
    [
      "with measures chosen",
      [{ ...one, inUse: false }],
      {
        measures: [
          { id: "use", name: "Use it", cost: 1, useTank: { tank: "one", beds: ["first"] } },
          { id: "more", name: "A tank more", cost: 1, addTank: { id: "new", name: "New", capacity_L: 500 } },
          {
            id: "cloths",
            name: "Cloths",
            cost: 1,
            addDraw: { id: "cloths", name: "Cloths", tank: "new", litresPerDay: 9 },
          },
          {
            id: "bark",
            name: "Bark",
            cost: 1,
            mulch: { beds: ["first"], material: "bark", cover: 0.8, depth_mm: 60 },
          },
        ],
      },
    ],
  ];
  test.each(sorts)("%s", (_name, tanks, more) => {
    const worked = workOut(site(tanks, more), record);
    const opened = [...expectOpens(worked, [0, 1, 5, 6, 180, 181, 182, 250]).keys()];
    expect(opened.some((address) => address.startsWith("today/bed/alone/ks/"))).toBe(true);
  });
});

test("generated years say so, and stay open", () => {
  const worked = workOut(plain, made([2014, 1, 1], 400, warm), {
    notes: {
      generated: { years: 1, seed: 7, source: "invented means" },
      assumed: [],
      cautions: [],
      guesses: null,
    },
  });
  expectOpens(worked);
  const [rain] = explain(worked, "rain/2014-03-01", say)!.given;
  expect(rain).toMatchObject({ provenance: "assumed", source: expect.stringContaining("seed 7") });
});

test("an address that leads nowhere is null, whatever it is", () => {
  const worked = workFiles("demo/school.survey.json", "demo/seattle.csv");
  for (const address of [
    "",
    "mains",
    "mains/today/1999",
    "mains/today/2015-13",
    "bed/nobody/need",
    "bed/oval/constructor",
    "bed/oval/ks",
    "bed/oval/ks/2031-01-01",
    "bed/hedge/habit",
    "today/bed/oval/ks/2015-07-14",
    "tank/gym-roof/level/2015-07-14",
    "roof/hall-roof/inflow/2015-02-30",
    "et0/2015-07-14/2",
    "__proto__/toString",
  ])
    expect(explain(worked, address, say), address).toBeNull();
});

test("who measured a figure, how and when stands beside it", () => {
  const worked = workFiles("demo/school.survey.json", "demo/seattle.csv");
  const flow = explain(worked, "bed/senses/flow", say)!;
  expect(flow.provenance).toBe("measured");
  expect(flow.given[0]!.source).toMatch(/jug test.*42, 43\.5, 43.*Rain beetles.*September 22, 2015/);
  const soil = explain(worked, "bed/oval/available", say)!;
  expect(soil.given.map(({ source }) => source).join("\n")).toMatch(/sandy-loam: FAO-56, Table 19/);
});

test("a record as it comes from a file opens on its last day", () => {
  const worked = workOut(plain, recordAt("demo/seattle.csv"));
  expect(explain(worked, "bed/bed/ks/2015-12-31", say)).not.toBeNull();
});
