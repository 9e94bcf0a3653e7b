/** Times the search of sets, the draws and the size curve on the demo, whose water is worked out once before. */

import { frameOf } from "../../src/engine/frame.ts";
import { frontierOf } from "../../src/engine/frontier.ts";
import { sizeCurve } from "../../src/engine/size-curve.ts";
import { tankGroups } from "../../src/engine/tanks.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { valuerOf } from "../../src/report/plan-worth.ts";
import { planSpread } from "../../src/report/spread.ts";
import { workOut } from "../../src/report/work-out.ts";
import type { Survey, SurveyMeasure } from "../../src/survey/survey.ts";
import { place, tank } from "../helpers/plain-grounds.ts";
import { recordAt, surveyOf, textOf } from "../helpers/worked.ts";
import { fiftyYears_days, longRecord } from "./grounds.ts";
import { median_ms } from "./median.ts";

/** Measures beside the demo's own, so that fifteen do not exclude each other. */
const beside: SurveyMeasure[] = [
  { id: "b1", name: "b1", cost: 300, mulch: { beds: ["quad"], material: "bark", cover: 0.5, depth_mm: 50 } },
  { id: "b2", name: "b2", cost: 900, changeWatering: { beds: ["oval"], distributionUniformity: 0.75 } },
  { id: "b3", name: "b3", cost: 100, firstFlush: { roofs: ["hall-roof"], firstFlush_mm: 0.2 } },
  { id: "b4", name: "b4", cost: 100, firstFlush: { roofs: ["class-roof"], firstFlush_mm: 0.2 } },
  {
    id: "b5",
    name: "b5",
    cost: 800,
    addTank: { id: "b5t", name: "b5", capacity_L: 9000, linked: ["yard-tank"] },
  },
  {
    id: "b6",
    name: "b6",
    cost: 700,
    addDraw: { id: "b6d", name: "b6", tank: "yard-tank", litresPerDay: 100 },
  },
  { id: "b7", name: "b7", cost: 300, changeWatering: { beds: ["front"], method: "drip", flow_L_min: 9 } },
  { id: "b8", name: "b8", cost: 300, changeWatering: { beds: ["senses"], method: "drip", flow_L_min: 9 } },
  { id: "b9", name: "b9", cost: 300, changeWatering: { beds: ["cloister"], method: "drip", flow_L_min: 9 } },
];

export interface DecisionTimes {
  frontierOf10_ms: number;
  frontierOf15_ms: number;
  thousandDraws_ms: number;
  sixtySizes_ms: number;
}

export function decisionTimes(): DecisionTimes {
  const demo = surveyOf(textOf("demo/school.survey.json"));
  const own = (demo.measures ?? []).filter(({ id }) => id !== "big-yard-tank");
  const survey: Survey = { ...demo, measures: [...own, ...beside] };
  const worked = workOut(survey, recordAt("demo/seattle.csv"));
  const frontier_ms = (count: number) =>
    median_ms(3, () => {
      const measures = survey.measures!.slice(0, count);
      const valuer = valuerOf(survey, measures, worked.ready.frame);
      const costs = measures.map(({ cost = 100 }) => cost);
      frontierOf({ costs, apart: [] }, (set) => valuer.saved_kL_year(set, "need"));
    });
  return {
    frontierOf10_ms: frontier_ms(10),
    frontierOf15_ms: frontier_ms(15),
    thousandDraws_ms: median_ms(1, () => planSpread(workOut(demo, recordAt("demo/seattle.csv")), 1000, 1)),
    sixtySizes_ms: sixtySizes_ms(),
  };
}

function sixtySizes_ms(): number {
  const frame = frameOf([], prepareWeather(longRecord(fiftyYears_days), place));
  const inflow_L = frame.weather.rain_mm.map((rain) => rain * 80);
  const asks_L = inflow_L.map((_, i) => (i % 7 < 5 ? 150 : 0));
  const claimants = () => [{ kind: "known" as const, asks_L, restFromMains: true }];
  const inputs = {
    group: tankGroups([tank("t")])[0]!,
    inflow_L,
    beds: [],
    draws: () => ({ before: claimants(), after: [] }),
    claimants,
    known_L: asks_L,
  };
  const sizes = Array.from({ length: 60 }, (_, k) => 500 * k);
  return median_ms(30, () => sizeCurve(inputs, "t", sizes, frame));
}
