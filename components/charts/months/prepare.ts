import type { AnswerView, BedView, Supply } from "../../../src/report/view.ts";
import { shortName } from "../../../src/words/en/page.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";

/** Where water comes from: each has its ink. */
export type Source = "tank" | "mains" | "other";

/** Need of one source, from the ground up. */
export interface Part {
  source: Source;
  L_week: readonly number[];
}

/** Litres a week by month of one bed or of all, in one year, under the rain of the same months. */
export interface Months {
  name: string;
  one: boolean;
  /** They add to `need_L_week`, but for what a bed on a tank alone does not get. */
  parts: readonly Part[];
  need_L_week: readonly number[];
  /** null: not known. */
  today_L_week: readonly number[] | null;
  rain_mm_week: readonly number[];
  /** What of the rain stays for the plants; null where that is not told. */
  rainUsed_mm_week: readonly number[] | null;
  /** Each month between a dry one and a wet one, one year in ten either way; null where the mean alone is drawn. */
  years: MonthYears | null;
}

export interface MonthYears {
  dry_L_week: readonly number[];
  wet_L_week: readonly number[];
}

/** What a bed needs and what a tank gives of it. */
export interface Supplied {
  supply: Supply;
  need_L_week: readonly number[];
  fromTank_L_week: readonly number[];
}

/** Splits beds' need by where it comes from: a tank's water first, the rest from the mains; never both of one litre. */
export function partsOf(beds: readonly Supplied[]): Part[] {
  const rows: Readonly<Record<Source, (readonly number[])[]>> = { tank: [], mains: [], other: [] };
  for (const { supply, need_L_week, fromTank_L_week } of beds) {
    if (supply === "other" || supply === "none") rows.other.push(need_L_week);
    if (supply === "mains-only") rows.mains.push(need_L_week);
    if (supply !== "tank-then-mains" && supply !== "tank-only") continue;
    const tank = need_L_week.map((need, m) => Math.min(need, fromTank_L_week[m]!));
    rows.tank.push(tank);
    if (supply === "tank-then-mains") rows.mains.push(need_L_week.map((need, m) => need - tank[m]!));
  }
  return (["tank", "mains", "other"] as const).flatMap((source) =>
    rows[source].length > 0 ? [{ source, L_week: sum(rows[source]) }] : [],
  );
}

function sum(rows: readonly (readonly number[])[]): number[] {
  return Array.from({ length: 12 }, (_, m) => rows.reduce((total, row) => total + row[m]!, 0));
}

/** One bed's months, or those of all beds that are watered (`bedId` null). */
export function prepareMonths(view: AnswerView, bedId: string | null): Months {
  const bed = view.beds.find((b) => b.id === bedId);
  const beds = bed ? [bed] : view.beds.filter((b) => b.supply !== "none");
  const known = beds.length > 0 && beds.every((b) => b.today_L_week !== null);
  return {
    name: bed ? shortName(bed.name) : plate.months.gardens,
    one: bed !== undefined,
    parts: partsOf(beds),
    need_L_week: sum(beds.map((b) => b.need_L_week)),
    today_L_week: known ? sum(beds.map((b) => b.today_L_week!)) : null,
    rain_mm_week: view.rain_mm_week,
    rainUsed_mm_week: null,
    years: null,
  };
}

/** The bed to show first: all where today is known throughout, else the largest of which it is known. */
export function firstShown(view: AnswerView): string | null {
  if (view.unknown.length === 0 || view.beds.length === 0) return null;
  const known = view.beds.filter((b: BedView) => b.today_L_week !== null && b.supply !== "none");
  const largest = [...known].sort((a, b) => b.gross_L_year - a.gross_L_year)[0];
  return largest?.id ?? null;
}

