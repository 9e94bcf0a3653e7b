import { describe, expect, test } from "vitest";
import { prepareBed } from "../../src/engine/bed-day.ts";
import { blankDays, runBed } from "../../src/engine/bed-run.ts";
import type { Bed } from "../../src/engine/grounds.ts";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { type PlantKind, plantKinds } from "../../src/tables/plants.ts";

/**
 * A landscape plant factor is the share of ET0 that a stand of average density uses, evaporation included. It is
 * carried as the full-cover basal coefficient, since Kd takes off what Ke adds: each stand, as the `check` of the
 * plants table describes it, has to give its factor back.
 */
const days = 730;
const firstDay = dayNumber(2014, 1, 1);
const place = { latitude_deg: 38, longitude_deg: -121, elevation_m: 0, coastal: false, windHeight_m: 2 };

const weather = prepareWeather(
  {
    firstDay,
    days,
    columns: {
      rain_mm: new Float64Array(days),
      et0_mm: Float64Array.from({ length: days }, (_, i) => {
        const dayOfYear = (i % 365) + 1;
        return 3.5 - 2.5 * Math.cos((2 * Math.PI * (dayOfYear + 9)) / 365);
      }),
    },
  },
  place,
);

function stand({ height_m, rootDepth_m, depletionFraction, fcStandard }: PlantKind, kcbFull: number): Bed {
  return {
    id: "stand",
    area_m2: 100,
    plantings: [
      {
        share: 1,
        kcbFull,
        climateAdjusted: false,
        height_m: height_m.middle,
        rootDepth_m: rootDepth_m.middle,
        depletionFraction: depletionFraction.middle,
        monthly: Array(12).fill(1),
        establishing: null,
      },
    ],
    leafCover: Array(12).fill(fcStandard.middle),
    rootDepth_m: null,
    depletionFraction: null,
    mulch: null,
    soil: { fieldCapacity: 0.25, wiltingPoint: 0.095, tew_mm: 19, rew_mm: 9 },
    obstructions: [],
    rainShare: 1,
    watering: {
      drip: false,
      efficiency: 1,
      wettedShare: 1,
      flow_L_min: 100,
      maxMinutes: Number.POSITIVE_INFINITY,
      supply: "mains-only",
      tank: null,
      byHand: false,
      allowedWeekdays: Array(7).fill(true),
      habit: null,
    },
    initial: null,
  };
}

/** Share of ET0 that a stand uses from May to September of the second year. */
function shareOfEt0(bed: Bed): number {
  const keep = blankDays(days);
  runBed(prepareBed(bed, weather), new Uint8Array(days).fill(1), undefined, keep);
  const from = dayNumber(2015, 5, 1) - firstDay;
  const to = dayNumber(2015, 10, 1) - firstDay;
  const sum = (values: Float64Array) => values.subarray(from, to).reduce((total, value) => total + value, 0);
  return sum(keep.etc_mm) / sum(weather.et0_mm);
}

const rows = plantKinds.flatMap((plant) =>
  Object.entries(plant.kcbFull).flatMap(([thirst, kcb]) =>
    kcb?.basis === "plant-factor" ? [{ plant, kind: plant.kind, thirst, kcb }] : [],
  ),
);

test("35 rows rest on a plant factor, 105 values", () => {
  expect(rows).toHaveLength(35);
});

describe("a stand of average density uses its plant factor", () => {
  test.each(rows)("$kind, $thirst", ({ plant, kcb }) => {
    for (const factor of [kcb.low, kcb.middle, kcb.high])
      expect(Math.abs(shareOfEt0(stand(plant, factor)) - factor), `${factor}`).toBeLessThanOrEqual(0.012);
  });
});
