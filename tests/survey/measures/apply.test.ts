import { describe, expect, test } from "vitest";
import { applyMeasures } from "../../../src/survey/measures/apply.ts";
import { chosenMeasures } from "../../../src/survey/measures/chosen.ts";
import { resolve } from "../../../src/survey/resolve.ts";
import type { Survey, SurveyMeasure } from "../../../src/survey/survey.ts";
import { asRead } from "../../helpers/sites.ts";

const site: Survey = asRead({
  format: "grounds-survey",
  version: 1,
  site: { name: "Invented place", latitude: 40, longitude: 10 },
  beds: [
    {
      id: "rose",
      name: "Roses",
      area_m2: 20,
      plantings: [{ kind: "shrubs", thirst: "high", share: 1 }],
      leafCover: 0.6,
      watering: {
        method: "spray",
        flow_L_min: 30,
        efficiency: 0.6,
        wettedShare: 0.9,
        distributionUniformity: 0.5,
        supply: "mains-only",
        runBy: "timer",
        habit: { minutes: 20, days: ["mon"], months: [7] },
      },
    },
    {
      id: "fern",
      name: "Ferns",
      area_m2: 9,
      plantings: [{ kind: "groundcover", thirst: "moderate", share: 1 }],
      watering: { method: "hose", supply: "tank-only", tank: "idle" },
    },
  ],
  roofs: [{ id: "hall", name: "Hall", area_m2: 100, material: "metal", share: 0.5, tank: "old" }],
  tanks: [
    { id: "old", name: "Old", capacity_L: 5000, level_L: 4000 },
    { id: "idle", name: "Idle", capacity_L: 900, inUse: false },
  ],
  leaks: [
    { id: "a", name: "A", litresPerDay: 5 },
    { id: "b", name: "B", litresPerDay: 7 },
  ],
});

/** The site with the measures done, all of them. */
function after(...changes: Partial<SurveyMeasure>[]): Survey {
  const measures = changes.map((change, k) => ({ id: `m${k}`, name: `Measure ${k}`, ...change }));
  return applyMeasures(
    { ...site, measures },
    measures.map(({ id }) => id),
  );
}

describe("each kind of change", () => {
  test("mulch lies on the beds named and on no other", () => {
    const { beds } = after({ mulch: { beds: ["rose"], material: "bark", cover: 0.9, depth_mm: 60 } });
    expect(beds[0]!.mulch).toEqual({ material: "bark", cover: 0.9, depth_mm: 60 });
    expect(beds[1]).toBe(site.beds[1]);
  });

  test("other plants bring their leaf cover, or take over the bed's", () => {
    const plantings = [{ kind: "succulents" as const, thirst: "low" as const, share: 1 }];
    expect(after({ replant: { beds: ["rose"], plantings, leafCover: 0.4 } }).beds[0]).toMatchObject({
      plantings,
      leafCover: 0.4,
    });
    expect(after({ replant: { beds: ["rose"], plantings } }).beds[0]!.leafCover).toBe(0.6);
  });

  test("a new method drops the old efficiency, wetted share, uniformity and flow, and keeps the habit", () => {
    const { watering } = after({ changeWatering: { beds: ["rose"], method: "drip" } }).beds[0]!;
    expect(watering).toEqual({
      method: "drip",
      supply: "mains-only",
      runBy: "timer",
      habit: { minutes: 20, days: ["mon"], months: [7] },
    });
  });

  test("a change of watering without a method leaves the rest as it was", () => {
    const { watering } = after({ changeWatering: { beds: ["rose"], distributionUniformity: 0.75 } }).beds[0]!;
    expect(watering).toEqual({ ...site.beds[0]!.watering, distributionUniformity: 0.75 });
  });

  test("a tank put to use serves its beds, the mains give the rest; a bed on tanks alone stays so", () => {
    const { beds, tanks } = after({ useTank: { tank: "idle", beds: ["rose", "fern"] } });
    expect(tanks[1]!.inUse).toBe(true);
    expect(beds[0]!.watering).toMatchObject({ supply: "tank-then-mains", tank: "idle" });
    expect(beds[1]!.watering).toMatchObject({ supply: "tank-only", tank: "idle" });
  });

  test("a tank more, a tank of another size, a roof led to a tank, first flush, leaks mended", () => {
    const changed = after(
      { addTank: { id: "new", name: "New", capacity_L: 2000 } },
      { resizeTank: { tank: "old", capacity_L: 3000 } },
      { connectRoof: { roof: "hall", tank: "new", share: 1 } },
      { firstFlush: { roofs: ["hall"], firstFlush_mm: 0.3 } },
      { mendLeak: { leaks: ["a"] } },
    );
    expect(changed.tanks.map(({ id, capacity_L, level_L }) => [id, capacity_L, level_L])).toEqual([
      ["old", 3000, 3000],
      ["idle", 900, undefined],
      ["new", 2000, undefined],
    ]);
    expect(changed.roofs[0]).toMatchObject({ tank: "new", share: 1, firstFlush_mm: 0.3 });
    expect(changed.leaks!.map(({ id }) => id)).toEqual(["b"]);
  });

  test("a roof led elsewhere keeps its share where the measure names none", () => {
    expect(after({ connectRoof: { roof: "hall", tank: "idle" } }).roofs[0]!.share).toBe(0.5);
  });
});

