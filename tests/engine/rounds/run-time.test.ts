import { expect, test } from "vitest";
import type { Bed, Watering } from "../../../src/engine/grounds.ts";
import {
  cycleMinutes,
  elapsed_min,
  minutesFor,
  minutesWithin,
  netOf_mm,
  rateWhereItFalls_mm_h,
  runTime,
  wettedDepth_m,
} from "../../../src/engine/rounds/run-time.ts";
import { efficiencyFromUniformity } from "../../../src/engine/uniformity.ts";
import { fromSI, toSI } from "../../../src/units.ts";
import { published } from "../../published/figures.ts";

interface Example {
  inputs: Record<string, number>;
  expected: Record<string, number>;
  tolerance: Record<string, number>;
}

function example(id: string): Example {
  return published.find((entry) => entry.id === id) as unknown as Example;
}

function bedOf(area_m2: number, watering: Partial<Watering>): Bed {
  const known = { drip: false, efficiency: 1, wettedShare: 1, flow_L_min: 10, ...watering };
  return { area_m2, watering: known } as Bed;
}

test("the rate at which water falls is the published one, in US units too", () => {
  const { inputs, expected, tolerance } = example("precipitation-rate-us-units");
  const flow_L_min = toSI(inputs.flow_gpm!, "gal/min", "L/min")!;
  const bed = bedOf(toSI(inputs.area_ft2!, "ft²", "m²")!, { flow_L_min });
  const rate = fromSI(rateWhereItFalls_mm_h(bed, 1000, flow_L_min), "mm/h", "in/h")!;
  expect(Math.abs(rate - expected.rate_in_h!)).toBeLessThanOrEqual(tolerance.rate_in_h!);
});

test("a watering too fast for its soil is split as the published rule says", () => {
  const { inputs, expected } = example("cycle-and-soak-rule");
  const area_m2 = 60;
  const flow_L_min = (inputs.rate_mm_h! * area_m2) / 60;
  const bed = bedOf(area_m2, { flow_L_min });
  const soil = { intake_mm_h: inputs.intake_mm_h!, surfaceStorage_mm: inputs.surfaceStorage_mm! };
  const run = runTime(bed, soil, minutesFor(bed, inputs.depth_mm!));
  expect(run.cycles).toBe(expected.cycles);
  expect(minutesWithin(bed, soil, 1)).toBeCloseTo(expected.maxCycle_min!, 3);
  expect(run.net_mm / run.cycles).toBeCloseTo(expected.depthPerCycle_mm!, 3);
  expect(run.soak_min).toBe(18);
});

test("the run-time multiplier of a catch-can test lengthens the minutes as published", () => {
  const entry = published.find(({ id }) => id === "run-time-multiplier-from-du")!;
  const uniformity = entry.inputs.duLq as number[];
  const multiplier = entry.expected.multiplier as number[];
  const even = minutesFor(bedOf(100, {}), 12);
  uniformity.forEach((du, k) => {
    const bed = bedOf(100, { efficiency: efficiencyFromUniformity(du) });
    expect(Math.abs(minutesFor(bed, 12) / even - multiplier[k]!)).toBeLessThanOrEqual(0.001);
  });
});

test("depth, area, flow and efficiency give minutes, and minutes the depth back", () => {
  const bed = bedOf(50, { flow_L_min: 20, efficiency: 0.8 });
  expect(minutesFor(bed, 8)).toBeCloseTo(25, 12);
  expect(netOf_mm(bed, 25)).toBeCloseTo(8, 12);
  expect(runTime(bed, { intake_mm_h: 100, surfaceStorage_mm: 3 }, 25)).toEqual({
    minutes: 25,
    litres: 500,
    net_mm: 8,
    cycles: 1,
    soak_min: 0,
  });
});

test("a dripper’s water spreads over the bed, and is split where even that is too fast", () => {
  const drip = { drip: true, wettedShare: 0.35, flow_L_min: 8 };
  expect(rateWhereItFalls_mm_h(bedOf(75, drip), 20, 8)).toBeCloseTo((60 * 8) / (0.35 * 75), 9);
  expect(rateWhereItFalls_mm_h(bedOf(75, drip), 10, 8)).toBe(10);
  expect(rateWhereItFalls_mm_h(bedOf(75, drip), 5, 8)).toBeCloseTo(6.4, 9);
});

test("cycles are whole minutes that add up, with their rests between", () => {
  expect(cycleMinutes({ minutes: 32, cycles: 3 })).toEqual([11, 11, 10]);
  expect(elapsed_min({ minutes: 32, litres: 0, net_mm: 0, cycles: 3, soak_min: 15 })).toBe(62);
  expect(cycleMinutes({ minutes: 0, cycles: 0 })).toEqual([]);
});

test("a watering that refills the roots wets them whole, half of it half", () => {
  expect(wettedDepth_m(20, 20, 0.3)).toBeCloseTo(0.3, 12);
  expect(wettedDepth_m(10, 20, 0.3)).toBeCloseTo(0.15, 12);
});
