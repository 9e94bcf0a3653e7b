import { type BedState, freshState, type PreparedBed, runDays, slot } from "../bed-day.ts";
import { blankDays } from "../bed-run.ts";
import { quantile } from "../give-up.ts";
import type { WeatherSeries } from "../weather/series.ts";
import { sameDates } from "./members.ts";

/** Days looked back over at most. Ours. */
export const lookBack_days = 28;
/** Days looked ahead: the week, and the next one's open days. */
export const lookAhead_days = 14;

/** A gauge read on a day: the rain of so many days up to it. */
export interface GaugeReading {
  day: number;
  days: number;
  rain_mm: number;
}

/** Rain that somebody forecasts for a day, with its chance, 0–1. */
export interface Forecast {
  day: number;
  rain_mm: number;
  chance: number;
}

/** What is known of the weather about a week, beside the record's years. */
export interface WeekWeather {
  /** First day of the round. */
  firstDay: number;
  gauge: readonly GaugeReading[];
  forecast: readonly Forecast[];
  /** Multiplies ET0 of the last seven days and of the week to come. */
  heat: number;
  /** A hot spell that somebody forecasts for the week to come, with its chance, 0–1; null where nobody does. */
  hotSpell: { heat: number; chance: number } | null;
}

/** The days about a week as one of the record's years has them, with what is known put in. */
export interface Member {
  /** Place in the record of the first day looked back to. */
  at: number;
  rain_mm: Float64Array;
  /** What ET0 is multiplied by on each day. */
  heat: Float64Array;
}

const span_days = lookBack_days + lookAhead_days;
const heat_days = 7;

/** The week in the weather of each year of the record. */
export function membersOf(weather: WeatherSeries, week: WeekWeather): Member[] {
  const places = sameDates(weather.calendar, week.firstDay, lookBack_days, lookAhead_days);
  return places.map((place, k) => {
    const at = place - lookBack_days;
    const rain_mm = weather.rain_mm.slice(at, at + span_days);
    takeRecorded(weather, week.firstDay, rain_mm);
    for (const reading of week.gauge) takeGauge(reading, week.firstDay - lookBack_days, rain_mm);
    for (const rain of week.forecast)
      takeForecast(rain, week.firstDay - lookBack_days, rain_mm, (k + 0.5) / places.length);
    return { at, rain_mm, heat: heatOf(week, (k + 0.5) / places.length) };
  });
}

/** What ET0 is multiplied by: a forecast hot spell comes in as many of the years as its chance says. */
function heatOf({ heat, hotSpell }: WeekWeather, rank: number): Float64Array {
  const isHot = hotSpell !== null && (rank + 0.5) % 1 < hotSpell.chance;
  const ahead = isHot ? Math.max(heat, hotSpell.heat) : heat;
  return Float64Array.from({ length: span_days }, (_, i) => {
    if (i < lookBack_days - heat_days || i >= lookBack_days + heat_days) return 1;
    return i < lookBack_days ? heat : ahead;
  });
}

/** Rain of past days that the record itself holds. */
function takeRecorded(
  { calendar, rain_mm: recorded }: WeatherSeries,
  firstDay: number,
  rain_mm: Float64Array,
): void {
  for (let i = 0; i < lookBack_days; i++) {
    const at = firstDay - lookBack_days + i - calendar.firstDay;
    if (at >= 0 && at < calendar.days) rain_mm[i] = recorded[at]!;
  }
}

/** A gauge's total over several days, shared as that year's own rain fell on them, else evenly. */
function takeGauge(
  { day, days, rain_mm: total_mm }: GaugeReading,
  start: number,
  rain_mm: Float64Array,
): void {
  const from = Math.max(0, day - days + 1 - start);
  const to = Math.min(lookBack_days, day + 1 - start);
  const inside = to - from;
  if (inside <= 0) return;
  const part_mm = (total_mm * inside) / days;
  let fell_mm = 0;
  for (let i = from; i < to; i++) fell_mm += rain_mm[i]!;
  for (let i = from; i < to; i++)
    rain_mm[i] = fell_mm > 0 ? (rain_mm[i]! * part_mm) / fell_mm : part_mm / inside;
}

