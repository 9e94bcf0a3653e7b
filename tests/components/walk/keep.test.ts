import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { newFaults } from "../../../components/walk/faults.ts";
import { countReading, keepTaken, setField, withGroup } from "../../../components/walk/keep.ts";
import { doneBy, standingOf } from "../../../components/walk/standing.ts";
import { type Stop, stopsOf } from "../../../components/walk/stops.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { root } from "../../structure/sources.ts";

const school = JSON.parse(readFileSync(join(root, "demo/school.survey.json"), "utf8")) as Survey;
const fresh = (): Survey => structuredClone({ ...school, found: undefined, groups: undefined });
const stopOf = (survey: Survey, key: string): Stop => stopsOf(survey).find((stop) => stop.key === key)!;

function taken(survey: Survey, key: string, how: string, readings: number[], group = "g1"): Survey {
  const { at, also } = stopOf(survey, key);
  return keepTaken(survey, { at, also, how, readings, group, when: "2025-03-02T10:30" })!;
}

describe("what is taken is kept as read, and stands in its field", () => {
  test("an area: the row of the notebook and the bed's own figure", () => {
    const next = taken(fresh(), "beds/front/area", "rectangle 1,2", [16, 4.1, 3.9]);
    expect(next.beds[3]!.area_m2).toBeCloseTo(64, 9);
    expect(next.found).toMatchObject([
      { at: "beds[3].area_m2", readings: [16, 4.1, 3.9], group: "g1", used: true },
    ]);
    expect(doneBy(next, stopOf(next, "beds/front/area"), "g1")).toBe(true);
    expect(doneBy(next, stopOf(next, "beds/front/area"), "g2")).toBe(false);
  });

  test("of three groups the middle one stands", () => {
    let survey = fresh();
    for (const [group, width] of [
      ["g1", 4],
      ["g2", 4.5],
      ["g3", 9],
    ] as const)
      survey = taken(survey, "beds/front/area", "rectangle", [16, width], group);
    expect(survey.beds[3]!.area_m2).toBeCloseTo(72, 9);
    expect(standingOf(survey, stopOf(survey, "beds/front/area")).rows).toHaveLength(3);
  });

  test("a group that measures again replaces its own reading, which stays in the notebook", () => {
    let survey = taken(fresh(), "beds/front/area", "rectangle", [16, 9]);
    survey = taken(survey, "beds/front/area", "rectangle", [16, 4]);
    expect(survey.beds[3]!.area_m2).toBeCloseTo(64, 9);
    expect(survey.found!.map(({ used }) => used)).toEqual([false, true]);
  });

  test("a measuring that is left out counts no more, in every field that it filled, and can be counted again", () => {
    let survey = taken(fresh(), "beds/kitchen/area", "raised-beds", [8, 3, 2, 0.5]);
    survey = taken(survey, "beds/kitchen/area", "raised-beds", [8, 3, 2, 0.3], "g2");
    expect(survey.beds[2]!.rootDepth_m).toBeCloseTo(0.4, 9);
    const second = survey.found!.find(({ group }) => group === "g2")!;
    const left = countReading(survey, second, false);
    expect(left.beds[2]!.rootDepth_m).toBeCloseTo(0.5, 9);
    expect(left.found!.filter(({ used }) => used === false).every(({ group }) => group === "g2")).toBe(true);
    expect(countReading(left, left.found!.find(({ group }) => group === "g2")!, true)).toEqual(survey);
  });

  test("what was entered by hand elsewhere stays as entered", () => {
    let survey = taken(fresh(), "beds/front/area", "rectangle", [16, 4]);
    survey = setField(survey, "beds[3].area_m2", 70);
    survey = taken(survey, "beds/oval/cover", "leaf-points", [38, 40]);
    expect(survey.beds[3]!.area_m2).toBe(70);
  });

  test("a jar gives sand and clay together, in place of the texture", () => {
    const next = taken(fresh(), "beds/front/soil", "soil-jar", [30, 36, 34]);
    expect(next.beds[3]!.soil).toMatchObject({ sand_pct: 30, clay_pct: 34 });
    expect(next.beds[3]!.soil).not.toHaveProperty("texture");
  });

  test("pots give the depth of roots and their soil", () => {
    const next = taken(fresh(), "beds/kitchen/area", "raised-beds", [8, 3, 2, 0.5]);
    expect(next.beds[2]).toMatchObject({ area_m2: 48, rootDepth_m: 0.5, soil: { texture: "potting-mix" } });
  });
});

describe("parts that are not whole wait", () => {
  const bare = (): Survey => {
    const survey = fresh();
    delete survey.beds[0]!.soil;
    delete survey.beds[0]!.mulch;
    return survey;
  };

  test("a slope alone is no soil yet, and stands once the soil is known", () => {
    let survey = taken(bare(), "beds/oval/slope", "slope", [0.4, 10]);
    expect(survey.beds[0]!.soil).toBeUndefined();
    expect(survey.found).toHaveLength(1);
    survey = taken(survey, "beds/oval/soil", "soil-feel", [1, 1, 0]);
    expect(survey.beds[0]!.soil).toEqual({ texture: "sandy-loam", slope_pct: 4 });
  });

  test("mulch stands once material, cover and depth are there", () => {
    const { at } = stopOf(bare(), "beds/oval/mulch");
    let survey = keepTaken(bare(), {
      at,
      also: [],
      how: "seen",
      readings: [],
      word: "bark",
      when: "2025-03-02",
    })!;
    expect(survey.beds[0]!.mulch).toBeUndefined();
    survey = taken(survey, "beds/oval/mulch-cover", "mulch-points", [15, 30]);
    survey = taken(survey, "beds/oval/mulch-depth", "mulch-depth", [40]);
    expect(survey.beds[0]!.mulch).toEqual({ material: "bark", cover: 0.5, depth_mm: 40 });
  });

  test("every survey on the way is one without faults", () => {
    let survey = bare();
    const steps: [string, string, number[]][] = [
      ["beds/oval/slope", "slope", [0.4, 10]],
      ["beds/oval/intake", "soil-ring", [25, 12, 13]],
      ["beds/oval/soil", "soil-jar", [30, 36, 34]],
      ["beds/oval/area", "oval", [56, 30]],
      ["tanks/hall-tank/capacity", "tank-upright", [3.5, 2.3]],
    ];
    for (const [key, how, readings] of steps) {
      survey = taken(survey, key, how, readings);
      const { survey: named } = withGroup(survey, "Teasel");
      expect(readSurvey(JSON.parse(JSON.stringify(named))), key).toHaveProperty("survey");
    }
  });
});

test("readings of nothing are not kept", () => {
  const { at, also } = stopOf(fresh(), "beds/front/area");
  expect(
    keepTaken(fresh(), { at, also, how: "triangle", readings: [9, 3, 4], when: "2025-03-02" }),
  ).toBeNull();
});

test("what the survey cannot take is named before it is kept", () => {
  const before = withGroup(fresh(), "Teasel").survey;
  const after = taken(before, "beds/front/area", "rectangle", [1000, 60]);
  expect(newFaults(before, after)).toMatchObject([{ path: "beds[3].area_m2" }]);
  expect(newFaults(before, before)).toEqual([]);
});

test("a nickname is one group, however it is written", () => {
  const first = withGroup(fresh(), "Teasel");
  expect(withGroup(first.survey, "teasel")).toEqual({ survey: first.survey, id: first.id });
  expect(withGroup(first.survey, "Sorrel").id).not.toBe(first.id);
});
