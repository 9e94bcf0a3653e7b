import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type FlowLimit,
  finishBound_min,
  isCheaper,
  type Job,
  type Packing,
  type PackingCost,
  PackingDraft,
} from "../../../src/engine/rounds/packing.ts";
import { mostSearched, packDay } from "../../../src/engine/rounds/packing-day.ts";
import { searchAll } from "../../../src/engine/rounds/packing-exact.ts";
import { packMany } from "../../../src/engine/rounds/packing-many.ts";

const job = (change: Partial<Job>): Job => ({
  id: "bed",
  runs_min: [30],
  soak_min: 0,
  flow_L_min: 10,
  uses: [0],
  byHand: true,
  hoseOf: 0,
  at_m: null,
  stretches: [{ from: 420, to: 960 }],
  ...change,
});

/** Every round worked down in time order, looked at one by one. */
function cheapestOfAll(jobs: readonly Job[], limits: readonly FlowLimit[]): PackingCost | null {
  const draft = new PackingDraft(jobs, limits);
  let best: PackingCost | null = null;
  const visit = (): void => {
    if (draft.isComplete) {
      if (!best || isCheaper(draft.cost, best)) best = draft.cost;
      return;
    }
    jobs.forEach((_, k) => {
      if (draft.isDone(k)) return;
      const start = draft.earliest(k);
      if (start === null) return;
      const undo = draft.add(k, start);
      visit();
      undo();
    });
  };
  visit();
  return best;
}

function expectKept({ runs }: Packing, jobs: readonly Job[], limits: readonly FlowLimit[]): void {
  for (const { job: k, run, from_min, to_min } of runs) {
    const { stretches, runs_min } = jobs[k]!;
    expect(to_min - from_min).toBe(runs_min[run]);
    expect(stretches.some(({ from, to }) => from_min >= from && to_min <= to)).toBe(true);
  }
  for (const at of runs.map(({ from_min }) => from_min))
    limits.forEach(({ flow_L_min }, use) => {
      const now = runs.filter(
        ({ job: k, from_min, to_min }) => from_min <= at && at < to_min && jobs[k]!.uses.includes(use),
      );
      const flow = now.reduce((sum, { job: k }) => sum + jobs[k]!.flow_L_min, 0);
      expect(flow).toBeLessThanOrEqual(flow_L_min + 1e-6);
    });
  jobs.forEach(({ runs_min, soak_min }, k) => {
    const mine = runs.filter((run) => run.job === k).sort((a, b) => a.run - b.run);
    expect(mine).toHaveLength(runs_min.length);
    mine.slice(1).forEach((run, n) => {
      expect(run.from_min).toBeGreaterThanOrEqual(mine[n]!.to_min + soak_min);
    });
  });
}

/** Rounds of so many beds: taps of one line, beds that may run together or not, cycles, forbidden hours, places. */
const rounds = (least: number, most: number, mostRuns: number) =>
  fc.record({
    limits: fc.constant([
      { id: "north-tap", flow_L_min: 20 },
      { id: "south-tap", flow_L_min: 14 },
      { id: "ring-main", flow_L_min: 24 },
    ]),
    jobs: fc.array(
      fc
        .record({
          runs_min: fc.array(fc.integer({ min: 5, max: 40 }), { minLength: 1, maxLength: mostRuns }),
          soak_min: fc.integer({ min: 5, max: 25 }),
          flow_L_min: fc.integer({ min: 4, max: 14 }),
          tap: fc.constantFrom(0, 1, null),
          byHand: fc.boolean(),
          x: fc.integer({ min: 0, max: 60 }),
          y: fc.integer({ min: 0, max: 60 }),
          morningOnly: fc.boolean(),
        })
        .map(
          ({ tap, x, y, morningOnly, byHand, ...rest }): Job => ({
            ...rest,
            id: "bed",
            byHand,
            uses: tap === null ? [] : [tap, 2],
            hoseOf: byHand ? tap : null,
            at_m: [x, y],
            stretches: morningOnly
              ? [
                  { from: 420, to: 600 },
                  { from: 1020, to: 1200 },
                ]
              : [{ from: 420, to: 1200 }],
          }),
        ),
      { minLength: least, maxLength: most },
    ),
  });

