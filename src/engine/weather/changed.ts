import { dayNumber, fromDay } from "./dates.ts";
import type { WeatherColumn, WeatherRecord } from "./record.ts";
import { randomStream } from "./rng.ts";

/** How a record is changed to ask what a drier or a warmer time would bring. A question, no forecast. */
export type WeatherChange = LessRain | Warmer | YearsAgain | LongerDrySpells;

export interface LessRain {
  kind: "rain";
  /** Factor by month, January first. */
  byMonth: readonly number[];
}

export interface Warmer {
  kind: "warmer";
  /** Added to every temperature, °C. */
  by_c: number;
}

export interface YearsAgain {
  kind: "years-again";
  /** First of the whole years in a row that are repeated. */
  from: number;
  years: number;
}

export interface LongerDrySpells {
  kind: "longer-dry-spells";
  /** Mean length over what it was, 1 or more. */
  times: number;
  seed: number;
}

/** The record under a change, as long as it was but for days outside whole years. */
export function changedRecord(record: WeatherRecord, change: WeatherChange): WeatherRecord {
  switch (change.kind) {
    case "rain":
      return withRain(record, (rain_mm, i) => rain_mm * change.byMonth[monthOf(record, i)]!);
    case "warmer":
      return warmer(record, change.by_c);
    case "years-again":
      return yearsAgain(record, change);
    case "longer-dry-spells":
      return withRain(record, spelled(record, change.times, change.seed));
  }
}

function monthOf({ firstDay }: WeatherRecord, i: number): number {
  return fromDay(firstDay + i).month - 1;
}

function withRain(record: WeatherRecord, of: (rain_mm: number, i: number) => number): WeatherRecord {
  const rain_mm = record.columns.rain_mm.map(of);
  return { ...record, columns: { ...record.columns, rain_mm } };
}

/** Where Hargreaves' ET0 would be none, °C. @source FAO-56 Eq. 52 */
const hargreavesZero_c = -17.8;

/**
 * Every temperature and the dew point moved alike, so that the air stays as humid for its warmth. An ET0 that is given
 * follows the mean temperature as Hargreaves' does; without temperatures it cannot be moved and stays.
 */
function warmer(record: WeatherRecord, by_c: number): WeatherRecord {
  const { tmin_c, tmax_c, tdew_c, et0_mm } = record.columns;
  const moved = (column: Float64Array) => column.map((c) => c + by_c);
  return {
    ...record,
    columns: {
      ...record.columns,
      ...(tmin_c && { tmin_c: moved(tmin_c) }),
      ...(tmax_c && { tmax_c: moved(tmax_c) }),
      ...(tdew_c && { tdew_c: moved(tdew_c) }),
      ...(et0_mm &&
        tmin_c &&
        tmax_c && {
          et0_mm: et0_mm.map((mm, i) => {
            const above_c = (tmin_c[i]! + tmax_c[i]!) / 2 - hargreavesZero_c;
            return above_c > 0 ? mm * Math.max(0, 1 + by_c / above_c) : mm;
          }),
        }),
    },
  };
}

/** The whole years of a record: where each begins, by index. */
function wholeYearStarts({ firstDay, days }: WeatherRecord): { year: number; from: number; to: number }[] {
  const first = fromDay(firstDay).year;
  const last = fromDay(firstDay + days - 1).year;
  return Array.from({ length: last - first + 1 }, (_, k) => first + k)
    .map((year) => ({
      year,
      from: dayNumber(year, 1, 1) - firstDay,
      to: dayNumber(year + 1, 1, 1) - firstDay,
    }))
    .filter(({ from, to }) => from >= 0 && to <= days);
}

/** A run of whole years over and over; as many whole years as the record has. */
function yearsAgain(record: WeatherRecord, { from: first, years }: YearsAgain): WeatherRecord {
  const whole = wholeYearStarts(record);
  const start = whole.findIndex(({ year }) => year === first);
  const length = Math.min(years, whole.length - start);
  if (start < 0 || length < 1) return record;

  const firstYear = whole[0]!.year;
  const firstDay = dayNumber(firstYear, 1, 1);
  const days = dayNumber(firstYear + whole.length, 1, 1) - firstDay;
  const source = Int32Array.from({ length: days }, (_, i) => {
    const { year, month, day } = fromDay(firstDay + i);
    const from = whole[start + ((year - firstYear) % length)]!;
    return sameDay(from, month, day) - record.firstDay;
  });
  const columns = Object.fromEntries(
    Object.entries(record.columns).map(([name, column]) => [
      name as WeatherColumn,
      Float64Array.from(source, (i) => column[i]!),
    ]),
  ) as WeatherRecord["columns"];
  return { firstDay, days, columns };
}

/** The same date in another year; 29 February is the 28th where there is none. */
function sameDay({ year }: { year: number }, month: number, day: number): number {
  const there = dayNumber(year, month, day);
  return fromDay(there).month === month ? there : there - 1;
}

/** Rain of a day that ends a dry spell. @source FAO and meteorological practice: 1 mm, common practice */
const wetDay_mm = 1;

/**
 * Rain of each day where some wet spells, drawn by the seed, fall together with the one after them: the dry spells
 * between are that much longer, and no rain is lost.
 */
function spelled(record: WeatherRecord, times: number, seed: number): (rain_mm: number, i: number) => number {
  const { rain_mm } = record.columns;
  const rng = randomStream(seed);
  const drawn = rain_mm.slice();
  let carried_mm = 0;
  for (const { from, to } of wetSpells(rain_mm)) {
    const fallen_mm = sum(rain_mm.subarray(from, to));
    if (rng.uniform() < 1 - 1 / times) {
      drawn.fill(0, from, to);
      carried_mm += fallen_mm;
    } else if (carried_mm > 0) {
      for (let i = from; i < to; i++) drawn[i]! *= 1 + carried_mm / fallen_mm;
      carried_mm = 0;
    }
  }
  if (carried_mm > 0) drawn[drawn.length - 1]! += carried_mm;
  return (_, i) => drawn[i]!;
}

function wetSpells(rain_mm: Float64Array): { from: number; to: number }[] {
  const spells = [];
  for (let from = 0, to = 0; from < rain_mm.length; from = to) {
    to = from + 1;
    if (rain_mm[from]! < wetDay_mm) continue;
    while (to < rain_mm.length && rain_mm[to]! >= wetDay_mm) to++;
    spells.push({ from, to });
  }
  return spells;
}

function sum(values: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i]!;
  return total;
}
