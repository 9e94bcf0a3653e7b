import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { frameOf } from "../../src/engine/frame.ts";
import { bestFor, frontierOf, mostProven } from "../../src/engine/frontier.ts";
import { fillGaps } from "../../src/engine/weather/gaps.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { bestOrder } from "../../src/engine/year-order.ts";
import { valuerOf } from "../../src/report/plan-worth.ts";
import { measuresApart } from "../../src/survey/measures/apart.ts";
import { resolve } from "../../src/survey/resolve.ts";
import { asRead, plainRecord, siteWithMeasures } from "../helpers/sites.ts";

const record = fillGaps(plainRecord(2));

describe("the best set for every budget", () => {
  test("is what a search of all sets finds, on random sites with up to 12 measures of every kind", () => {
    fc.assert(
      fc.property(siteWithMeasures(), (site) => {
        const survey = asRead(site);
        const measures = survey.measures!;
        const weather = prepareWeather(record, resolve(survey).grounds.place);
        const valuer = valuerOf(survey, measures, frameOf([], weather));
        const costs = measures.map(({ cost }) => cost!);
        const apart = measuresApart(measures);
        const value = (set: Uint8Array) => valuer.saved_kL_year(set, "need");
        const { steps, proven } = frontierOf({ costs, apart }, value);
        expect(proven).toBe(true);
        expect(steps[0]!.cost).toBe(0);

        const all: { cost: number; value: number }[] = [];
        for (let mask = 0; mask < 2 ** measures.length; mask++) {
          const set = Uint8Array.from(measures, (_, k) => (mask >> k) & 1);
          if (apart.some(([a, b]) => set[a] === 1 && set[b] === 1)) continue;
          all.push({ cost: costs.reduce((sum, cost, k) => sum + cost * set[k]!, 0), value: value(set) });
        }
        for (const { cost: budget } of all) {
          const best = Math.max(...all.filter(({ cost }) => cost <= budget).map((step) => step.value));
          expect(bestFor(steps, budget).value).toBeCloseTo(best, 6);
        }
        for (const [k, step] of steps.entries()) {
          expect(value(step.set)).toBe(step.value);
          if (k > 0) expect(step.cost).toBeGreaterThan(steps[k - 1]!.cost);
          if (k > 0) expect(step.value).toBeGreaterThan(steps[k - 1]!.value);
        }
      }),
      { numRuns: 12 },
    );
  });

  test("takes no measure that adds nothing, and never two that exclude each other", () => {
    const weights = [5, 0, 4, 3];
    const { steps } = frontierOf({ costs: [10, 0, 10, 2], apart: [[0, 2]] }, (set) =>
      set.reduce((sum, one, k) => sum + one * weights[k]!, 0),
    );
    expect(steps.map(({ set, cost, value }) => [...set, cost, value])).toEqual([
      [0, 0, 0, 0, 0, 0],
      [0, 0, 0, 1, 2, 3],
      [1, 0, 0, 0, 10, 5],
      [1, 0, 0, 1, 12, 8],
    ]);
  });

  test("beyond what can be counted out is said not to be proven, and still rises with cost", () => {
    const many = Array.from({ length: mostProven + 5 }, (_, k) => k + 1);
    const { steps, proven } = frontierOf({ costs: many, apart: [] }, (set) =>
      Math.sqrt(set.reduce((sum, one, k) => sum + one * (k % 4), 0)),
    );
    expect(proven).toBe(false);
    for (let k = 1; k < steps.length; k++) expect(steps[k]!.value).toBeGreaterThan(steps[k - 1]!.value);
  });
});

describe("an order over years", () => {
  const game = fc.record({
    costs: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 5 }),
    budget: fc.integer({ min: 5, max: 40 }),
    values: fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 32, maxLength: 32 }),
  });
  const years = 12;

  /** Every order of every subset, year by year. */
  function bestByHand(costs: number[], budget: number, saved: (mask: number) => number): number {
    let best = saved(0) * years;
    const visit = (mask: number, order: number[]): void => {
      let sum = 0;
      for (let year = 1; year <= years; year++) {
        let spent = 0;
        let done = 0;
        for (const i of order) {
          spent += costs[i]!;
          if (spent > budget * year) break;
          done |= 1 << i;
        }
        sum += saved(done);
      }
      best = Math.max(best, sum);
      costs.forEach((_, i) => {
        if (!((mask >> i) & 1)) visit(mask | (1 << i), [...order, i]);
      });
    };
    visit(0, []);
    return best;
  }

  test("saves as much as the best of all orders", () => {
    fc.assert(
      fc.property(game, ({ costs, budget, values }) => {
        // more measures save no less: that is how a set of them behaves, near enough
        const saved = (mask: number) =>
          costs.reduce((sum, _, i) => sum + ((mask >> i) & 1 ? values[i]! : 0), 0) +
          (mask === 3 ? values[9]! : 0);
        const steps = bestOrder(costs, budget, years, saved)!;
        let total = 0;
        for (let year = 1; year <= years; year++)
          total += steps.findLast((step) => step.year <= year)?.saved ?? saved(0);
        expect(total).toBeCloseTo(bestByHand(costs, budget, saved), 6);
      }),
      { numRuns: 60 },
    );
  });

  test("keeps within what has come in by each year", () => {
    const steps = bestOrder([500, 1200, 300], 600, 20, (mask) => mask)!;
    for (const { year, spent } of steps) expect(spent).toBeLessThanOrEqual(600 * year);
    expect(steps.flatMap(({ measures }) => measures).toSorted()).toEqual([0, 1, 2]);
  });

  test("has nothing to say without a yearly budget", () => {
    expect(bestOrder([1], 0, 20, (mask) => mask)).toBeNull();
  });
});
