import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { dealBeds } from "../../../components/walk/deal.ts";
import { Drafts, emptyDraft } from "../../../components/walk/draft.ts";
import { keepTaken } from "../../../components/walk/keep.ts";
import { howComplete } from "../../../components/walk/missing.ts";
import { mostWanted, shortWalk, shortWalk_min } from "../../../components/walk/order.ts";
import { stopSorts } from "../../../components/walk/stop-sorts.ts";
import { stopsOf } from "../../../components/walk/stops.ts";
import { PassingWalkStore } from "../../../components/walk/store.ts";
import {
  clockText,
  elapsed_ms,
  halted,
  secondsText,
  started,
  stopped,
} from "../../../components/walk/watch.ts";
import { guessesOf, worthOf } from "../../../components/walk/worth.ts";
import { wayOf } from "../../../src/survey/measuring/ways.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { stopWords } from "../../../src/words/en/walk-stops.ts";
import { root } from "../../structure/sources.ts";

const school = JSON.parse(readFileSync(join(root, "demo/school.survey.json"), "utf8")) as Survey;

describe("stops", () => {
  const stops = stopsOf(school);

  test("each has a name of its own, words, and ways that there are", () => {
    expect(new Set(stops.map(({ key }) => key)).size).toBe(stops.length);
    for (const [kind, { ways }] of Object.entries(stopSorts)) {
      expect(stopWords[kind], kind).toBeDefined();
      expect(
        ways.filter((way) => !wayOf(way)),
        kind,
      ).toEqual([]);
    }
  });

  test("a hose from a tank is asked at two levels, a tap of the mains is not", () => {
    const flows = stops.filter(({ list }) => list === "taps").map(({ kind }) => kind);
    expect(flows).toEqual(["tap-flow", "tap-flow", "hose-flow"]);
  });

  test("a bed that lives on rain is not asked for its watering", () => {
    const kinds = stops.filter(({ id }) => id === "bank").map(({ kind }) => kind);
    expect(kinds).not.toContain("flow");
    expect(kinds).toContain("shade");
  });

  test("what is missing leads to the stop that fills it", () => {
    const { missing } = howComplete(school);
    const cans = missing.filter(({ code }) => code === "catch-cans").map(({ stop }) => stop?.kind);
    expect(cans.every((kind) => kind === "cans")).toBe(true);
    const lost = missing.filter(({ at, stop }) => /^(beds|roofs|tanks|taps)/.test(at) && stop === null);
    expect(lost).toEqual([]);
  });
});

describe("the short walk", () => {
  const stops = stopsOf(school);
  const minutes = (of: typeof stops) => of.reduce((sum, stop) => sum + stop.minutes, 0);

  test("is no longer than said, and leaves no time in which another stop would fit", () => {
    const walk = shortWalk(stops);
    expect(minutes(walk)).toBeLessThanOrEqual(shortWalk_min);
    const left = shortWalk_min - minutes(walk);
    expect(stops.filter((stop) => !walk.includes(stop)).every((stop) => stop.minutes > left)).toBe(true);
  });

  test("takes what does most to the answer a minute", () => {
    const weights = [
      { at: "beds[8].soil", share: 0 },
      { at: "beds[8].leafCover", share: 0.6 },
      { at: "beds[0].watering.flow_L_min", share: 0.3 },
    ];
    const walk = shortWalk(stops, weights).map(({ key }) => key);
    expect(walk).toContain("beds/bank/cover");
    expect(walk).toContain("beds/oval/flow");
    expect(mostWanted(stops, weights)?.key).toBe("beds/bank/cover");
  });

  test("keeps the order of the walk", () => {
    const walk = shortWalk(stops);
    expect(walk).toEqual(stops.filter((stop) => walk.includes(stop)));
  });
});

describe("the stopwatch", () => {
  test("counts by the clock, whatever happened between", () => {
    const watch = started(stopped, 1_000);
    expect(elapsed_ms(watch, 3_601_000)).toBe(3_600_000);
    const rest = halted(watch, 31_500);
    expect(elapsed_ms(rest, 99_000)).toBe(30_500);
    expect(elapsed_ms(started(rest, 100_000), 101_000)).toBe(31_500);
  });

  test("a clock that was set back counts nothing", () => {
    expect(elapsed_ms(started(stopped, 5_000), 1_000)).toBe(0);
  });

  test("is written in tenths", () => {
    expect([clockText(65_320), secondsText(65_320), clockText(59_960)]).toEqual(["1:05.3", "65.3", "1:00.0"]);
  });
});

describe("a group's draft", () => {
  test("is there again under the same nickname, and apart from another group's", () => {
    const store = new PassingWalkStore();
    const drafts = new Drafts(store, "site");
    drafts.keep({ ...emptyDraft("Teasel"), passed: ["a"] });
    drafts.keep({ ...emptyDraft("Sorrel"), passed: ["b"] });
    expect(new Drafts(store, "site").last()).toBe("Sorrel");
    expect(new Drafts(store, "site").read("teasel")?.passed).toEqual(["a"]);
    expect(new Drafts(store, "other").read("Teasel")).toBeNull();
    drafts.handOver();
    expect(drafts.last()).toBeNull();
    expect(drafts.read("Sorrel")?.passed).toEqual(["b"]);
  });
});

describe("dealing out beds", () => {
  test("every bed has a group, the larger half two of them", () => {
    const hands = dealBeds(school, 4).flat();
    const counts = school.beds.map(({ name }) => hands.filter((one) => one === name).length);
    expect(Math.min(...counts)).toBe(1);
    expect(counts.filter((n) => n === 2)).toHaveLength(Math.ceil(school.beds.length / 2));
  });

  test("one group has all of them once", () => {
    expect(dealBeds(school, 1)[0]).toHaveLength(school.beds.length);
  });
});

test("what measuring was worth: the guess's litres against the reading's, and what the reading leaves open", async () => {
  const before = { ...structuredClone(school), found: [] };
  const stop = stopsOf(before).find(({ key }) => key === "beds/front/area")!;
  const { at, also } = stop;
  const survey = keepTaken(before, {
    ...{ at, also, how: "rectangle", readings: [16, 4], group: "g1", when: "2025-03-02", guess: 50 },
  })!;
  // 400 L a square metre
  const weigh = async ({ beds }: Survey) => ({
    beds: new Map(beds.map(({ id, area_m2 }) => [id, 400 * area_m2])),
    need_kL_year: 0,
  });
  const [worth] = await worthOf(survey, guessesOf(survey, "g1"), weigh);
  expect(worth!.off_L).toBeCloseTo(400 * (64 - 50), 6);
  expect(worth!.left_L).toBeCloseTo(400 * survey.found![0]!.standardError!, 6);
  expect(guessesOf(survey, "g2")).toEqual([]);
});