describe("the search over all rounds", () => {
  test("finds what looking at every one finds", () => {
    fc.assert(
      fc.property(rounds(1, 6, 1), ({ jobs, limits }) => {
        const { packing, proven } = searchAll(jobs, limits, packMany(jobs, limits));
        const best = cheapestOfAll(jobs, limits);
        expect(proven).toBe(true);
        expect(packing === null).toBe(best === null);
        if (!packing || !best) return;
        expect(packing.cost.finish_min).toBe(best.finish_min);
        expect(packing.cost.hoseMoves).toBe(best.hoseMoves);
        expect(packing.cost.walk_m).toBeCloseTo(best.walk_m, 6);
      }),
      { numRuns: 150 },
    );
  });

  test("and where beds have cycles with soaks between", () => {
    fc.assert(
      fc.property(rounds(1, 4, 2), ({ jobs, limits }) => {
        const { packing } = searchAll(jobs, limits, null);
        const best = cheapestOfAll(jobs, limits);
        expect(packing && { ...packing.cost, walk_m: packing.cost.walk_m.toFixed(6) }).toEqual(
          best && { ...(best as PackingCost), walk_m: (best as PackingCost).walk_m.toFixed(6) },
        );
      }),
      { numRuns: 60 },
    );
  });

  test("proves its round for ten beds", () => {
    fc.assert(
      fc.property(rounds(mostSearched, mostSearched, 1), ({ jobs, limits }) => {
        const day = packDay(jobs, limits);
        expect(day.proven).toBe(true);
        expectKept(day.packing, day.jobs, limits);
      }),
      { numRuns: 6 },
    );
  }, 120_000);
});

test("no tap or line runs beyond its flow, in rounds of up to forty beds", () => {
  fc.assert(
    fc.property(rounds(1, 8, 3), ({ jobs, limits }) => {
      const packing = packMany(jobs, limits);
      if (packing) expectKept(packing, jobs, limits);
    }),
    { numRuns: 400 },
  );
  fc.assert(
    fc.property(rounds(25, 40, 2), ({ jobs, limits }) => {
      const day = packDay(jobs, limits);
      expectKept(day.packing, day.jobs, limits);
      expect(day.packing.cost.finish_min).toBeGreaterThanOrEqual(day.bound_min);
    }),
    { numRuns: 5 },
  );
}, 120_000);

test("a long round ends close to a finish that none can better", () => {
  const limits = [{ id: "tap", flow_L_min: 20 }];
  const jobs = Array.from({ length: 40 }, (_, k) =>
    job({ id: `b${k}`, runs_min: [5 + (k % 7)], flow_L_min: 8 + (k % 3), at_m: [k, (k * 7) % 11] }),
  );
  const { packing, bound_min, left } = packDay(jobs, limits);
  expect(left).toEqual([]);
  expect(packing.cost.finish_min - 420).toBeLessThanOrEqual(1.15 * (bound_min - 420));
});

test("a soak of one bed is another's turn", () => {
  const limits = [{ id: "tap", flow_L_min: 15 }];
  const jobs = [
    job({ id: "a", runs_min: [10, 10], soak_min: 10 }),
    job({ id: "b", runs_min: [10, 10], soak_min: 10 }),
  ];
  const { packing, proven } = packDay(jobs, limits);
  expect(packing.cost.finish_min).toBe(460);
  expect(packing.cost.hoseMoves).toBe(4);
  expect(proven).toBe(true);
  expect(packing.cost.finish_min).toBe(finishBound_min(jobs, limits));
});

test("where a day is too short the last in the order falls out, and what would help is said", () => {
  const limits = [{ id: "tap", flow_L_min: 15 }];
  const hour = [{ from: 420, to: 480 }];
  const jobs = ["first", "second", "third"].map((id) => job({ id, runs_min: [25], stretches: hour }));
  const day = packDay(jobs, limits);
  expect(day.jobs.map(({ id }) => id)).toEqual(["first", "second"]);
  expect(day.left).toEqual(["third"]);
  expect(day.help).toEqual({ more_min: 15, busiest: "tap" });
});
