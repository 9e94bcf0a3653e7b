import { grossFromNet_L } from "../engine/watering.ts";
import type { WorkedOut } from "../report/work-out.ts";
import { mean } from "./address.ts";
import { type BedDay, bedDay } from "./bed-state.ts";
import { bookOf } from "./book.ts";
import { partName } from "./claims.ts";
import { calendarOf, type Figure } from "./figure.ts";
import type { Say } from "./say.ts";

/** One bed and seven days of it, as a class works them out. */
export interface ClassWeek {
  name: string;
  area_m2: number;
  available_mm: number;
  trigger_mm: number;
  /** Infinity: no limit. */
  most_mm: number;
  efficiency: number;
  /** The bed decides its own watering; else it gets what there is. */
  decides: boolean;
  days: ClassDay[];
}

export interface ClassDay {
  /** Day number. */
  day: number;
  mayWater: boolean;
  numbers: BedDay;
  etc_mm: number;
  drainage_mm: number;
  rootEnd_mm: number;
  gross_L: number;
}

const weekDays = 7;

/**
 * A week of a bed from a day on, or the record's most telling one: with a watering, rain and a short day, if it has
 * such a week. Null where there is no such bed, or the record has not all seven days.
 * @param from day number
 */
export function classWeek(worked: WorkedOut, say: Say, bed: string, from: number | null): ClassWeek | null {
  const book = bookOf(worked);
  const run = book.run("need");
  const k = run.ready.beds.findIndex(({ grown }) => grown.bed.id === bed);
  if (k < 0) return null;
  const address = { run: "need", subject: "bed", id: bed, what: "ks", when: mean } as const;
  const figure: Figure = { book, run, say, address, k };
  const { firstDay, days } = calendarOf(figure);
  const first = from === null ? tellingWeek(figure) : from - firstDay;
  if (first === null || first < 0 || first + weekDays > days) return null;
  const { grown } = run.ready.beds[k]!;
  return {
    name: partName(run, "bed", bed),
    area_m2: grown.bed.area_m2,
    available_mm: grown.available_mm,
    trigger_mm: grown.trigger_mm,
    most_mm: grown.mostNet_mm,
    efficiency: grown.bed.watering.efficiency,
    decides: book.history("need", k)!.by === "need",
    days: Array.from({ length: weekDays }, (_, n) => classDay(figure, first + n)),
  };
}

function classDay(figure: Figure, i: number): ClassDay {
  const numbers = bedDay(figure, i)!;
  const { open, grown } = figure.run.ready.beds[figure.k]!;
  const { area_m2, watering } = grown.bed;
  const { days } = numbers.history;
  return {
    day: calendarOf(figure).firstDay + i,
    mayWater: open[i] === 1,
    numbers,
    etc_mm: days.etc_mm[i]!,
    drainage_mm: days.drainage_mm[i]!,
    rootEnd_mm: days.rootDepletion_mm[i]!,
    gross_L: grossFromNet_L(numbers.net_mm, area_m2, watering.efficiency),
  };
}

/** The first day of the last week, Monday to Sunday, that has the most to tell; null where no week is whole. */
function tellingWeek(figure: Figure): number | null {
  const { weekday, days } = calendarOf(figure);
  const { got_L, days: kept } = figure.book.history("need", figure.k)!;
  const { rain_mm } = figure.run.ready.beds[figure.k]!.grown;
  let best: number | null = null;
  let most = -1;
  for (let i = 0; i + weekDays <= days; i++) {
    if (weekday[i] !== 0) continue;
    const within = (values: Float64Array, is: (value: number) => boolean) =>
      values.subarray(i, i + weekDays).some(is);
    const tells =
      (within(got_L, (litres) => litres > 0) ? 4 : 0) +
      (within(rain_mm, (rain) => rain >= 1) ? 2 : 0) +
      (within(kept.ks, (ks) => ks < 1) ? 1 : 0);
    if (tells < most) continue;
    most = tells;
    best = i;
  }
  return best ?? (days >= weekDays ? 0 : null);
}
