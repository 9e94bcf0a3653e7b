import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { frameOf } from "../../src/engine/frame.ts";
import { enoughShare, enoughSize, limitOf, sizeCurve } from "../../src/engine/size-curve.ts";
import { tallyOf, total_L } from "../../src/engine/tally.ts";
import type { TankInputs } from "../../src/engine/tank-inputs.ts";
import { runTank } from "../../src/engine/tank-run.ts";
import { sumTank } from "../../src/engine/tank-sum.ts";
import { tankGroups, tankSeries } from "../../src/engine/tanks.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { place, tank } from "../helpers/plain-grounds.ts";
import { plainRecord } from "../helpers/sites.ts";
import { Inputs, published } from "../published/figures.ts";

const frame = frameOf([], prepareWeather(plainRecord(3), place));
const days = frame.weather.calendar.days;

/** Inflow and draw by day from a few numbers, with stretches of nothing in both. */
const flows = fc.record({
  wet: fc.integer({ min: 1, max: 15 }),
  most_L: fc.integer({ min: 0, max: 2000 }),
  draw_L: fc.integer({ min: 0, max: 400 }),
  idle: fc.integer({ min: 1, max: 120 }),
});
const series = ({
  wet,
  most_L,
  draw_L,
  idle,
}: {
  wet: number;
  most_L: number;
  draw_L: number;
  idle: number;
}) => ({
  inflow_L: Float64Array.from({ length: days }, (_, i) =>
    i % wet === 0 ? (most_L * ((i * 37) % 11)) / 10 : 0,
  ),
  draw_L: Float64Array.from({ length: days }, (_, i) => (Math.floor(i / idle) % 2 === 0 ? draw_L : 0)),
});

const anyTank = fc.record({
  capacity_L: fc.integer({ min: 0, max: 20_000 }),
  level_L: fc.option(fc.integer({ min: 0, max: 20_000 })),
  unusable_L: fc.integer({ min: 0, max: 300 }),
  inUse: fc.boolean(),
  rule: fc.constantFrom("after-spillage" as const, "before-spillage" as const),
  topUp: fc.option(fc.constantFrom({ belowShare: 0.2, toShare: 0.5 }, { belowShare: 0.05, toShare: 0.05 })),
});

function inputs(
  inflow_L: Float64Array,
  draw_L: Float64Array,
  more: Parameters<typeof tank>[1] = {},
): TankInputs {
  const claimants = () => [{ kind: "known" as const, asks_L: draw_L, restFromMains: true }];
  const draws = () => ({ before: claimants(), after: [] });
  return { group: tankGroups([tank("t", more)])[0]!, inflow_L, beds: [], draws, claimants, known_L: draw_L };
}

test("a tank's sums are those of its days", () => {
  fc.assert(
    fc.property(anyTank, flows, (more, flow) => {
      const { inflow_L, draw_L } = series(flow);
      const [group] = tankGroups([tank("t", more)]);
      const mains_L = new Float64Array(days);
      const claimants = [{ kind: "known" as const, asks_L: draw_L, restFromMains: true }];
      const run = runTank(group!, claimants, tankSeries(inflow_L), mains_L);
      const sum = sumTank(group!, inflow_L, draw_L, frame);
      const whole = (values: Float64Array) => values.reduce((a, b) => a + b, 0);
      tallyOf(mains_L, frame).forEach((litres, k) => {
        expect(sum.mains[k]).toBeCloseTo(litres, 5);
      });
      expect(sum.yield_L).toBeCloseTo(whole(run.series.yield_L), 5);
      expect(sum.spill_L).toBeCloseTo(whole(run.series.spill_L), 5);
      expect(sum.topUp_L).toBeCloseTo(whole(run.series.topUp_L), 5);
      expect([sum.drawDays, sum.shortDays]).toEqual([run.drawDays, run.shortDays]);
    }),
  );
});

describe("mains water that a tank takes the place of", () => {
  const rule = fc.constantFrom("after-spillage" as const, "before-spillage" as const);

  test("never falls with its size, where the mains do not fill it", () => {
    fc.assert(
      fc.property(flows, rule, (flow, by) => {
        const { inflow_L, draw_L } = series(flow);
        const sizes = [0, 50, 200, 500, 1000, 2000, 5000, 10_000, 50_000];
        const curve = sizeCurve(inputs(inflow_L, draw_L, { rule: by }), "t", sizes, frame);
        expect(total_L(curve[0]!.saved)).toBe(0);
        for (let k = 1; k < curve.length; k++)
          expect(total_L(curve[k]!.saved)).toBeGreaterThanOrEqual(total_L(curve[k - 1]!.saved) - 1e-6);
        expect(total_L(curve.at(-1)!.saved)).toBeLessThanOrEqual(draw_L.reduce((a, b) => a + b, 0) + 1e-6);
      }),
    );
  });

  test("under the same inflow and draw every day is the least of draw, inflow and half the tank", () => {
    // yield after spillage: what was drawn makes room for one day only, so a tank passes on half its size a day
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 0, max: 1500 }),
        (inflow, draw, capacity_L) => {
          const [inflow_L, draw_L] = [inflow, draw].map((litres) => new Float64Array(days).fill(litres));
          const [after] = sizeCurve(inputs(inflow_L!, draw_L!), "t", [capacity_L], frame);
          const daily = Math.min(draw, inflow, capacity_L / 2);
          expect(Math.abs(after!.yield_L - days * daily)).toBeLessThanOrEqual(capacity_L + 1e-6);
          const [before] = sizeCurve(
            inputs(inflow_L!, draw_L!, { rule: "before-spillage" }),
            "t",
            [capacity_L],
            frame,
          );
          expect(Math.abs(before!.yield_L - days * Math.min(draw, inflow))).toBeLessThanOrEqual(
            capacity_L + 1e-6,
          );
        },
      ),
    );
  });

  test("is zero with a tank of nothing, by the cautious rule", () => {
    const { inflow_L, draw_L } = series({ wet: 3, most_L: 500, draw_L: 100, idle: 30 });
    const [none] = sizeCurve(inputs(inflow_L, draw_L), "t", [0], frame);
    expect([none!.yield_L, none!.reliability]).toEqual([0, 0]);
  });
});

