import type { Bed, Grounds } from "../../src/engine/grounds.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { bed, place, roof, tank } from "../helpers/plain-grounds.ts";
import { recordAt } from "../helpers/worked.ts";

/** Days of 50 years. */
export const fiftyYears_days = 18_262;

/** The Seattle record laid end to end: the same weather over and over costs what different weather does. */
export function longRecord(days: number): WeatherRecord {
  const { firstDay, days: once, columns } = recordAt("tests/scenarios/seattle.csv");
  const long = Object.entries(columns).map(([name, values]) => [
    name,
    Float64Array.from({ length: days }, (_, i) => values[i % once]!),
  ]);
  return { firstDay, days, columns: Object.fromEntries(long) };
}

/** Twelve beds that differ in plants, soil, mulch, method and supply, one in shade, half with a habit known. */
export function twelveBeds(): Grounds {
  return {
    place: { ...place, windHeight_m: 10 },
    beds: Array.from({ length: 12 }, (_, k) => variedBed(k)),
    roofs: [roof("t", { area_m2: 300, firstFlush_mm: 0.5 })],
    tanks: [tank("t", { capacity_L: 20_000 })],
    draws: [],
    leaks_L_day: 40,
    absences: [],
  };
}

function variedBed(k: number): Bed {
  const plain = bed(`bed-${k}`);
  const fromTank = k % 4 !== 3;
  return {
    ...plain,
    area_m2: 40 + 15 * k,
    plantings: [
      { ...plain.plantings[0]!, share: 0.6, kcbFull: 0.45 + 0.05 * k, climateAdjusted: true },
      { ...plain.plantings[0]!, share: 0.4, kcbFull: 0.5, height_m: 1.4, rootDepth_m: 0.8 },
    ],
    leafCover: Array(12).fill(0.5 + 0.04 * k),
    mulch: k % 3 > 0 ? { cut: 0.5, fullDepth_mm: 50, cover: 0.8, depth_mm: 40 } : null,
    obstructions: k === 3 ? [{ fromAzimuth_deg: 90, toAzimuth_deg: 270, elevation_deg: 40 }] : [],
    watering: {
      ...plain.watering,
      drip: k % 2 === 0,
      wettedShare: k % 2 === 0 ? 0.4 : 1,
      supply: fromTank ? "tank-then-mains" : "mains-only",
      tank: fromTank ? "t" : null,
      habit: k < 6 ? { minutes: 20, weekdays: Array(7).fill(true), months: Array(12).fill(true) } : null,
    },
  };
}
