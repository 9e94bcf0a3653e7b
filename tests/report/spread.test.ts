import { describe, expect, test } from "vitest";
import { frameOf } from "../../src/engine/frame.ts";
import { namedStreams } from "../../src/engine/named-streams.ts";
import { chanceBetter, sharesOfWidth, weatherUnknown } from "../../src/engine/spread.ts";
import { byYear_L } from "../../src/engine/tally.ts";
import { fillGaps } from "../../src/engine/weather/gaps.ts";
import { randomStream } from "../../src/engine/weather/rng.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { valuerOf } from "../../src/report/plan-worth.ts";
import { reportOf } from "../../src/report/report.ts";
import { reportSchema } from "../../src/report/schema.ts";
import { planSpread, spreadRun } from "../../src/report/spread.ts";
import { workOut } from "../../src/report/work-out.ts";
import { resolve } from "../../src/survey/resolve.ts";
import { drawsOf } from "../../src/survey/sample.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { asRead, plainRecord } from "../helpers/sites.ts";

const site: Survey = asRead({
  format: "grounds-survey",
  version: 1,
  site: { name: "Invented place", latitude: -34, longitude: 151 },
  beds: [
    {
      id: "a",
      name: "A",
      area_m2: 60,
      plantings: [{ kind: "perennials", thirst: "moderate", share: 1 }],
      leafCover: 0.7,
      watering: {
        method: "spray",
        supply: "mains-only",
        habit: { minutes: 15, days: ["mon", "wed", "fri"], months: [10, 11, 12, 1, 2, 3] },
      },
    },
  ],
  roofs: [],
  tanks: [],
  measures: [
    {
      id: "bark",
      name: "Bark",
      cost: 300,
      mulch: { beds: ["a"], material: "bark", cover: 0.9, depth_mm: 60 },
    },
    { id: "drip", name: "Drip", cost: 500, changeWatering: { beds: ["a"], method: "drip" } },
  ],
});
const frame = frameOf([], prepareWeather(fillGaps(plainRecord(2)), resolve(site).grounds.place));
const measures = site.measures!;
const plan = Uint8Array.of(1, 0);

const both = [
  { name: "bark", set: Uint8Array.of(1, 0), worth: null },
  { name: "drip", set: Uint8Array.of(0, 1), worth: null },
];

function run(seed: number, draws: number, rivals = both) {
  const spread = spreadRun({ survey: site, measures, plan, rivals, tariff: null, frame, seed });
  for (let k = 0; k < draws; k++) spread.draw();
  return spread.outcome();
}

describe("how sure", () => {
  // A test of the code, not of the ranges: the truth is drawn from the same ranges as the interval.
  test("an 80 % interval holds the truth of 72 to 88 % of 200 places", () => {
    let held = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const { giveUp_kL_year } = run(seed, 40, []);
      const truth = drawsOf(namedStreams(900_000 + seed));
      truth.next();
      const valuer = valuerOf(site, measures, frame, truth.pick);
      const [today, planned] = [valuer.today, valuer.evaluator.mains(plan, "need")].map(byYear_L);
      const year = seed % frame.years.length;
      const kL = (today![year]! - planned![year]!) / 1000;
      if (kL >= giveUp_kL_year!.p10 && kL <= giveUp_kL_year!.p90) held++;
    }
    expect(held).toBeGreaterThanOrEqual(144);
    expect(held).toBeLessThanOrEqual(176);
  }, 120_000);

  test("the same seed gives the same bytes, and partial results are those of fewer draws", () => {
    expect(JSON.stringify(run(5, 30))).toBe(JSON.stringify(run(5, 30)));
    expect(run(5, 30)).not.toEqual(run(6, 30));
    expect(run(5, 30).draws).toBe(30);
  });

  test("names what the width comes from: flow not measured, the years, and no more than the whole", () => {
    const { byUnknown } = run(2, 400);
    expect(byUnknown[0]!.at).toBe("beds[0].watering.flow_L_min");
    expect(byUnknown.some(({ at }) => at === weatherUnknown)).toBe(true);
    const sum = byUnknown.reduce((total, { share }) => total + share, 0);
    expect(sum).toBeGreaterThan(0.85);
    expect(sum).toBeLessThan(1.1);
  });

  test("a flow measured takes its share of the width away", () => {
    const measured = structuredClone(site);
    measured.beds[0]!.watering.flow_L_min = 40;
    const spread = spreadRun({ survey: measured, measures, plan, rivals: [], tariff: null, frame, seed: 2 });
    for (let k = 0; k < 200; k++) spread.draw();
    const after = spread.outcome();
    const before = run(2, 200);
    const width = ({ giveUp_kL_year }: typeof after) => giveUp_kL_year!.p90 - giveUp_kL_year!.p10;
    expect(width(after)).toBeLessThan(0.8 * width(before));
    expect(after.byUnknown.map(({ at }) => at)).not.toContain("beds[0].watering.flow_L_min");
  });

  test("the chance that one set beats another uses the same draws for both", () => {
    const { chance, rivals } = run(3, 100);
    expect(chance[0]![1]! + chance[1]![0]!).toBeCloseTo(1, 12);
    // drip against bark: whichever is better in the middle is better more often than not
    const better = rivals[1]!.saved_kL_year!.p50 > rivals[0]!.saved_kL_year!.p50 ? 1 : 0;
    expect(chance[better]![1 - better]!).toBeGreaterThan(0.5);
  });
});

describe("the report", () => {
  test("carries the spread of the plan where draws were asked for, and none where not", () => {
    const worked = workOut(site, plainRecord(2));
    const say = ({ code }: { code: string }) => code;
    expect(reportOf(worked, say).spread).toBeUndefined();
    const report = reportOf(worked, say, planSpread(worked, 25, 9));
    reportSchema.parse(report);
    expect(report.spread).toMatchObject({ draws: 25, seed: 9 });
    expect(report.spread!.giveUp_kL_year.p10!).toBeLessThan(report.spread!.giveUp_kL_year.p90!);
  });
});

describe("shares of the width", () => {
  const rng = randomStream(11);
  const uniform = (n: number) => Float64Array.from({ length: n }, () => rng.uniform());

  test("of a sum of two unknowns and the years are those of their variances", () => {
    const [a, b, idle] = [uniform(4000), uniform(4000), uniform(4000)];
    const years = [-1, 0, 1];
    // variances: 12² / 12 = 12, 6² / 12 = 3, and of the years 2/3
    const byDraw = Array.from(a, (x, k) => years.map((year) => 12 * x + 6 * b[k]! + year));
    const shares = new Map(
      sharesOfWidth({ byDraw }, new Map(Object.entries({ a, b, idle }))).map(({ at, share }) => [at, share]),
    );
    const all = 12 + 3 + 2 / 3;
    expect(shares.get("a")).toBeCloseTo(12 / all, 1);
    expect(shares.get("b")).toBeCloseTo(3 / all, 1);
    expect(shares.get(weatherUnknown)).toBeCloseTo(2 / 3 / all, 2);
    expect(shares.get("idle") ?? 0).toBeLessThan(0.005);
  });

  test("of nothing that varies are none", () => {
    expect(sharesOfWidth({ byDraw: [[1], [1], [1]] }, new Map([["a", uniform(3)]]))).toEqual([]);
  });
});

test("a tie is half a win", () => {
  expect(chanceBetter([1, 2, 3, 4], [1, 1, 4, 3])).toBe((0.5 + 1 + 0 + 1) / 4);
});
