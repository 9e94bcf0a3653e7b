import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { textureWater, totalEvaporableWater } from "../../src/engine/soil-texture.ts";
import { type Resolved, resolve } from "../../src/survey/resolve.ts";
import type { Survey, SurveyBed, SurveyPlanting } from "../../src/survey/survey.ts";

const scenarios = new URL("../scenarios/", import.meta.url);
const surveyFiles = readdirSync(scenarios).filter((name) => name.endsWith(".survey.json"));
const read = (name: string) => JSON.parse(readFileSync(new URL(name, scenarios), "utf8")) as Survey;

const shrubs: SurveyPlanting = { kind: "shrubs", thirst: "moderate", share: 1 };

/** An invented place with one bed, all of whose blanks are left. */
function place(bed: Partial<SurveyBed> = {}, rest: Partial<Survey> = {}): Survey {
  const blank: SurveyBed = {
    id: "bed",
    name: "Bed",
    area_m2: 30,
    plantings: [shrubs],
    watering: { method: "drip", supply: "mains-only" },
  };
  return {
    format: "grounds-survey",
    version: 1,
    site: { name: "Invented place", latitude: -34, longitude: 151 },
    beds: [{ ...blank, ...bed }],
    roofs: [],
    tanks: [],
    ...rest,
  };
}

const bedOf = ({ grounds }: Resolved) => grounds.beds[0]!;
const plantingOf = (planting: Partial<SurveyPlanting>) =>
  bedOf(resolve(place({ plantings: [{ ...shrubs, ...planting }] }))).plantings[0]!;
const wateringOf = (watering: Partial<SurveyBed["watering"]>, rest: Partial<Survey> = {}) =>
  resolve(place({ watering: { method: "drip", supply: "mains-only", ...watering } }, rest));
const assumedAt = ({ assumed }: Resolved, where: string) =>
  assumed.find((entry) => entry.where === where)?.value;

describe.each(surveyFiles)("%s, where every factor is in the survey", (file) => {
  const survey = read(file);
  const { grounds, assumed } = resolve(survey);

  test("the survey's own figures stand", () => {
    survey.beds.forEach((bed, i) => {
      const filled = grounds.beds[i]!;
      expect(filled.soil).toEqual(bed.soil);
      expect(filled.leafCover).toEqual(Array(12).fill(bed.leafCover));
      expect(filled.watering).toMatchObject({
        efficiency: bed.watering.efficiency,
        wettedShare: bed.watering.wettedShare,
        flow_L_min: bed.watering.flow_L_min,
        maxMinutes: 600,
      });
      bed.plantings.forEach(({ kcbFull, height_m, rootDepth_m, depletionFraction }, k) => {
        expect(filled.plantings[k]).toMatchObject({
          kcbFull,
          height_m,
          rootDepth_m,
          depletionFraction,
          climateAdjusted: true,
          establishing: null,
        });
      });
    });
    survey.roofs.forEach(({ runoff, firstFlush_mm, share }, i) => {
      expect(grounds.roofs[i]).toMatchObject({ runoff, firstFlush_mm, share });
    });
  });

  test("what stands in is only what the plain case is, each with its source", () => {
    for (const { where, source } of assumed) {
      expect(where).toMatch(/\.(rainShare|runBy|unusable_L|inUse|rule|windHeight_m)$/);
      expect(source).toMatch(/[a-z]{4}/);
    }
  });
});

