import type { GeneratorFactors } from "../../tables/weather-generator.ts";
import { dayNumber, daysInMonth } from "./dates.ts";
import { dryingCourse } from "./drying-days.ts";
import { rainMonth, wetChances } from "./rain-chain.ts";
import type { WeatherRecord } from "./record.ts";
import { randomStream } from "./rng.ts";
import { type Course, positiveCourse, smoothCourse } from "./seasons.ts";
import { gammas, logNormal, normals as normalDraws } from "./variates.ts";
import { dayTemperatures, residualCourse } from "./warm-days.ts";

/** Monthly means of a place, January first. */
export interface MonthlyNormals {
  rain_mm: readonly number[];
  rainDays: readonly number[];
  /** Least rain of a day that counts as wet; 0.1 where not said. */
  wetDay_mm?: number;
  tmin_c?: readonly number[];
  tmax_c?: readonly number[];
  /** mm a day */
  et0_mm?: readonly number[];
}

export interface GeneratorRequest {
  normals: MonthlyNormals;
  /** Calendar years wanted. */
  years: number;
  /** Any whole number; the same one gives the same days. */
  seed: number;
  /** 2001 where not said: a number to name the first year by, no claim about it. */
  startYear?: number;
  factors: GeneratorFactors;
}

const defaultStartYear = 2001;
const defaultWetDay_mm = 0.1;

/** A stream of random numbers each, so that the rain is the same whatever else the normals have. */
const streams = { wet: 0, amount: 1, year: 2, temperature: 3, et0: 4 } as const;

/**
 * Whole calendar years of days from monthly means: wet and dry days by a two-state chain, amounts by a
 * gamma distribution times the year's own wetness, temperatures (or ET0) conditioned on wet and dry. Monthly
 * means come back within sampling error; columns are those that the normals have.
 * @source Richardson (1981), Water Resources Research 17:182-190; rain from monthly means after Geng, Penning de
 * Vries and Supit (1986), Agricultural and Forest Meteorology 36:363-376
 */
export function generateRecord(request: GeneratorRequest): WeatherRecord {
  const { normals, years, seed, factors, startYear = defaultStartYear } = request;
  const firstDay = dayNumber(startYear, 1, 1);
  const days = dayNumber(startYear + years, 1, 1) - firstDay;
  const rain = rainCourse(normals, seed, factors);
  const temperatures = temperatureCourse(normals, seed, factors);
  const et0 = et0Course(normals, seed, factors);

  const columns: WeatherRecord["columns"] = { rain_mm: new Float64Array(days) };
  if (temperatures !== null) {
    columns.tmin_c = new Float64Array(days);
    columns.tmax_c = new Float64Array(days);
  }
  if (et0 !== null) columns.et0_mm = new Float64Array(days);

  let i = 0;
  for (let year = startYear; year < startYear + years; year++) {
    rain.startYear();
    for (let month = 1; month <= 12; month++) {
      const daysOfMonth = daysInMonth(year, month);
      for (let day = 1; day <= daysOfMonth; day++, i++) {
        const today: Day = { month, day, daysOfMonth, ...rain.day(month) };
        columns.rain_mm[i] = today.rain_mm;
        if (temperatures !== null) {
          const { tmin_c, tmax_c } = temperatures(today);
          columns.tmin_c![i] = tmin_c;
          columns.tmax_c![i] = tmax_c;
        }
        if (et0 !== null) columns.et0_mm![i] = et0(today);
      }
    }
  }
  return { firstDay, days, columns };
}

interface RainDay {
  wet: boolean;
  /** Share of days like this one that are wet. */
  wetShare: number;
  rain_mm: number;
}

interface Day extends RainDay {
  month: number;
  day: number;
  daysOfMonth: number;
}

function rainCourse(normals: MonthlyNormals, seed: number, factors: GeneratorFactors) {
  const threshold_mm = normals.wetDay_mm ?? defaultWetDay_mm;
  const months = Array.from({ length: 12 }, (_, m) => rainMonth(m + 1, normals, threshold_mm, factors));
  const chance = randomStream(seed, streams.wet);
  const gamma = gammas(randomStream(seed, streams.amount));
  const yearNormal = normalDraws(randomStream(seed, streams.year));

  let share = months[0]!.wetShare;
  let wet = chance.uniform() < share;
  let wetness = 1;
  return {
    startYear(): void {
      wetness = logNormal(factors.yearWetnessSpread, yearNormal());
    },
    day(month: number): RainDay {
      const { wetShare, wetDay_mm, least_mm, shape } = months[month - 1]!;
      const { afterDry, afterWet } = wetChances(share, wetShare, factors.rainPersistence);
      wet = chance.uniform() < (wet ? afterWet : afterDry);
      share = wetShare;
      // Of the rain above the least, so that a dry year's wet days are wet days still; their mean is kept.
      const rain_mm = wet ? least_mm + ((wetDay_mm - least_mm) / shape) * gamma(shape) * wetness : 0;
      return { wet, wetShare, rain_mm };
    },
  };
}

function temperatureCourse(normals: MonthlyNormals, seed: number, factors: GeneratorFactors) {
  const { tmin_c, tmax_c } = normals;
  if (tmin_c === undefined || tmax_c === undefined) return null;
  const middle: Course = smoothCourse(tmax_c.map((tmax, m) => (tmax + tmin_c[m]!) / 2));
  const range: Course = positiveCourse(tmax_c.map((tmax, m) => tmax - tmin_c[m]!));
  const residuals = residualCourse(factors.lag, normalDraws(randomStream(seed, streams.temperature)));
  return ({ month, day, daysOfMonth, wet, wetShare }: Day) => {
    const middle_c = middle(month, day, daysOfMonth);
    const range_c = range(month, day, daysOfMonth);
    const means = { tmax_c: middle_c + range_c / 2, tmin_c: middle_c - range_c / 2, range_c, wet, wetShare };
    return dayTemperatures(means, residuals(), factors);
  };
}

function et0Course(normals: MonthlyNormals, seed: number, factors: GeneratorFactors) {
  if (normals.et0_mm === undefined) return null;
  const mean: Course = positiveCourse(normals.et0_mm);
  const drying = dryingCourse(factors, normalDraws(randomStream(seed, streams.et0)));
  return ({ month, day, daysOfMonth, wet, wetShare }: Day) =>
    drying(mean(month, day, daysOfMonth), wetShare, wet);
}