/** The longest run of months, past New Year too, in which watering is under a tenth of the peak. */
export function quietRun(need_L_week: readonly number[]): { from: number; to: number } | null {
  const peak = Math.max(...need_L_week);
  const quiet = need_L_week.map((x) => x < 0.1 * peak);
  if (peak <= 0 || quiet.every((q) => !q)) return null;
  let best: { from: number; length: number } = { from: 0, length: 0 };
  for (let from = 0; from < 12; from++) {
    let length = 0;
    while (length < 12 && quiet[(from + length) % 12]) length++;
    if (length > best.length) best = { from, length };
  }
  return best.length >= 2 ? { from: best.from, to: (best.from + best.length - 1) % 12 } : null;
}

/** What the drawing shows, in a sentence. */
export function monthsFinding(months: Months, say: Formatter): string {
  const { need_L_week, today_L_week, years } = months;
  const peak = need_L_week.indexOf(Math.max(...need_L_week));
  if (need_L_week[peak]! < 1) return plate.months.none(months.name);
  const most = (years ? plate.months.peakYears : plate.months.peak)(
    months.name,
    say.month(peak),
    say.litres(need_L_week[peak]!),
  );
  const dry_L = years?.dry_L_week[peak] ?? 0;
  const head =
    dry_L > 1.05 * need_L_week[peak]! ? most + plate.months.inDry(say.month(peak), say.litres(dry_L)) : most;
  const over = today_L_week
    ? need_L_week.flatMap((need, m) => (today_L_week[m]! > need * 1.25 + 1 ? [say.month(m)] : []))
    : [];
  if (over.length > 0 && over.length < 4)
    return head + (years ? plate.months.beyondYears : plate.months.beyond)(say.list(over));
  const quiet = quietRun(need_L_week);
  return quiet && !years ? head + plate.months.quiet(say.month(quiet.from), say.month(quiet.to)) : head;
}

export function monthReadings(months: Months, say: Formatter): string[] {
  const { years, today_L_week, rain_mm_week, rainUsed_mm_week } = months;
  return months.need_L_week.map((need, m) =>
    plate.months.reading(say.month(m), {
      need: say.litresBare(need),
      years: years && {
        dry: say.litresBare(years.dry_L_week[m]!),
        wet: say.litresBare(years.wet_L_week[m]!),
      },
      today: today_L_week && say.litresBare(today_L_week[m]!),
      rain: say.depth(rain_mm_week[m]!),
      used: rainUsed_mm_week && say.depthBare(rainUsed_mm_week[m]!),
      unit: say.volumeUnit,
    }),
  );
}

/** A column of litres, or of depth, by month; absent where nothing is known of it. */
interface TableColumn {
  name: string;
  values: readonly number[] | null;
  depth?: boolean;
}

export function monthsTable(months: Months, say: Formatter): ChartTable {
  const words = plate.months.columns;
  const tank = months.parts.find(({ source }) => source === "tank");
  const isMixed = tank !== undefined && months.parts.length > 1;
  const columns: TableColumn[] = [
    { name: words.need, values: months.need_L_week },
    { name: words.fromTank, values: isMixed ? tank.L_week : null },
    { name: words.dry, values: months.years?.dry_L_week ?? null },
    { name: words.wet, values: months.years?.wet_L_week ?? null },
    { name: words.today, values: months.today_L_week },
    { name: words.rain, values: months.rain_mm_week, depth: true },
    { name: words.rainUsed, values: months.rainUsed_mm_week, depth: true },
  ];
  const shown = columns.filter(({ values }) => values !== null);
  return {
    columns: [
      { name: words.month },
      ...shown.map(({ name, depth }) => ({
        name: `${name}, ${depth ? say.depthSymbol : say.volumeSymbol}`,
        show: (x: number) => say.number(x, depth ? (say.system === "us" ? 2 : 1) : 0),
      })),
    ],
    rows: months.need_L_week.map((_, m) => [
      say.month(m),
      ...shown.map(({ values, depth }) => (depth ? say.depthValue(values![m]!) : say.volume(values![m]!))),
    ]),
  };
}