test("a survey with every blank left lists each with a value and a cited source", () => {
  const roofs: Survey["roofs"] = [{ id: "roof", name: "Roof", area_m2: 90, material: "metal", tank: "tank" }];
  const tanks: Survey["tanks"] = [{ id: "tank", name: "Tank", capacity_L: 5000 }];
  const draws: Survey["draws"] = [{ id: "wc", name: "Toilets", tank: "tank", litresPerDay: 300 }];
  const { assumed } = resolve(place({}, { roofs, tanks, draws }));
  expect(assumed.map(({ where }) => where)).toEqual([
    "site.elevation_m",
    "site.coastal",
    "site.windHeight_m",
    "beds[0].plantings[0].kcbFull",
    "beds[0].plantings[0].height_m",
    "beds[0].plantings[0].rootDepth_m",
    "beds[0].plantings[0].depletionFraction",
    "beds[0].leafCover",
    "beds[0].soil",
    "beds[0].rainShare",
    "beds[0].watering.efficiency",
    "beds[0].watering.wettedShare",
    "beds[0].watering.flow_L_min",
    "beds[0].watering.runBy",
    "roofs[0].runoff",
    "roofs[0].firstFlush_mm",
    "roofs[0].share",
    "tanks[0].unusable_L",
    "tanks[0].inUse",
    "tanks[0].rule",
    "draws[0].order",
    "draws[0].pausesWhenAbsent",
  ]);
  for (const { where, value, source } of assumed) {
    expect(source, where).toMatch(/[a-z]{4}/);
    expect(value, where).not.toBeNaN();
  }
});

describe("the site's blanks are listed where they count", () => {
  const listed = (columns: string[], bed: Partial<SurveyBed> = {}) =>
    resolve(place(bed), columns)
      .assumed.map(({ where }) => where)
      .filter((where) => where.startsWith("site."));
  const wall = { obstructions: [{ fromAzimuth_deg: 90, toAzimuth_deg: 270, elevation_deg: 40 }] };

  test.each([
    ["ET0 given", ["rain_mm", "et0_mm"], {}, []],
    ["temperatures alone: Hargreaves", ["rain_mm", "tmin_c", "tmax_c"], {}, []],
    [
      "with wind",
      ["tmin_c", "tmax_c", "wind_ms"],
      {},
      ["site.elevation_m", "site.coastal", "site.windHeight_m"],
    ],
    ["with sun", ["tmin_c", "tmax_c", "solar_MJ_m2"], {}, ["site.elevation_m"]],
    ["a shaded bed on temperatures", ["tmin_c", "tmax_c"], wall, ["site.elevation_m", "site.coastal"]],
  ])("%s", (_, columns, bed, expected) => {
    expect(listed(columns, bed)).toEqual(expected);
  });

  test("what the survey says is never listed", () => {
    const site = { ...place().site, elevation_m: 40, coastal: true, windHeight_m: 10 };
    const { grounds, assumed } = resolve(place({}, { site }));
    expect(grounds.place).toMatchObject({ elevation_m: 40, coastal: true, windHeight_m: 10 });
    expect(assumed.filter(({ where }) => where.startsWith("site."))).toEqual([]);
  });
});

describe("plantings", () => {
  test("a landscape plant factor takes no Eq. 70, an FAO-56 row and the survey's own figure do", () => {
    expect(plantingOf({})).toMatchObject({ kcbFull: 0.5, climateAdjusted: false });
    expect(plantingOf({ kind: "vegetables", thirst: "high" })).toMatchObject({
      kcbFull: 1,
      climateAdjusted: true,
    });
    expect(plantingOf({ kcbFull: 0.62 })).toMatchObject({ kcbFull: 0.62, climateAdjusted: true });
  });

  test("a class that the kind has no row for is listed with the class that stands in", () => {
    const survey = place({ plantings: [{ kind: "vegetables", thirst: "low", share: 1 }] });
    expect(assumedAt(resolve(survey), "beds[0].plantings[0].thirst")).toBe("moderate");
    const own = place({ plantings: [{ kind: "vegetables", thirst: "low", share: 1, kcbFull: 0.5 }] });
    expect(assumedAt(resolve(own), "beds[0].plantings[0].thirst")).toBeUndefined();
  });

  test("a bed's own root depth and fraction leave its plantings' unlisted", () => {
    const resolved = resolve(place({ rootDepth_m: 0.4, depletionFraction: 0.3 }));
    expect(bedOf(resolved)).toMatchObject({ rootDepth_m: 0.4, depletionFraction: 0.3 });
    expect(resolved.assumed.map(({ where }) => where).join()).not.toMatch(/rootDepth_m|depletionFraction/);
  });

  const establishingUntil = "2027-03-01";
  test.each([
    ["low is raised to the moderate class", { thirst: "low" }, { kcbFull: 0.5, climateAdjusted: false }],
    ["moderate stays", {}, { kcbFull: 0.5, climateAdjusted: false }],
    ["high is above it", { thirst: "high" }, { kcbFull: 0.8, climateAdjusted: false }],
    [
      "an own figure below it gives way, Eq. 70 with it",
      { kcbFull: 0.4 },
      { kcbFull: 0.5, climateAdjusted: false },
    ],
    ["an own figure equal to it stands", { kcbFull: 0.5 }, { kcbFull: 0.5, climateAdjusted: true }],
    [
      "a factor below an FAO-56 moderate row takes Eq. 70",
      { kind: "fruit-trees", thirst: "low" },
      { kcbFull: 0.7, climateAdjusted: true },
    ],
  ] as const)("while establishing, %s", (_, planting, expected) => {
    expect(plantingOf({ ...planting, establishingUntil }).establishing).toEqual(expected);
  });

  test("only a planting that carries the date establishes", () => {
    const plantings = [
      { ...shrubs, share: 0.5, establishingUntil },
      { ...shrubs, share: 0.5 },
    ];
    const filled = bedOf(resolve(place({ plantings }))).plantings;
    expect(filled.map(({ establishing }) => establishing !== null)).toEqual([true, false]);
  });
});

