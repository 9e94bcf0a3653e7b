import type { ReadyTank } from "../prepare.ts";
import { stepTank, tankSeries } from "../tanks.ts";
import { grossFromNet_L } from "../watering.ts";
import { sameDates } from "./members.ts";
import { type Range, rangeOf } from "./soil-now.ts";
import type { RoundsNeed } from "./table.ts";

/** Days looked ahead at most; a tank that lasts longer is said to last at least so long. */
export const farthest_days = 180;

/** Days until a tank cannot meet a day's draw, from a level and a date, over the record's years. */
export interface DaysLeft {
  /** Days of the driest tenth of years, the middle, the wettest tenth; farthest_days stands for that or more. */
  days: Range;
  years: number;
  ofYears: readonly { year: number; days: number }[];
}

/**
 * Days of water left: in each of the record's years the tank runs on from today's level under that year's rain,
 * its draws, and what its beds ask for when watered to need.
 * @param level_L with what lies below the outlet
 */
export function daysLeft(need: RoundsNeed, tank: ReadyTank, day: number, level_L: number): DaysLeft {
  const { calendar } = need.ready.weather;
  const asks_L = asksByDay_L(need, tank);
  const places = sameDates(calendar, day, 0, farthest_days);
  const series = tankSeries(tank.inflow_L, asks_L);
  const start_L = Math.max(0, Math.min(level_L, tank.group.capacity_L) - tank.group.unusable_L);
  const group = { ...tank.group, topUp: null };
  const days = places.map((place) => {
    let left_L = start_L;
    for (let d = 0; d < farthest_days; d++) {
      left_L = stepTank(group, series, place + d, left_L);
      if (series.yield_L[place + d]! < asks_L[place + d]! - 1e-9) return d;
    }
    return farthest_days;
  });
  const ofYears = places.map((place, k) => ({ year: calendar.year[place]!, days: days[k]! }));
  return { days: rangeOf(days), years: places.length, ofYears };
}

/** What the tank's draws and beds ask of it on each day of the record, beds watered to need. */
export function asksByDay_L({ beds, ready }: RoundsNeed, tank: ReadyTank): Float64Array<ArrayBuffer> {
  const asks_L = new Float64Array(ready.weather.calendar.days);
  const add = (more: Float64Array, factor: number) => {
    for (let i = 0; i < asks_L.length; i++) asks_L[i]! += factor * more[i]!;
  };
  for (const { asks_L: draw_L } of [...tank.before, ...tank.after]) add(draw_L, 1);
  for (const { ready: bed, input } of beds)
    if (tank.beds.includes(bed)) {
      const { area_m2, watering } = bed.grown.bed;
      add(input.need.byDay_mm, grossFromNet_L(1, area_m2, watering.efficiency));
    }
  return asks_L;
}

/** A tank's week beside its beds: the middle of its draws, and what roofs bring in a dry week of that date. */
export interface TankWeek {
  draws_L: number;
  inflow_L: number;
  ofYears: readonly { year: number; draws_L: number; inflow_L: number }[];
}

/** What a tank's draws ask of it in the week from a day, and what roofs bring, over the record's years. */
export function weekOfTank(need: RoundsNeed, tank: ReadyTank, day: number): TankWeek {
  const { calendar } = need.ready.weather;
  const places = sameDates(calendar, day, 0, 7);
  const sumOf = (values: Float64Array, at: number) => {
    let sum = 0;
    for (let i = at; i < at + 7; i++) sum += values[i]!;
    return sum;
  };
  const ofYears = places.map((at) => ({
    year: calendar.year[at]!,
    draws_L: [...tank.before, ...tank.after].reduce((sum, { asks_L }) => sum + sumOf(asks_L, at), 0),
    inflow_L: sumOf(tank.inflow_L, at),
  }));
  return {
    draws_L: rangeOf(ofYears.map(({ draws_L }) => draws_L)).middle,
    inflow_L: rangeOf(ofYears.map(({ inflow_L }) => inflow_L)).low,
    ofYears,
  };
}