describe("storage and yield", () => {
  // the ten days of the two rules: yields of each day as worked by hand from the published rules
  test.each(["tank-yas-ten-days", "tank-ybs-ten-days"])("%s: a point of the size curve", (id) => {
    const { inputs: given, expected } = published.find((row) => row.id === id)!;
    const of = new Inputs(given);
    const ten = frameOf([], prepareWeather(tenDays(), place));
    const rule = id.includes("yas") ? ("after-spillage" as const) : ("before-spillage" as const);
    const [inflow_L, demand_L] = ["inflow_L", "demand_L"].map((key) => Float64Array.from(of.list(key)));
    const tankInputs = inputs(inflow_L!, demand_L!, {
      rule,
      level_L: of.n("start_L"),
      capacity_L: of.n("capacity_L"),
    });
    const [point] = sizeCurve(tankInputs, "t", [of.n("capacity_L")], ten);
    const yields = expected.yield_L as number[];
    const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
    expect(point!.yield_L).toBeCloseTo(sum(yields), 3);
    expect(point!.yield_L / sum([...demand_L!])).toBeCloseTo(expected.waterSavingEfficiency as number, 3);
    // without a tank the cautious rule gives nothing, so that all it yields is mains water not taken
    if (id === "tank-yas-ten-days") expect(total_L(point!.saved)).toBeCloseTo(sum(yields), 3);
    expect(point!.shortDays).toBe(yields.filter((litres, day) => litres < demand_L![day]!).length);
  });

  const tenDays = () => {
    const { firstDay, columns } = plainRecord(1);
    const cut = Object.entries(columns).map(([name, values]) => [name, values.slice(0, 10)] as const);
    return { firstDay, days: 10, columns: Object.fromEntries(cut) as typeof columns };
  };
});

describe("enough", () => {
  test("is the smallest size within 5 % of all that roof and draw allow", () => {
    fc.assert(
      fc.property(flows, (flow) => {
        const { inflow_L, draw_L } = series(flow);
        const of = inputs(inflow_L, draw_L);
        const { most_L, capacity_L } = enoughSize(of, "t", frame);
        if (most_L === 0) return;
        const [less, enough, vast] = sizeCurve(of, "t", [capacity_L - 100, capacity_L, 1e9], frame);
        expect(total_L(vast!.saved)).toBeCloseTo(most_L, 3);
        expect(total_L(enough!.saved)).toBeGreaterThanOrEqual(enoughShare * most_L - 1e-6);
        expect(total_L(less!.saved)).toBeLessThan(enoughShare * most_L);
      }),
      { numRuns: 50 },
    );
  });
});

describe("what holds a tank back, by the run that shows it", () => {
  const even = (litres: number) => new Float64Array(days).fill(litres);
  const lumpy = Float64Array.from({ length: days }, (_, i) => (i % 60 === 0 ? 60 * 90 : 0));

  test.each([
    ["the roof, where it brings less than is asked", even(50), even(100), 5000, "roof"],
    ["the demand, where all of it is met", even(200), even(20), 5000, "demand"],
    ["the tank, where rain comes seldom and in plenty", lumpy, even(80), 1500, "tank"],
    ["nothing, where nobody asks", even(50), even(0), 5000, "nothing-asked"],
  ])("%s", (_, inflow_L, draw_L, capacity_L, by) => {
    const of = inputs(inflow_L, draw_L, { capacity_L });
    expect(limitOf(of, "t", enoughSize(of, "t", frame).most_L, frame).by).toBe(by);
  });
});

test("60 sizes of 50 years come back, each with what it saves", () => {
  const long = frameOf([], prepareWeather(plainRecord(50, 1960), place));
  const inflow_L = long.weather.rain_mm.map((rain) => rain * 80);
  const of = inputs(
    inflow_L,
    inflow_L.map((_, i) => (i % 7 < 5 ? 150 : 0)),
  );
  const sizes = Array.from({ length: 60 }, (_, k) => 500 * k);
  expect(sizeCurve(of, "t", sizes, long)).toHaveLength(60);
});
