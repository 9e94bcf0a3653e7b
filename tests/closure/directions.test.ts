import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { estimateRuns } from "../../src/engine/estimate.ts";
import type { Bed, Grounds } from "../../src/engine/grounds.ts";
import { bedRoots } from "../../src/engine/plants.ts";
import { totalAvailable_mm } from "../../src/engine/soil-water.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { plantKinds, plantRow, thirstClasses } from "../../src/tables/plants.ts";
import { anyGrounds } from "../helpers/arbitraries.ts";
import { recordAt } from "../helpers/worked.ts";

/**
 * Which way figures go, on a real record of four years. A bed is refilled whole, on the day it reaches its
 * trigger: a thriftier bed may be refilled the day before a storm that the thirstier one just waits for, and
 * lose that water to drainage. So one year can go the wrong way by a refill; the mean of a long run may by no
 * more than a refill a year, and its evapotranspiration by no more than rounding.
 */
const record = recordAt("tests/scenarios/seattle.csv");
const years = record.days / 365.25;

const oneBed = anyGrounds.filter(({ beds }) => beds.length > 0).map(({ beds }) => beds[0]!);

function need_mm(bed: Bed): { need_mm: number; refill_mm: number } {
  const watering = { ...bed.watering, supply: "mains-only" as const, allowedWeekdays: Array(7).fill(true) };
  const alone: Bed = {
    ...bed,
    watering: { ...watering, byHand: false, maxMinutes: Number.POSITIVE_INFINITY },
  };
  const { need } = estimateRuns(grounds([alone]), weather);
  const [run] = need.beds;
  return { need_mm: run!.need.net_mm, refill_mm: run!.ready.grown.available_mm };
}

const place = {
  latitude_deg: 47.45,
  longitude_deg: -122.31,
  elevation_m: 132,
  coastal: true,
  windHeight_m: 10,
};

const weather = prepareWeather(record, place);

/** The most that a day of the record can take from any surface. @source FAO-56 Eq. 72 */
const mostOfDay_mm = 1.2 * Math.max(...weather.et0_mm);

/**
 * Whether a bed's roots can lose a whole day's water before it is refilled. One that cannot is refilled day by day:
 * how much then evaporates from the wetted surface hangs on how the refills fall into days, which the method's step
 * of a day does not resolve, and a little more shade can bring more of them.
 */
function holdsADay(bed: Bed): boolean {
  const { rootDepth_m, depletionFraction } = bedRoots(bed);
  const { fieldCapacity, wiltingPoint } = bed.soil;
  return depletionFraction * totalAvailable_mm(fieldCapacity, wiltingPoint, rootDepth_m) >= mostOfDay_mm;
}

function grounds(beds: Bed[]): Grounds {
  return { place, beds, roofs: [], tanks: [], draws: [], leaks_L_day: 0, absences: [] };
}

function expectNoMore(less: Bed, more: Bed): void {
  const [a, b] = [need_mm(less), need_mm(more)];
  expect(a.need_mm).toBeLessThanOrEqual(b.need_mm + a.refill_mm * years);
}

describe("the need of a bed", () => {
  test("is never raised by more mulch", () => {
    fc.assert(
      fc.property(oneBed, fc.double({ min: 0, max: 1, noNaN: true }), (bed, cover) => {
        const mulch = { cut: 0.5, fullDepth_mm: 50, depth_mm: 60 };
        expectNoMore(
          { ...bed, mulch: { ...mulch, cover } },
          { ...bed, mulch: { ...mulch, cover: cover / 2 } },
        );
      }),
      { numRuns: 60 },
    );
  });

  test("is never raised by more shade", () => {
    fc.assert(
      fc.property(
        oneBed.filter(holdsADay),
        fc.double({ min: 0, max: 80, noNaN: true }),
        (bed, elevation_deg) => {
          const wall = { fromAzimuth_deg: 100, toAzimuth_deg: 260 };
          expectNoMore(
            { ...bed, obstructions: [{ ...wall, elevation_deg: elevation_deg + 10 }] },
            { ...bed, obstructions: [{ ...wall, elevation_deg }] },
          );
        },
      ),
      { numRuns: 40 },
    );
  });

  test.each(plantKinds.map(({ kind }) => kind))("is never lowered by a thirstier class of %s", (kind) => {
    const [bed] = fc.sample(oneBed, { numRuns: 1, seed: 4 });
    const needs = thirstClasses.map((thirst) => {
      const { plant, kcb } = plantRow(kind, thirst);
      const planting = {
        share: 1,
        kcbFull: kcb.middle,
        climateAdjusted: false,
        height_m: plant.height_m.middle,
        rootDepth_m: plant.rootDepth_m.middle,
        depletionFraction: plant.depletionFraction.middle,
        monthly: Array(12).fill(1),
        establishing: null,
      };
      return need_mm({
        ...bed!,
        plantings: [planting],
        rootDepth_m: null,
        depletionFraction: null,
        leafCover: Array(12).fill(0.8),
        obstructions: [],
        rainShare: 1,
        initial: null,
      }).need_mm;
    });
    expect(needs.toSorted((a, b) => a - b)).toEqual(needs);
  });
});

describe("mains water", () => {
  test("is never raised by a larger tank without top-up", () => {
    const withTank = anyGrounds.filter(({ tanks, beds }) => tanks.length > 0 && beds.length > 0);
    fc.assert(
      fc.property(withTank, fc.double({ min: 1, max: 5, noNaN: true }), (site, times) => {
        const plain = site.tanks.map((tank) => ({ ...tank, topUp: null, linked: [], level_L: null }));
        const beds = site.beds.map((bed) => ({ ...bed, watering: thenMains(bed) }));
        const mains_L = (factor: number) => {
          const tanks = plain.map((tank) => ({ ...tank, capacity_L: tank.capacity_L * factor }));
          const sized: Grounds = { ...site, place, beds, tanks };
          const { outcome } = estimateRuns(sized, weather);
          return outcome.mains.need_L;
        };
        const small = mains_L(1);
        expect(mains_L(times)).toBeLessThanOrEqual(small + 1e-6 * (1 + small));
      }),
      { numRuns: 60 },
    );
  });
});

/** A tank-only bed takes no mains water; its requests, which depend on the tank, would blur the comparison. */
function thenMains({ watering }: Bed): Bed["watering"] {
  return watering.supply === "tank-only" ? { ...watering, supply: "tank-then-mains" } : watering;
}
