import { windAt2m_ms } from "../air.ts";
import { hargreaves_mm, penmanMonteithUnderSky_mm } from "../et0.ts";
import { everyDay } from "../every-day.ts";
import type { Place } from "../grounds.ts";
import { clearSky_MJ_m2 } from "../radiation.ts";
import { dayOfYear, fromDay, weekday } from "./dates.ts";
import { leastHumidityFromRecord, vapourFromRecord, vapourFromTmin } from "./humidity.ts";
import type { WeatherRecord } from "./record.ts";
import { type SunYear, solarOfRecord, sunYear } from "./sun.ts";

export type Et0Method = "given" | "penman-monteith" | "hargreaves";

/** Wind and least humidity where nothing was recorded. @source FAO-56 Eq. 47 text (2 m/s) and Eq. 70 (45 %) */
const usualWind_ms = 2;
const usualLeastHumidity_pct = 45;

/** The days of a record, by index. */
export interface Calendar {
  firstDay: number;
  days: number;
  year: Uint16Array;
  /** 0–11 */
  month: Uint8Array;
  dayOfMonth: Uint8Array;
  /** 0–6 from Monday */
  weekday: Uint8Array;
  /** 1–366 */
  dayOfYear: Uint16Array;
}

/** A record with everything that depends on weather and place alone worked out, once. */
export interface WeatherSeries {
  calendar: Calendar;
  place: Place;
  et0Method: Et0Method;
  rain_mm: Float64Array;
  et0_mm: Float64Array;
  /** 0.04 (u2 − 2) − 0.004 (RHmin − 45) within Eq. 70's limits; null where wind or humidity is not recorded. */
  kcbClimate: Float64Array | null;
  /** The same for Eq. 72, without limits, u2 = 2 and RHmin = 45 where not recorded. */
  kcMaxClimate: Float64Array;
  /** What a shaded bed needs; null where neither sun nor temperature is recorded. */
  sky: Sky | null;
}

/** Solar radiation of each day, and ET0 of a place that receives only a share of it. */
export interface Sky {
  solar_MJ_m2: Float64Array;
  sun: SunYear;
  /** Eq. 6 with the share `received` of the day's short-wave; null where there are no temperatures. */
  penmanMonteith_mm: ((i: number, received: number) => number) | null;
}

/** @throws nothing: a record that was checked and filled is always usable. */
export function prepareWeather(record: WeatherRecord, place: Place): WeatherSeries {
  const calendar = calendarOf(record);
  const { columns } = record;
  const sun = sunYear(place.latitude_deg);
  const solar_MJ_m2 = solarOfRecord(columns, calendar.dayOfYear, sun, place);
  const recordedWind_ms = columns.wind_ms;
  const wind_ms = recordedWind_ms
    ? everyDay(record.days, (i) => windAt2m_ms(recordedWind_ms[i]!, place.windHeight_m))
    : null;
  const penmanMonteith = solar_MJ_m2
    ? penmanMonteithOf(record, place, calendar, sun, solar_MJ_m2, wind_ms)
    : null;
  return {
    calendar,
    place,
    ...et0Of(record, calendar, sun, penmanMonteith, wind_ms !== null),
    rain_mm: columns.rain_mm,
    ...climateTerms(record, wind_ms),
    sky: solar_MJ_m2 ? { solar_MJ_m2, sun, penmanMonteith_mm: penmanMonteith } : null,
  };
}

function calendarOf({ firstDay, days }: WeatherRecord): Calendar {
  const calendar: Calendar = {
    firstDay,
    days,
    year: new Uint16Array(days),
    month: new Uint8Array(days),
    dayOfMonth: new Uint8Array(days),
    weekday: new Uint8Array(days),
    dayOfYear: new Uint16Array(days),
  };
  for (let i = 0; i < days; i++) {
    const date = fromDay(firstDay + i);
    calendar.year[i] = date.year;
    calendar.month[i] = date.month - 1;
    calendar.dayOfMonth[i] = date.day;
    calendar.weekday[i] = weekday(firstDay + i);
    calendar.dayOfYear[i] = dayOfYear(firstDay + i);
  }
  return calendar;
}

