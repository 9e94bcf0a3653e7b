import { estimateRuns, type Runs } from "../../src/engine/estimate.ts";
import type { Bed, Draw, Grounds, Roof, Tank, Watering } from "../../src/engine/grounds.ts";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";

/** Plain grounds to change in one place at a time: every field said, nothing assumed. */

const every = (length: number) => Array<boolean>(length).fill(true);

export const place = {
  latitude_deg: 47.45,
  longitude_deg: -122.31,
  elevation_m: 132,
  coastal: true,
  windHeight_m: 2,
};

export function bed(id: string, watering: Partial<Watering> = {}, more: Partial<Bed> = {}): Bed {
  return {
    id,
    area_m2: 10,
    plantings: [
      {
        share: 1,
        kcbFull: 0.9,
        climateAdjusted: false,
        height_m: 0.3,
        rootDepth_m: 0.4,
        depletionFraction: 0.5,
        monthly: Array(12).fill(1),
        establishing: null,
      },
    ],
    leafCover: Array(12).fill(0.9),
    rootDepth_m: null,
    depletionFraction: null,
    mulch: null,
    soil: { fieldCapacity: 0.25, wiltingPoint: 0.1, tew_mm: 19, rew_mm: 9 },
    obstructions: [],
    rainShare: 1,
    initial: null,
    ...more,
    watering: {
      drip: false,
      efficiency: 0.8,
      wettedShare: 1,
      flow_L_min: 10,
      maxMinutes: Number.POSITIVE_INFINITY,
      supply: "mains-only",
      tank: null,
      byHand: false,
      allowedWeekdays: every(7),
      habit: null,
      ...watering,
    },
  };
}

export function tank(id: string, more: Partial<Tank> = {}): Tank {
  return {
    id,
    capacity_L: 1000,
    level_L: null,
    unusable_L: 0,
    inUse: true,
    rule: "after-spillage",
    topUp: null,
    linked: [],
    ...more,
  };
}

export function roof(tankId: string, more: Partial<Roof> = {}): Roof {
  return {
    id: `roof-of-${tankId}`,
    area_m2: 50,
    runoff: 0.9,
    firstFlush_mm: 0,
    share: 1,
    tank: tankId,
    ...more,
  };
}

export function draw(id: string, tankId: string, litresPerDay: number, more: Partial<Draw> = {}): Draw {
  return {
    id,
    tank: tankId,
    litresPerDay,
    weekdays: every(7),
    months: every(12),
    order: "before-beds",
    pausesWhenAbsent: false,
    ...more,
  };
}

/** A record of given ET0 and rain from Wednesday 1 January 2014. */
export function record(
  days: number,
  rain_mm: (i: number) => number,
  et0_mm: (i: number) => number = () => 4,
): WeatherRecord {
  return {
    firstDay: dayNumber(2014, 1, 1),
    days,
    columns: {
      rain_mm: Float64Array.from({ length: days }, (_, i) => rain_mm(i)),
      et0_mm: Float64Array.from({ length: days }, (_, i) => et0_mm(i)),
    },
  };
}

export function run(site: Partial<Grounds>, weather: WeatherRecord): Runs {
  const grounds: Grounds = {
    place,
    beds: [],
    roofs: [],
    tanks: [],
    draws: [],
    leaks_L_day: 0,
    absences: [],
    ...site,
  };
  return estimateRuns(grounds, prepareWeather(weather, place), { days: true, shares: true });
}

export const sum = (values: ArrayLike<number>) =>
  Array.from(values).reduce((total, value) => total + value, 0);