describe("plants counted", () => {
  const one = Math.PI / 4;

  test("all counted: shares by canopy, cover by canopy over area", () => {
    const plantings = [
      { ...shrubs, share: 0.5, count: { plants: 4, canopy_m: 1 } },
      { ...shrubs, kind: "perennials" as const, share: 0.5, count: { plants: 2, canopy_m: 2 } },
    ];
    const resolved = resolve(place({ plantings }));
    const bed = bedOf(resolved);
    expect(bed.plantings[0]!.share).toBeCloseTo(4 / 12, 12);
    expect(bed.plantings[1]!.share).toBeCloseTo(8 / 12, 12);
    expect(bed.leafCover[6]).toBeCloseTo((12 * one) / 30, 12);
    expect(assumedAt(resolved, "beds[0].leafCover")).toBeCloseTo((12 * one) / 30, 12);
  });

  test("cover from canopies is no more than 0.99", () => {
    const plantings = [{ ...shrubs, count: { plants: 100, canopy_m: 1 } }];
    expect(bedOf(resolve(place({ plantings }))).leafCover[0]).toBe(0.99);
  });

  test("some counted: those divide what they have together by canopy", () => {
    const plantings = [
      { ...shrubs, kind: "groundcover" as const, share: 0.4 },
      { ...shrubs, share: 0.3, count: { plants: 1, canopy_m: 1 } },
      { ...shrubs, share: 0.3, count: { plants: 1, canopy_m: 2 } },
    ];
    const shares = bedOf(resolve(place({ plantings }))).plantings.map(({ share }) => share);
    expect(shares[0]).toBe(0.4);
    expect(shares[1]).toBeCloseTo(0.12, 12);
    expect(shares[2]).toBeCloseTo(0.48, 12);
  });
});

describe("leaf cover", () => {
  test("the months' multipliers scale it", () => {
    const monthly = [0.1, 0.2, 0.4, 0.6, 0.8, 1, 1.2, 1, 0.8, 0.6, 0.4, 0.2];
    const { leafCover } = bedOf(resolve(place({ leafCover: 0.5, leafCoverMonthly: monthly })));
    for (const [month, cover] of leafCover.entries()) expect(cover).toBeCloseTo(0.5 * monthly[month]!, 12);
  });

  test("left out, it is that of the stands, by share", () => {
    const plantings = [
      { ...shrubs, share: 0.75 },
      { ...shrubs, kind: "trees" as const, share: 0.25 },
    ];
    expect(bedOf(resolve(place({ plantings }))).leafCover[0]).toBeCloseTo(0.75 * 0.95 + 0.25 * 0.85, 12);
  });
});

