import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";

type SizeRow = GroundsChoices["sizes"][number];

export interface SizeCurve {
  tank: string;
  name: string;
  rows: readonly SizeRow[];
  marked: readonly SizeRow[];
  /** Smallest size within 5 % of all that roof and draw allow; null where nothing is asked. */
  enough_L: number | null;
  /** All that roof and draw allow; null for a tank outside the plan. */
  most_kL: number | null;
  limit: GroundsChoices["tanks"][number]["limit"] | null;
  /** How many sizes are quoted, where none of them is worth its money; else 0. */
  nonePays: number;
  dryYear: number | null;
  wetYear: number | null;
}

/** A tank's sizes, ready to draw. @param name as people call it @param quotes ids of the measures that build or resize it */
export function prepareSizes(
  { sizes, tanks, mains, measures }: GroundsChoices,
  tank: string,
  name: string,
  quotes: readonly string[],
): SizeCurve {
  const rows = sizes.filter((row) => row.tank === tank).sort((a, b) => a.capacity_L - b.capacity_L);
  const quoted = measures.filter(({ id, cost }) => quotes.includes(id) && cost !== null);
  const isNone = quoted.every(({ worth }) => worth === "does-not-pay" || worth === "saves-nothing");
  const own = tanks.find((row) => row.tank === tank);
  return {
    tank,
    name,
    rows,
    marked: rows.filter(({ mark }) => mark !== null),
    enough_L: own?.enough_L ?? rows.find(({ mark }) => mark === "enough")?.capacity_L ?? null,
    most_kL: own?.most_kL_year ?? null,
    limit: own?.limit ?? null,
    nonePays: isNone ? quoted.length : 0,
    dryYear: mains.dryYear,
    wetYear: mains.wetYear,
  };
}

/** The middle, and the edges that eight years of ten lie between; the mean where no year is whole. */
export function bandOf({ saved_kL_year: { p10, p50, p90 }, mean_kL_year }: SizeRow): {
  low: number;
  middle: number;
  high: number;
} {
  return { low: p10 ?? mean_kL_year, middle: p50 ?? mean_kL_year, high: p90 ?? mean_kL_year };
}

/** Litres or gallons of a size. */
export function sizeText(capacity_L: number, say: Formatter): string {
  return `${say.number(say.volume(capacity_L), 0)}${NBSP}${say.volumeSymbol}`;
}

export function sizesFinding({ name, enough_L, limit, rows, nonePays }: SizeCurve, say: Formatter): string {
  const words = choicesPlates.sizes;
  const money = nonePays > 0 ? words.nonePays(nonePays) : "";
  if (limit === "nothing-asked" || enough_L === null || rows.every((row) => row.mean_kL_year <= 0))
    return words.nothing(name) + money;
  return words.enough(name, sizeText(enough_L, say)) + money;
}

/** What the next size drawn adds is told for the step that it is. */
export function sizeReadings({ rows }: SizeCurve, say: Formatter): string[] {
  return rows.map((row, k) => {
    const { low, high } = bandOf(row);
    const next = rows[k + 1];
    return choicesPlates.sizes.reading({
      size: sizeText(row.capacity_L, say),
      mean: say.yearly(row.mean_kL_year),
      low: say.yearlyBare(low),
      high: say.yearly(high),
      more: next ? say.yearly(next.mean_kL_year - row.mean_kL_year) : null,
      days: say.number(row.emptyDays_year, 0),
    });
  });
}

export function sizesTable({ rows }: SizeCurve, say: Formatter): ChartTable {
  const { columns, marks } = choicesPlates.sizes;
  const water = (kL: number | null) => (kL === null ? "" : yearlyIn(kL, say));
  const show = (value: number) => say.number(value, say.system === "us" ? 0 : 1);
  const unit = unitOf(say);
  const units = [say.volumeSymbol, unit, unit, unit, unit, unit, unit];
  return {
    columns: columns.map((name, k) => ({
      name: units[k] ? `${name}, ${units[k]}` : name,
      ...(k > 0 && k < columns.length - 1 && { show: k === 7 ? say.share : show }),
    })),
    rows: rows.map((row) => {
      const { low, high } = bandOf(row);
      return [
        say.number(say.volume(row.capacity_L), 0),
        water(row.mean_kL_year),
        water(low),
        water(high),
        water(row.dry_kL),
        water(row.wet_kL),
        water(row.marginal_kL),
        row.reliability,
        Math.round(row.emptyDays_year),
        row.mark ? marks[row.mark] : "",
      ];
    }),
  };
}

/** A year's water on an axis: kL, or gallons. */
export function yearlyIn(kL: number, say: Formatter): number {
  return say.system === "us" ? say.volume(kL * 1000) : kL;
}

export function unitOf(say: Formatter): string {
  return say.system === "us" ? say.volumeSymbol : "kL";
}
