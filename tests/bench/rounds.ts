import { prepareGrounds } from "../../src/engine/prepare.ts";
import type { Job } from "../../src/engine/rounds/packing.ts";
import { packDay } from "../../src/engine/rounds/packing-day.ts";
import { roundsNeed, roundsTable } from "../../src/engine/rounds/table.ts";
import { fillGaps } from "../../src/engine/weather/gaps.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { resolve } from "../../src/survey/resolve.ts";
import { resolveRounds } from "../../src/survey/resolve-rounds.ts";
import { demoSurvey, thirtyYears } from "../helpers/demo-rounds.ts";
import { median_ms } from "./median.ts";

const beds = 40;

/** The demo's watered beds, over and over, on thirty years: the month table with its rerun. */
function table_ms(): number {
  const survey = demoSurvey((demo) => {
    const watered = demo.beds.filter(({ watering }) => watering.supply !== "none");
    demo.beds = Array.from({ length: beds }, (_, k) => ({
      ...structuredClone(watered[k % watered.length]!),
      id: `bed-${k}`,
      area_m2: 20 + k,
    }));
    demo.measures = [];
  });
  const filled = fillGaps(thirtyYears());
  const { grounds } = resolve(survey, Object.keys(filled.columns));
  const ready = prepareGrounds(grounds, prepareWeather(filled, grounds.place));
  const site = resolveRounds(survey);
  return median_ms(5, () => {
    roundsTable(roundsNeed(ready, site));
  });
}

/** Beds of all lengths on three taps of one line, packed into a day. */
function packing_ms(): number {
  const limits = [20, 16, 12, 30].map((flow_L_min, k) => ({ id: `tap-${k}`, flow_L_min }));
  const jobs = Array.from({ length: beds }, (_, k): Job => {
    const tap = k % 3;
    return {
      id: `bed-${k}`,
      runs_min: k % 4 === 0 ? [5, 5, 4] : [6 + (k % 7)],
      soak_min: 10,
      flow_L_min: 5 + (k % 5),
      uses: [tap, 3],
      byHand: k % 2 === 0,
      hoseOf: k % 2 === 0 ? tap : null,
      at_m: [(7 * k) % 50, (13 * k) % 40],
      stretches: [{ from: 240, to: 720 }],
    };
  });
  return median_ms(5, () => {
    packDay(jobs, limits);
  });
}

export function roundsTimes() {
  return { tableOf40_ms: table_ms(), packingOf40_ms: packing_ms() };
}