describe("a measure whose tank is not there", () => {
  const toNew: Partial<SurveyMeasure>[] = [
    { connectRoof: { roof: "hall", tank: "new" } },
    { useTank: { tank: "new", beds: ["rose"] } },
    { resizeTank: { tank: "new", capacity_L: 100 } },
  ];

  test("does nothing, and does it once the tank comes", () => {
    const without = after(...toNew);
    expect(without.beds).toEqual(site.beds);
    expect(without.roofs).toEqual(site.roofs);
    expect(without.tanks).toEqual(site.tanks);
    const added = after(...toNew, { addTank: { id: "new", name: "New", capacity_L: 2000 } });
    expect(added.roofs[0]!.tank).toBe("new");
    expect(added.beds[0]!.watering.tank).toBe("new");
    expect(added.tanks[2]!.capacity_L).toBe(100);
  });

  test("changes the rest of a watering but not where its water comes from", () => {
    const { watering } = after({
      changeWatering: { beds: ["rose"], method: "drip", supply: "tank-only", tank: "new" },
    }).beds[0]!;
    expect(watering).toMatchObject({ method: "drip", supply: "mains-only" });
    expect(watering.tank).toBeUndefined();
  });
});

describe("a use that a measure moves on to a tank", () => {
  const toilets: SurveyMeasure = {
    id: "toilets",
    name: "Toilets from the tank",
    addDraw: { id: "flush", name: "Toilets", tank: "old", litresPerDay: 80 },
  };

  test("is mains water while the measure is chosen and not done", () => {
    const { grounds } = resolve({ ...site, measures: [toilets] });
    expect(grounds.mainsDraws!.map(({ id }) => id)).toEqual(["flush"]);
    expect(grounds.draws).toEqual([]);
  });

  test("draws on the tank once it is done, and counts nowhere where it is not chosen", () => {
    const done = resolve(applyMeasures({ ...site, measures: [toilets] }, ["toilets"])).grounds;
    expect(done.mainsDraws).toEqual([]);
    expect(done.draws.map(({ id }) => id)).toEqual(["flush"]);
    const { grounds } = resolve({ ...site, measures: [{ ...toilets, chosen: false }] });
    expect([...grounds.mainsDraws!, ...grounds.draws]).toEqual([]);
  });
});

test("a measure is chosen unless it says that it is not; applying changes nothing in the survey given", () => {
  const measures: SurveyMeasure[] = [
    { id: "a", name: "A", mendLeak: { leaks: ["a"] } },
    { id: "b", name: "B", chosen: false, mendLeak: { leaks: ["b"] } },
  ];
  const survey = { ...site, measures };
  const before = structuredClone(survey);
  expect(chosenMeasures(survey).map(({ id }) => id)).toEqual(["a"]);
  expect(applyMeasures(survey, ["a"]).measures!.map(({ id }) => id)).toEqual(["b"]);
  expect(survey).toEqual(before);
});
