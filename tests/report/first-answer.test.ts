import { describe, expect, test } from "vitest";
import { type FirstOutcome, firstRun } from "../../src/report/first-answer.ts";
import { readClimate } from "../../src/server/climate-file.ts";
import type { FirstEntries } from "../../src/survey/first/entries.ts";
import { weatherForSurvey } from "../../src/survey/normals/for-survey.ts";
import { firstNames } from "../../src/words/en/first.ts";
import { speakFirst } from "../../src/words/first-spoken.ts";
import { formatter } from "../../src/words/format.ts";

const place = { name: "An invented place", latitude: -34.9, longitude: 138.6, elevation_m: 50 };
const say = formatter("metric", "en");

const weather = weatherForSurvey({ site: place }, readClimate(), { years: 8 });
if ("faults" in weather) throw new Error(JSON.stringify(weather.faults));
const { record } = weather;

function outcomeOf(entries: FirstEntries, draws = 80, seed = 1): FirstOutcome {
  const run = firstRun({ entries, place, names: firstNames, record, seed });
  for (let i = 0; i < draws; i++) run.draw();
  return run.outcome();
}

const all: FirstEntries = {
  place,
  garden_m2: 300,
  thirst: "moderate",
  mulched: true,
  roof_m2: 200,
  tank: { capacity_L: 10_000, isThere: true },
};
const width = ({ need_kL, area_m2 }: FirstOutcome) => (need_kL.p90 - need_kL.p10) / area_m2;
const sentence = (outcome: FirstOutcome) => {
  const { first, headline, after } = speakFirst(outcome, say);
  const words = headline.map((part) => (typeof part === "string" ? part : part.figure)).join("");
  return [first ?? "", words, ...after].join(" ").replaceAll("\u00A0", " ");
};

describe("the answer is there from the first entry on", () => {
  test.each<[string, FirstEntries]>([
    ["place", { place }],
    ["size", { garden_m2: 300 }],
    ["thirst", { thirst: "low" }],
    ["mulch", { mulched: true }],
    ["roof", { roof_m2: 200 }],
    ["tank", { tank: { capacity_L: 5_000, isThere: false } }],
  ])("with its %s alone", (_, entries) => {
    const outcome = outcomeOf(entries, 24);
    expect(outcome.need_kL.p90).toBeGreaterThan(outcome.need_kL.p10);
    expect(sentence(outcome)).toMatch(
      /garden needs about [\d.,]+ kL a year, between [\d.,]+ and [\d.,]+ kL\./,
    );
    expect(outcome.today).toBeNull();
  });

  test("by the hundred square metres while the size is not said", () => {
    const open = outcomeOf({ place, thirst: "moderate" });
    const known = outcomeOf({ place, thirst: "moderate", garden_m2: 500 });
    expect(sentence(open)).toContain("Each 100 m² of garden");
    expect(known.need_kL.p50 / open.need_kL.p50).toBeCloseTo(5, 1);
  });
});

describe("the answer narrows", () => {
  test("with thirst, and with the place", () => {
    const nothing = outcomeOf({ garden_m2: 300 });
    const withThirst = outcomeOf({ garden_m2: 300, thirst: "moderate" });
    const withPlace = outcomeOf({ garden_m2: 300, thirst: "moderate", place });
    expect(width(withThirst)).toBeLessThan(0.8 * width(nothing));
    expect(width(withPlace)).toBeLessThan(width(withThirst));
  });

  test("the same entries give the same answer, another seed one that is near", () => {
    expect(outcomeOf(all, 40)).toEqual(outcomeOf(all, 40));
    const [one, other] = [outcomeOf(all, 120, 1), outcomeOf(all, 120, 2)];
    expect(Math.abs(one.need_kL.p50 / other.need_kL.p50 - 1)).toBeLessThan(0.1);
  });

  test("thirstier plants need more, a mulched garden no more than a bare one", () => {
    const need = (entries: FirstEntries) => outcomeOf({ ...all, ...entries }, 60).need_kL.p50;
    expect(need({ thirst: "low" })).toBeLessThan(need({ thirst: "moderate" }));
    expect(need({ thirst: "moderate" })).toBeLessThan(need({ thirst: "high" }));
    expect(need({ mulched: true })).toBeLessThanOrEqual(need({ mulched: false }));
  });
});

describe("roof and tank", () => {
  test("are claimed nothing of while neither was said", () => {
    expect(outcomeOf({ place, garden_m2: 300, thirst: "moderate" }, 16).brings_kL).toBeNull();
  });

  test("bring less than the roof sheds, and no more than is needed", () => {
    const { brings_kL, roof_kL, need_kL } = outcomeOf(all);
    expect(brings_kL!.p50).toBeGreaterThan(0);
    expect(brings_kL!.p90).toBeLessThan(roof_kL!.p90);
    expect(brings_kL!.p90).toBeLessThan(need_kL.p90);
  });

  test("a larger tank brings more; none brings nothing", () => {
    const brings = (capacity_L: number) =>
      outcomeOf({ ...all, tank: { capacity_L, isThere: false } }, 40).brings_kL?.p50 ?? 0;
    expect(brings(2_000)).toBeLessThan(brings(20_000));
    expect(brings(0)).toBe(0);
  });
});

describe("today's watering", () => {
  test("not known: no saving is claimed", () => {
    const outcome = outcomeOf({ ...all, today: { is: "unknown" } }, 24);
    expect(outcome.today).toBeNull();
    expect(sentence(outcome)).toContain("no saving is claimed");
    expect(sentence(outcome)).not.toContain("give up");
  });

  test("too much: mains water can be given up, all of it the tank's and what is beyond need", () => {
    const outcome = outcomeOf({ ...all, today: { is: "minutes", minutesPerWeek: 1500, season: "all-year" } });
    expect(outcome.today!.giveUp_kL.p10).toBeGreaterThan(0);
    expect(sentence(outcome)).toMatch(/could give up about [\d.,]+ kL of mains water a year/);
  });

  test("too little is said first, and a saving is never a bare negative", () => {
    const outcome = outcomeOf({ ...all, today: { is: "not-watered" } });
    expect(outcome.today!.beyond_kL.p90).toBeLessThan(0);
    expect(sentence(outcome)).toMatch(
      /^The garden gets less than it needs: about [\d.,]+ kL a year too little/,
    );
    expect(sentence(outcome)).toMatch(/would take about [\d.,]+ kL more mains water/);
    expect(sentence(outcome)).not.toMatch(/[-−]\d/);
  });
});

describe("what would narrow it most", () => {
  test("first the place, then the size, then what brings the width, then today's watering", () => {
    expect(outcomeOf({}, 8).lead).toMatchObject({ is: "entry", entry: "place" });
    expect(outcomeOf({ place }, 8).lead).toMatchObject({ is: "entry", entry: "garden" });
    expect(outcomeOf({ place, garden_m2: 300 }, 40).lead).toMatchObject({ is: "entry", entry: "thirst" });
    expect(outcomeOf(all, 8).lead).toMatchObject({ is: "entry", entry: "today" });
  });

  test("with all said, something to be measured: the hose, where minutes were told", () => {
    const today = { is: "minutes", minutesPerWeek: 600, season: "warm-half" } as const;
    expect(outcomeOf({ ...all, today }).lead).toMatchObject({ is: "measure", what: "flow" });
  });

  test("shares of the width are shares", () => {
    const { byUnknown } = outcomeOf(all);
    expect(byUnknown.every(({ share }) => share > 0 && share <= 1)).toBe(true);
    expect(byUnknown.reduce((sum, { share }) => sum + share, 0)).toBeLessThan(1.2);
  });
});
