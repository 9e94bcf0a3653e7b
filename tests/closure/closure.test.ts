import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { freshState, runDays, slot } from "../../src/engine/bed-day.ts";
import { beginRecord, spinUpDays } from "../../src/engine/bed-run.ts";
import { estimateRuns, type Runs } from "../../src/engine/estimate.ts";
import type { Grounds } from "../../src/engine/grounds.ts";
import { startLevel_L } from "../../src/engine/tanks.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { anyGrounds, anyRecord } from "../helpers/arbitraries.ts";

const lengths = fc.oneof(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 364, max: 800 }));

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

function run(grounds: Grounds, record: WeatherRecord): Runs {
  return estimateRuns(grounds, prepareWeather(record, grounds.place), { days: true, shares: true });
}

describe("water closes", () => {
  test("each bed, every day, to 1e-9 mm", () => {
    fc.assert(
      fc.property(anyGrounds, anyRecord(lengths), (grounds, record) => {
        for (const { ready, days, suppliedByDay_L } of run(grounds, record).need.beds) {
          const { bed, rain_mm, available_mm } = ready.grown;
          const { rootDepletion_mm: after_mm, etc_mm, drainage_mm } = days!;
          let worst = 0;
          for (let i = 1; i < record.days; i++) {
            const net_mm = (suppliedByDay_L[i]! / bed.area_m2) * bed.watering.efficiency;
            const change_mm = after_mm[i - 1]! - after_mm[i]!;
            const left = rain_mm[i]! + net_mm - etc_mm[i]! - drainage_mm[i]! - change_mm;
            worst = Math.max(worst, Math.abs(left));
          }
          expect(worst).toBeLessThanOrEqual(1e-9);
          expect(Math.min(...after_mm)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...after_mm)).toBeLessThanOrEqual(available_mm);
        }
      }),
      { numRuns: 150 },
    );
  });

  test("each tank, every day, to 1e-6 L, and never above its rim or below its outlet", () => {
    fc.assert(
      fc.property(anyGrounds, anyRecord(lengths), (grounds, record) => {
        const { ready, need, today } = run(grounds, record);
        for (const { tanks } of [need, today])
          tanks.forEach(({ series }, k) => {
            const { group } = ready.tanks[k]!;
            const { inflow_L, topUp_L, yield_L, spill_L, level_L, draw_L } = series;
            let worst = 0;
            for (let i = 1; i < record.days; i++) {
              const change_L = level_L[i]! - level_L[i - 1]!;
              const left = inflow_L[i]! + topUp_L[i]! - yield_L[i]! - spill_L[i]! - change_L;
              worst = Math.max(worst, Math.abs(left));
            }
            expect(worst).toBeLessThanOrEqual(1e-6);
            expect(yield_L.every((litres, i) => litres <= draw_L[i]!)).toBe(true);
            expect(spill_L.every((litres) => litres >= 0)).toBe(true);
            if (!group.inUse || group.unusable_L > group.capacity_L) return;
            expect(level_L.every((litres) => litres >= group.unusable_L - 1e-6)).toBe(true);
            expect(level_L.every((litres) => litres <= group.capacity_L + 1e-6)).toBe(true);
          });
      }),
      { numRuns: 150 },
    );
  });

  test("what a tank gives is what those who ask it get, every day, and no one gets more than it asks for", () => {
    fc.assert(
      fc.property(anyGrounds, anyRecord(lengths), (grounds, record) => {
        const { ready, need, today, outcome } = run(grounds, record);
        for (const { tanks, shares } of [need, today])
          tanks.forEach(({ series: { yield_L } }, t) => {
            const { before_L, beds_L, after_L } = shares![t]!;
            const got = [...before_L, ...beds_L, ...after_L];
            yield_L.forEach((litres, i) => {
              const parts = got.reduce((sum, of) => sum + of[i]!, 0);
              if (!(Math.abs(parts - litres) <= 1e-6)) expect(parts).toBe(litres);
            });
            ready.tanks[t]!.before.forEach(({ asks_L }, k) => {
              expect(asks_L.every((asks, i) => before_L[k]![i]! <= asks)).toBe(true);
            });
          });
        const fromTanks = outcome.beds.flatMap(({ fromTankByMonth_L }) => [...fromTankByMonth_L!]);
        const toBeds = need.shares!.flatMap(({ beds_L }) => beds_L.flatMap((of) => [...of]));
        expect(total(fromTanks)).toBeCloseTo(total(toBeds), 3);
      }),
      { numRuns: 100 },
    );
  });

  test("day 1 too: from the spun-up or surveyed state", () => {
    fc.assert(
      fc.property(anyGrounds, anyRecord(lengths), (grounds, record) => {
        const { ready, need } = run(grounds, record);
        need.tanks.forEach(({ series }, k) => {
          const { group } = ready.tanks[k]!;
          if (!group.inUse || (record.days >= spinUpDays && group.surveyed_L === null)) return;
          const start = startLevel_L(group, null) + group.unusable_L;
          const left =
            start +
            series.inflow_L[0]! +
            series.topUp_L[0]! -
            series.yield_L[0]! -
            series.spill_L[0]! -
            series.level_L[0]!;
          expect(Math.abs(left)).toBeLessThanOrEqual(1e-6);
        });
        for (const { ready: bed, days, suppliedByDay_L } of need.beds) {
          if (bed.grown.bed.watering.supply === "tank-only") continue;
          const state = freshState();
          const net_mm = new Float64Array(record.days);
          const open = bed.grown.bed.watering.supply === "none" ? null : bed.open;
          if (record.days >= spinUpDays) runDays(bed.grown, state, net_mm, open, 0, spinUpDays, null);
          beginRecord(bed.grown, state);
          const before = state[slot.rootDepletion]!;
          const first_mm = (suppliedByDay_L[0]! / bed.grown.bed.area_m2) * bed.grown.bed.watering.efficiency;
          const left =
            bed.grown.rain_mm[0]! +
            first_mm -
            days!.etc_mm[0]! -
            days!.drainage_mm[0]! -
            (before - days!.rootDepletion_mm[0]!);
          expect(Math.abs(left)).toBeLessThanOrEqual(1e-9);
        }
      }),
      { numRuns: 100 },
    );
  });

  test("100 years, and no figure is ever other than a number", () => {
    fc.assert(
      fc.property(anyGrounds, anyRecord(fc.constant(36_525)), (grounds, record) => {
        const { outcome } = run(grounds, record);
        const figures = JSON.stringify(outcome, (_, value) => {
          if (value instanceof Float64Array)
            return value.every(Number.isFinite) ? "numbers" : "not all numbers";
          return typeof value === "number" && !Number.isFinite(value) ? "not a number" : value;
        });
        expect(figures).not.toContain("not a");
        expect(figures).not.toContain("not all");
      }),
      { numRuns: 8 },
    );
  });
});