/** Eq. 6 of each day with chapter 3's estimates for what the record lacks. */
function penmanMonteithOf(
  record: WeatherRecord,
  place: Place,
  calendar: Calendar,
  sun: SunYear,
  solar_MJ_m2: Float64Array,
  wind_ms: Float64Array | null,
): ((i: number, received: number) => number) | null {
  const { tmin_c, tmax_c } = record.columns;
  if (!tmin_c || !tmax_c) return null;
  const vapour = vapourFromRecord(record.columns) ?? vapourFromTmin(tmin_c);
  return (i, received) =>
    penmanMonteithUnderSky_mm(
      {
        tmin_c: tmin_c[i]!,
        tmax_c: tmax_c[i]!,
        vapour_kPa: vapour(i),
        wind_ms: wind_ms ? wind_ms[i]! : usualWind_ms,
        elevation_m: place.elevation_m,
      },
      {
        solar_MJ_m2: solar_MJ_m2[i]!,
        clearSky_MJ_m2: clearSky_MJ_m2(place.elevation_m, sun.ra_MJ_m2[calendar.dayOfYear[i]!]!),
      },
      received,
    );
}

function et0Of(
  { columns }: WeatherRecord,
  calendar: Calendar,
  sun: SunYear,
  penmanMonteith: ((i: number, received: number) => number) | null,
  hasWind: boolean,
): { et0Method: Et0Method; et0_mm: Float64Array } {
  const { et0_mm, tmin_c, tmax_c, solar_MJ_m2, sun_h } = columns;
  if (et0_mm) return { et0Method: "given", et0_mm: everyDay(calendar.days, (i) => Math.max(0, et0_mm[i]!)) };
  if (!tmin_c || !tmax_c) throw new NoReferenceError();
  const hasMore = hasWind || solar_MJ_m2 || sun_h || vapourFromRecord(columns);
  const byDay =
    hasMore && penmanMonteith
      ? (i: number) => penmanMonteith(i, 1)
      : (i: number) => hargreaves_mm(tmin_c[i]!, tmax_c[i]!, sun.ra_MJ_m2[calendar.dayOfYear[i]!]!);
  return {
    et0Method: hasMore ? "penman-monteith" : "hargreaves",
    et0_mm: everyDay(calendar.days, (i) => Math.max(0, byDay(i))),
  };
}

/** The record has neither ET0 nor both temperatures; readers refuse such a record before it gets here. */
export class NoReferenceError extends Error {
  override name = "NoReferenceError";
}

function climateTerms({ columns }: WeatherRecord, wind_ms: Float64Array | null) {
  const leastHumidity = leastHumidityFromRecord(columns);
  const days = columns.rain_mm.length;
  const both = wind_ms !== null && leastHumidity !== null;
  const kcbClimate = both ? new Float64Array(days) : null;
  const kcMaxClimate = new Float64Array(days);
  for (let i = 0; i < days; i++) {
    const u2 = wind_ms ? wind_ms[i]! : usualWind_ms;
    const rhmin = leastHumidity ? leastHumidity(i) : usualLeastHumidity_pct;
    kcMaxClimate[i] = climateTerm(u2, rhmin);
    if (kcbClimate) kcbClimate[i] = climateTerm(clamp(u2, 1, 6), clamp(rhmin, 20, 80));
  }
  return { kcbClimate, kcMaxClimate };
}

/** The weather's part of Eq. 70 and Eq. 72, before the height's. @source FAO-56 Eq. 70 */
export function climateTerm(wind_ms: number, leastHumidity_pct: number): number {
  return 0.04 * (wind_ms - 2) - 0.004 * (leastHumidity_pct - 45);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
