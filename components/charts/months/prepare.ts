import type { AnswerView, BedView } from "../../../src/report/view.ts";
import { shortName } from "../../../src/words/en/page.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";

/** How the watering of what is shown comes: one ink, or the tank first and the mains for the rest. */
export type Source = "mains" | "tank" | "tank-then-mains" | "other";

/** Litres a week by month of one bed or of all, in a mean year, under the rain of the same months. */
export interface Months {
  name: string;
  one: boolean;
  /** Need by how it is watered, from the ground up; they add to `need_L_week`. */
  parts: readonly { source: Source; L_week: readonly number[] }[];
  need_L_week: readonly number[];
  /** null: not known. */
  today_L_week: readonly number[] | null;
  rain_mm_week: readonly number[];
}

const sourceOf = {
  "mains-only": "mains",
  "tank-only": "tank",
  "tank-then-mains": "tank-then-mains",
  other: "other",
  none: "other",
} as const;

const order: readonly Source[] = ["tank", "tank-then-mains", "mains", "other"];

function sum(rows: readonly (readonly number[])[]): number[] {
  return Array.from({ length: 12 }, (_, m) => rows.reduce((total, row) => total + row[m]!, 0));
}

/** One bed's months, or those of all beds that are watered (`bedId` null). */
export function prepareMonths(view: AnswerView, bedId: string | null): Months {
  const bed = view.beds.find((b) => b.id === bedId);
  const beds = bed ? [bed] : view.beds.filter((b) => b.supply !== "none");
  const known = beds.length > 0 && beds.every((b) => b.today_L_week !== null);
  const parts = order.flatMap((source) => {
    const of = beds.filter((b) => sourceOf[b.supply] === source);
    return of.length > 0 ? [{ source, L_week: sum(of.map((b) => b.need_L_week)) }] : [];
  });
  return {
    name: bed ? shortName(bed.name) : plate.months.gardens,
    one: bed !== undefined,
    parts,
    need_L_week: sum(beds.map((b) => b.need_L_week)),
    today_L_week: known ? sum(beds.map((b) => b.today_L_week!)) : null,
    rain_mm_week: view.rain_mm_week,
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
  const { need_L_week, today_L_week } = months;
  const peak = need_L_week.indexOf(Math.max(...need_L_week));
  if (need_L_week[peak]! < 1) return plate.months.none(months.name);
  const head = plate.months.peak(months.name, say.month(peak), say.litres(need_L_week[peak]!));
  const over = today_L_week
    ? need_L_week.flatMap((need, m) => (today_L_week[m]! > need * 1.25 + 1 ? [say.month(m)] : []))
    : [];
  if (over.length > 0 && over.length < 4) return head + plate.months.beyond(say.list(over));
  const quiet = quietRun(need_L_week);
  return quiet ? head + plate.months.quiet(say.month(quiet.from), say.month(quiet.to)) : head;
}

export function monthReadings(months: Months, say: Formatter): string[] {
  return months.need_L_week.map((need, m) =>
    plate.months.reading(
      say.month(m),
      say.litresBare(need),
      months.today_L_week ? say.litresBare(months.today_L_week[m]!) : null,
      say.depth(months.rain_mm_week[m]!),
      say.volumeUnit,
    ),
  );
}

export function monthsTable(months: Months, say: Formatter): ChartTable {
  const [month, need, today, rain] = plate.months.columns;
  const volume = say.volumeSymbol;
  const show = (x: number) => say.number(x, 0);
  const showDepth = (x: number) => say.number(x, say.system === "us" ? 2 : 1);
  return {
    columns: [
      { name: month },
      { name: `${need}, ${volume}`, show },
      ...(months.today_L_week ? [{ name: `${today}, ${volume}`, show }] : []),
      { name: `${rain}, ${say.depthSymbol}`, show: showDepth },
    ],
    rows: months.need_L_week.map((x, m) => [
      say.month(m),
      say.volume(x),
      ...(months.today_L_week ? [say.volume(months.today_L_week[m]!)] : []),
      say.depthValue(months.rain_mm_week[m]!),
    ]),
  };
}
