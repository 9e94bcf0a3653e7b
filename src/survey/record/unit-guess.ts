import type { WeatherColumn } from "../../engine/weather/record.ts";
import { type ColumnValues, converted } from "./column-values.ts";
import { acceptedRanges } from "./ranges.ts";
import { type Quantity, quantityOf, type SourceUnit, unitsOf } from "./source-units.ts";

export interface RankedUnit {
  unit: SourceUnit;
  /** 0–1; those of one column add to 1. */
  certainty: number;
}

/** A spread of what is usual: a value that lies z spreads from the middle weighs exp(−z²/2). */
interface Usual {
  middle: number;
  spread: number;
  /** Whether the spread is a factor, of values above 0. */
  byFactor: boolean;
}

/**
 * The usual daily mean of each column over a record, and rain's usual wettest day, wide enough for deserts and
 * rainforests: our judgement, to weigh one unit against another, used for nothing else.
 */
const usualMean: Readonly<Record<Quantity, Usual>> = {
  depth: { middle: 1.9, spread: Math.log(2.3), byFactor: true },
  temperature: { middle: 13, spread: 10, byFactor: false },
  pressure: { middle: 1.1, spread: Math.log(1.8), byFactor: true },
  humidity: { middle: 68, spread: 16, byFactor: false },
  speed: { middle: 2.9, spread: Math.log(1.6), byFactor: true },
  radiation: { middle: 14.5, spread: Math.log(1.4), byFactor: true },
  time: { middle: 6, spread: Math.log(1.5), byFactor: true },
};
const usualWettestDay: Usual = { middle: 60, spread: Math.log(2), byFactor: true };
const usualRange: Usual = { middle: 10, spread: Math.log(1.5), byFactor: true };
const usualEt0: Usual = { middle: 3.2, spread: Math.log(1.6), byFactor: true };

/** What a file's settled columns say of how it writes units. */
export interface Custom {
  system: "metric" | "us" | null;
  /** Some column is in tenths without a point. */
  tenths: boolean;
}

/** Files of one system of units seldom hold the other's, and files in tenths mostly hold more of them. */
const otherSystem = 0.1;
const moreTenths = 20;

function bent(unit: SourceUnit, { system, tenths }: Custom): number {
  const against = system && unit.system && unit.system !== system ? otherSystem : 1;
  return unit.prior * against * (tenths && unit.whole ? moreTenths : 1);
}

/**
 * Ranks the units that all of a file's temperatures share: each must fit, and the usual day's range between the
 * lowest and the highest tells a warm place in °C from a cold one in °F.
 */
export function rankTemperatureUnits(
  columns: readonly { column: WeatherColumn; values: ColumnValues }[],
  custom: Custom,
): RankedUnit[] {
  const low = columns.find(({ column }) => column === "tmin_c")?.values.byRow;
  const high = columns.find(({ column }) => column === "tmax_c")?.values.byRow;
  const weighed = unitsOf("tmax_c").map((unit) => {
    const each = columns.reduce(
      (product, { column, values }) => product * likelihood(column, values, unit),
      1,
    );
    const range = low && high ? weigh(meanRange(low, high) * unit.factor, usualRange) : 1;
    return { unit, weight: bent(unit, custom) * each * range };
  });
  return shares(weighed);
}

/** Mean of highest less lowest; marks for missing values cancel or are few. */
function meanRange(low: readonly number[], high: readonly number[]): number {
  const ranges = high.map((value, at) => value - low[at]!).filter((range) => range >= 0 && range < 900);
  return ranges.reduce((sum, range) => sum + range, 0) / Math.max(1, ranges.length);
}

/** Ranks the units that a column may be in by its values and by what its file's other columns are in. */
export function rankUnits(column: WeatherColumn, values: ColumnValues, custom: Custom): RankedUnit[] {
  const weighed = unitsOf(column).map((unit) => {
    return { unit, weight: bent(unit, custom) * likelihood(column, values, unit) };
  });
  return shares(weighed);
}

function shares(weighed: readonly { unit: SourceUnit; weight: number }[]): RankedUnit[] {
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return weighed
    .map(({ unit, weight }) => ({ unit, certainty: total > 0 ? weight / total : 0 }))
    .sort((a, b) => b.certainty - a.certainty);
}

/** How well a column's values fit the column in a unit, 0–1: the share in its range times how usual they are. */
export function fit(column: WeatherColumn, values: ColumnValues, unit: SourceUnit): number {
  const inUnit = converted(values, column, unit);
  if (inUnit.length === 0) return 0;
  const [low, high] = acceptedRanges[column];
  const within = inUnit.filter((value) => value >= low - 1e-9 && value <= high * 1.06 + 1e-9).length;
  return values.numericShare * (within / inUnit.length);
}

function likelihood(column: WeatherColumn, values: ColumnValues, unit: SourceUnit): number {
  if (unit.whole && !values.allWhole) return 0;
  const inUnit = converted(values, column, unit);
  if (inUnit.length === 0) return 1;
  const inRange = fit(column, values, unit);
  const strict = inRange > 0.99 ? 1 : inRange ** 40;
  const mean = inUnit.reduce((sum, value) => sum + value, 0) / inUnit.length;
  if (column === "et0_mm") return strict * weigh(mean, usualEt0);
  const usual = weigh(mean, usualMean[quantityOf[column]]);
  if (column !== "rain_mm" || inUnit.length < 300) return strict * usual;
  return (
    strict *
    usual *
    weigh(
      inUnit.reduce((most, value) => Math.max(most, value), 0),
      usualWettestDay,
    )
  );
}

function weigh(value: number, { middle, spread, byFactor }: Usual): number {
  if (byFactor && value <= 0) return 0.01;
  const z = (byFactor ? Math.log(value / middle) : value - middle) / spread;
  return Math.max(1e-12, Math.exp((-z * z) / 2));
}