/** Forecast rain falls in as many of the years as its chance says; each day begins with another year. */
function takeForecast(
  { day, rain_mm: amount_mm, chance }: Forecast,
  start: number,
  rain_mm: Float64Array,
  rank: number,
): void {
  const i = day - start;
  if (i < 0 || i >= span_days) return;
  const turned = (rank + 0.382 * (i - lookBack_days)) % 1;
  rain_mm[i] = (turned + 1) % 1 < chance ? amount_mm : 0;
}

/** A bed's days about the week in one year, ready to be run; `net_mm` holds the waterings. */
export interface BedMember {
  bed: PreparedBed;
  state: BedState;
  net_mm: Float64Array;
}

/** Cuts a bed's weather to a member's days. */
export function bedMember(bed: PreparedBed, { at, rain_mm, heat }: Member, start_mm: number): BedMember {
  const cut = <T extends Float64Array | Uint8Array>(days: T) => days.slice(at, at + span_days) as T;
  const et0_mm = cut(bed.et0_mm);
  for (let i = 0; i < span_days; i++) et0_mm[i]! *= heat[i]!;
  const state = freshState();
  state[slot.rootDepletion] = Math.min(bed.available_mm, start_mm);
  state[slot.surfaceDepletion] = Math.min(bed.tew_mm, start_mm);
  return {
    bed: {
      ...bed,
      month: cut(bed.month),
      rain_mm: bed.bed.rainShare === 1 ? rain_mm : rain_mm.map((mm) => mm * bed.bed.rainShare),
      et0_mm,
      kcMaxClimate: cut(bed.kcMaxClimate),
      kcbClimate: cut(bed.kcbClimate),
    },
    state,
    net_mm: new Float64Array(span_days),
  };
}

/** Runs a member from one of its days up to another. */
export function runMember({ bed, state, net_mm }: BedMember, from: number, to: number): void {
  runDays(bed, state, net_mm, null, from, to, null);
}

/** Water of a member's roots from one day to the first of the week, mm. */
export interface SoilSince {
  start_mm: number;
  rain_mm: number;
  net_mm: number;
  drainage_mm: number;
  etc_mm: number;
  depletion_mm: number;
}

/** Runs a member from one of its days up to the week's first, and sums up what came and went. */
export function soilSince(member: BedMember, from: number): SoilSince {
  const { bed, state, net_mm } = member;
  const start_mm = rootDepletion(member);
  const drained_mm = state[slot.drainage]!;
  const days = blankDays(lookBack_days);
  runDays(bed, state, net_mm, null, from, lookBack_days, days);
  const sum = (series: Float64Array) => {
    let total = 0;
    for (let i = from; i < lookBack_days; i++) total += series[i]!;
    return total;
  };
  return {
    start_mm,
    rain_mm: sum(bed.rain_mm),
    net_mm: sum(net_mm),
    drainage_mm: state[slot.drainage]! - drained_mm,
    etc_mm: sum(days.etc_mm),
    depletion_mm: rootDepletion(member),
  };
}

/** Water missing from a member's roots as its run stands, mm. */
export function rootDepletion({ state }: BedMember): number {
  return state[slot.rootDepletion]!;
}

/** Low, middle and high of a soil's state over years and answers. */
export interface Range {
  low: number;
  middle: number;
  high: number;
}

export function rangeOf(figures: readonly number[]): Range {
  const sorted = [...figures].sort((a, b) => a - b);
  if (sorted.length === 0) return { low: 0, middle: 0, high: 0 };
  return { low: quantile(sorted, 0.1), middle: quantile(sorted, 0.5), high: quantile(sorted, 0.9) };
}
