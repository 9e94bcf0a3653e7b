import type { ThirstBed, ThirstView } from "../../../src/report/thirst-view.ts";
import { fromSI } from "../../../src/units.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import { type Formatter, rough } from "../../../src/words/format.ts";
import { areaUnit, overArea } from "../../../src/words/thirst-spoken.ts";
import type { ChartTable } from "../../charts/chart.ts";

const words = thirst.orderPlate;

export type OrderBy = "area" | "all";

/** One bed's line: watering and rain on each square metre, watering in all by its water. */
export interface OrderRow {
  name: string;
  perArea_L: number;
  rainUsed_L_m2: number;
  inAll_L: number;
  fromTank_L: number;
  /** What is neither a tank's nor the mains': water of its own. */
  own: boolean;
  /** On a tank alone: what the tank lacks is not given. */
  tankOnly: boolean;
  watered: boolean;
  /** Side of a square as large as the bed, as a share of the largest bed's. */
  side: number;
}

export interface Order {
  by: OrderBy;
  rows: readonly OrderRow[];
  /** Left out of the rows for their number. */
  hidden: number;
  thirstiest: string | null;
  largest: string | null;
}

/** @param most rows shown; the rest is counted */
export function prepareOrder(view: ThirstView, by: OrderBy, most: number): Order {
  const beds = inOrder(view.beds, by);
  const largest_m2 = Math.max(1e-9, ...view.beds.map(({ area_m2 }) => area_m2));
  const watered = view.beds.filter(({ supply, gross_L_year }) => supply !== "none" && gross_L_year >= 1);
  return {
    by,
    rows: beds.slice(0, most).map((bed) => ({
      name: bed.name,
      perArea_L: bed.gross_L_m2_year,
      rainUsed_L_m2: bed.rainUsed_L_year / bed.area_m2,
      inAll_L: bed.gross_L_year,
      fromTank_L: Math.min(bed.gross_L_year, bed.fromTank_L_year),
      own: bed.supply === "other",
      tankOnly: bed.supply === "tank-only",
      watered: bed.supply !== "none",
      side: Math.sqrt(bed.area_m2 / largest_m2),
    })),
    hidden: Math.max(0, beds.length - most),
    thirstiest: inOrder(watered, "area")[0]?.name ?? null,
    largest: inOrder(watered, "all")[0]?.name ?? null,
  };
}

/** Thirstiest first; beds that are never watered stand by what they would take, after all that are. */
export function inOrder(beds: readonly ThirstBed[], by: OrderBy): ThirstBed[] {
  const figure = (bed: ThirstBed) => (by === "area" ? bed.gross_L_m2_year : bed.gross_L_year);
  const last = (bed: ThirstBed) => (bed.supply === "none" ? 1 : 0);
  return [...beds].sort((a, b) => last(a) - last(b) || figure(b) - figure(a));
}

export function orderFinding({ thirstiest, largest, rows }: Order): string {
  if (thirstiest === null || largest === null) return words.findingNone;
  if (rows.length === 1) return words.findingOne(thirstiest);
  return words.finding(thirstiest, largest, thirstiest === largest);
}

export function perAreaText(x_L_m2: number, say: Formatter): string {
  const shown = overArea(x_L_m2, say);
  return say.number(rough(shown), shown < 10 ? 2 : 0);
}

/** Every bed, shown or not. */
export function orderTable(view: ThirstView, by: OrderBy, say: Formatter): ChartTable {
  const [bed, area, watering, rain, inAll, fromTank] = words.columns;
  const each = `${say.volumeSymbol}/${areaUnit(say)}`;
  const whole = (x: number) => say.number(x, 0);
  const fine = (x: number) => say.number(x, say.system === "us" ? 2 : 0);
  return {
    columns: [
      { name: bed! },
      { name: `${area}, ${areaUnit(say)}`, show: (x) => say.number(x, 1) },
      { name: `${watering}, ${each}`, show: fine },
      { name: `${rain}, ${each}`, show: fine },
      { name: `${inAll}, ${say.volumeSymbol}`, show: whole },
      { name: `${fromTank}, ${say.volumeSymbol}`, show: whole },
    ],
    rows: inOrder(view.beds, by).map((row) => [
      row.name,
      say.system === "us" ? fromSI(row.area_m2, "m²", "ft²")! : row.area_m2,
      overArea(row.gross_L_m2_year, say),
      overArea(row.rainUsed_L_year / row.area_m2, say),
      say.volume(row.gross_L_year),
      say.volume(row.fromTank_L_year),
    ]),
  };
}