describe("soil", () => {
  const soilOf = (soil: SurveyBed["soil"]) => bedOf(resolve(place({ soil }))).soil;

  test("left out, it is loam, and listed", () => {
    const resolved = resolve(place());
    expect(bedOf(resolved).soil).toEqual({ fieldCapacity: 0.25, wiltingPoint: 0.095, tew_mm: 19, rew_mm: 9 });
    expect(assumedAt(resolved, "beds[0].soil")).toBe("loam");
  });

  test("by texture", () => {
    expect(soilOf({ texture: "sand", slope_pct: 3 })).toEqual({
      fieldCapacity: 0.12,
      wiltingPoint: 0.04,
      tew_mm: 9,
      rew_mm: 4.5,
    });
  });

  test("by sand and clay: Saxton and Rawls, REW of the class that they fall in", () => {
    const { fieldCapacity, wiltingPoint } = textureWater(0.65, 0.1);
    expect(soilOf({ sand_pct: 65, clay_pct: 10 })).toEqual({
      fieldCapacity,
      wiltingPoint,
      tew_mm: totalEvaporableWater(fieldCapacity, wiltingPoint),
      rew_mm: 8,
    });
  });

  test("pure clay, beyond what the equations fit, still holds something, and a caution says so", () => {
    const resolved = resolve(place({ soil: { sand_pct: 0, clay_pct: 100 } }));
    const { fieldCapacity, wiltingPoint } = bedOf(resolved).soil;
    expect(fieldCapacity).toBeGreaterThan(wiltingPoint);
    expect(resolved.cautions).toContain("clay-beyond-fit");
  });

  test("REW is never above TEW", () => {
    const own = { fieldCapacity: 0.1, wiltingPoint: 0.05, tew_mm: 7, rew_mm: 9 };
    expect(soilOf(own)).toEqual({ ...own, rew_mm: 7 });
  });
});

test("a mulch brings its material's cut and depth", () => {
  const mulch = { material: "straw", cover: 0.8, depth_mm: 40 } as const;
  expect(bedOf(resolve(place({ mulch }))).mulch).toEqual({
    cut: 0.5,
    fullDepth_mm: 50,
    cover: 0.8,
    depth_mm: 40,
  });
  expect(bedOf(resolve(place({ mulch: { ...mulch, material: "sheet" } }))).mulch).toMatchObject({
    cut: 0.65,
    fullDepth_mm: 0,
  });
});

describe("watering", () => {
  test("efficiency: own before the catch cans, those before the method's", () => {
    const efficiency = (watering: Partial<SurveyBed["watering"]>) =>
      bedOf(wateringOf(watering)).watering.efficiency;
    expect(efficiency({ efficiency: 0.66, distributionUniformity: 0.5 })).toBe(0.66);
    expect(efficiency({ distributionUniformity: 0.5 })).toBeCloseTo(0.7, 12);
    expect(efficiency({})).toBe(0.9);
  });

  test("flow: own before the tap's, that before the method's", () => {
    const tap = { id: "tap", name: "Tap", source: "mains" };
    const flow = (own: number | undefined, taps: Survey["taps"]) =>
      wateringOf({ tap: "tap", flow_L_min: own }, { taps });
    expect(bedOf(flow(9, [{ ...tap, flow_L_min: 14 }])).watering.flow_L_min).toBe(9);
    const byTap = flow(undefined, [{ ...tap, flow_L_min: 14 }]);
    expect(bedOf(byTap).watering.flow_L_min).toBe(14);
    expect(assumedAt(byTap, "beds[0].watering.flow_L_min")).toBeUndefined();
    const flowAt = [
      { level_L: 500, flow_L_min: 4 },
      { level_L: 4000, flow_L_min: 10 },
    ];
    expect(assumedAt(flow(undefined, [{ ...tap, flowAt }]), "beds[0].watering.flow_L_min")).toBe(7);
    expect(assumedAt(flow(undefined, [tap]), "beds[0].watering.flow_L_min")).toBe(6);
  });

  test("run by hand unless said or laid out: the list says which", () => {
    const run = (watering: Partial<SurveyBed["watering"]>) => {
      const resolved = wateringOf(watering);
      return [bedOf(resolved).watering.byHand, assumedAt(resolved, "beds[0].watering.runBy")];
    };
    expect(run({ method: "rotor" })).toEqual([false, "timer"]);
    expect(run({ method: "sprinkler" })).toEqual([true, "hand"]);
    expect(run({ method: "hose", runBy: "timer" })).toEqual([false, undefined]);
    expect(run({ method: "drip", runBy: "hand" })).toEqual([true, undefined]);
  });

  test("never watered: the need takes the hose's row", () => {
    const none = bedOf(wateringOf({ method: "none", supply: "none" })).watering;
    const hose = bedOf(wateringOf({ method: "hose" })).watering;
    expect(none).toEqual({ ...hose, supply: "none" });
  });

  test("days from Monday, months from January", () => {
    const { allowedWeekdays, habit } = bedOf(
      wateringOf({ allowedDays: ["sun", "mon"], habit: { minutes: 20, days: ["tue"], months: [12] } }),
    ).watering;
    expect(allowedWeekdays).toEqual([true, false, false, false, false, false, true]);
    expect(habit).toEqual({
      minutes: 20,
      weekdays: [false, true, false, false, false, false, false],
      months: [...Array(11).fill(false), true],
    });
  });

  test("no habit is not known, 0 minutes is not watered, no limit is none", () => {
    expect(bedOf(wateringOf({})).watering).toMatchObject({
      habit: null,
      maxMinutes: Number.POSITIVE_INFINITY,
      allowedWeekdays: Array(7).fill(true),
    });
    expect(bedOf(wateringOf({ habit: { minutes: 0, days: [], months: [] } })).watering.habit?.minutes).toBe(
      0,
    );
  });
});

