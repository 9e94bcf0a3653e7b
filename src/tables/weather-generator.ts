import table from "../../data/weather-generator.json" with { type: "json" };
import { citedRows, type Table, UnknownRow, type Value } from "./table.ts";

/** A value that runs with temperature: straight lines between the points, held beyond the ends. */
export interface Curve {
  at_c: readonly number[];
  value: readonly number[];
}

/** Middle values of the factors that make days out of monthly means. */
export interface GeneratorFactors {
  /** P(wet after wet) − P(wet after dry). */
  rainPersistence: number;
  /** Scale of the gamma distribution of a wet day's rain, as a line in its mean. */
  gammaScaleAtZero_mm: number;
  gammaScalePerMm: number;
  gammaShapeLeast: number;
  gammaShapeMost: number;
  /** Standard deviation over mean of a year's own wetness. */
  yearWetnessSpread: number;
  /** Correlations of what is left of tmax and tmin when their means are taken off. */
  lag: {
    sameDay: number;
    maxOnMax: number;
    /** tmax on the tmin of the day before. */
    maxOnMin: number;
    minOnMax: number;
    minOnMin: number;
  };
  /** Mean of dry days less mean of wet ones. */
  dryLessWetTmax_c: Curve;
  dryLessWetTmin_c: Curve;
  /** Standard deviations within a month. */
  spreadTmaxWet_c: Curve;
  spreadTmaxDry_c: Curve;
  spreadTminWet_c: Curve;
  spreadTminDry_c: Curve;
  /** Mean ET0 of wet days over that of dry ones. */
  et0WetOverDry: number;
  /** Standard deviation over mean within a month. */
  et0Spread: number;
  et0OnDayBefore: number;
}

export interface GeneratorRow {
  factor: string;
  /** Only in factors that run with temperature. */
  at_c?: number;
  value: Value;
}

export const generatorRows: readonly GeneratorRow[] = citedRows(table as Table<GeneratorRow>);

export const generatorFactors: GeneratorFactors = {
  rainPersistence: middle("rain-persistence"),
  gammaScaleAtZero_mm: middle("gamma-scale-at-zero_mm"),
  gammaScalePerMm: middle("gamma-scale-per-mm"),
  gammaShapeLeast: middle("gamma-shape-least"),
  gammaShapeMost: middle("gamma-shape-most"),
  yearWetnessSpread: middle("year-wetness-spread"),
  lag: {
    sameDay: middle("same-day-tmax-tmin"),
    maxOnMax: middle("tmax-on-tmax-before"),
    maxOnMin: middle("tmax-on-tmin-before"),
    minOnMax: middle("tmin-on-tmax-before"),
    minOnMin: middle("tmin-on-tmin-before"),
  },
  dryLessWetTmax_c: curve("dry-less-wet-tmax_c"),
  dryLessWetTmin_c: curve("dry-less-wet-tmin_c"),
  spreadTmaxWet_c: curve("spread-tmax-wet_c"),
  spreadTmaxDry_c: curve("spread-tmax-dry_c"),
  spreadTminWet_c: curve("spread-tmin-wet_c"),
  spreadTminDry_c: curve("spread-tmin-dry_c"),
  et0WetOverDry: middle("et0-wet-over-dry"),
  et0Spread: middle("et0-spread"),
  et0OnDayBefore: middle("et0-on-day-before"),
};

function rowsOf(factor: string): readonly GeneratorRow[] {
  const rows = generatorRows.filter((row) => row.factor === factor);
  if (rows.length === 0) throw new UnknownRow("factor", factor);
  return rows;
}

function middle(factor: string): number {
  return rowsOf(factor)[0]!.value.middle;
}

function curve(factor: string): Curve {
  const rows = rowsOf(factor);
  return { at_c: rows.map((row) => row.at_c ?? 0), value: rows.map((row) => row.value.middle) };
}