test("roofs, tanks, draws, leaks and absences come through", () => {
  const { grounds } = resolve(
    place(
      {},
      {
        site: {
          ...place().site,
          absences: [
            { name: "Summer", from: "12-20", to: "01-30" },
            { name: "Camp", from: "2026-05-01", to: "2026-05-05", carer: "the neighbour" },
          ],
        },
        roofs: [{ id: "r", name: "Roof", area_m2: 80, material: "tile" }],
        tanks: [
          { id: "a", name: "A", capacity_L: 900, linked: ["b"] },
          { id: "b", name: "B", capacity_L: 700, level_L: 0, topUp: { belowShare: 0.1, toShare: 0.3 } },
        ],
        draws: [{ id: "d", name: "Toilets", tank: "a", litresPerDay: 60, days: ["sat"], months: [1] }],
        leaks: [
          { id: "l", name: "Drip", litresPerDay: 12 },
          { id: "m", name: "Valve", litresPerDay: 30 },
        ],
      },
    ),
  );
  expect(grounds.roofs[0]).toEqual({
    id: "r",
    area_m2: 80,
    runoff: 0.84,
    firstFlush_mm: 0,
    share: 1,
    tank: null,
  });
  expect(grounds.tanks[0]).toEqual({
    id: "a",
    capacity_L: 900,
    level_L: null,
    unusable_L: 0,
    inUse: true,
    rule: "after-spillage",
    topUp: null,
    linked: ["b"],
  });
  expect(grounds.tanks[1]).toMatchObject({
    level_L: 0,
    topUp: { belowShare: 0.1, toShare: 0.3 },
    linked: [],
  });
  expect(grounds.draws[0]).toMatchObject({ order: "before-beds", pausesWhenAbsent: false });
  expect(grounds.draws[0]!.weekdays.indexOf(true)).toBe(5);
  expect(grounds.draws[0]!.months.filter(Boolean)).toHaveLength(1);
  expect(grounds.leaks_L_day).toBe(42);
  expect(grounds.absences).toEqual([
    { from: "12-20", to: "01-30", hasCarer: false },
    { from: "2026-05-01", to: "2026-05-05", hasCarer: true },
  ]);
});

describe("cautions", () => {
  test("a place without tanks or roofs hears of local rules and of its walk alone", () => {
    expect(resolve(place()).cautions).toEqual(["local-rules-first", "survey-safety"]);
  });

  test("tank water by spray, and toilets each bring theirs", () => {
    const { cautions } = resolve(
      place(
        { watering: { method: "spray", supply: "tank-only", tank: "t" } },
        {
          tanks: [{ id: "t", name: "T", capacity_L: 900 }],
          draws: [{ id: "d", name: "Toilets", tank: "t", litresPerDay: 60 }],
        },
      ),
    );
    for (const code of ["tank-not-for-drinking", "no-cross-connection", "tank-spray"])
      expect(cautions).toContain(code);
  });
});
