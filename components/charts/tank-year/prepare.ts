import type { TankView } from "../../../src/report/view.ts";
import { shortName } from "../../../src/words/en/page.ts";
import { plate } from "../../../src/words/en/plates.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";

/** A tank through one year, day by day; levels include what lies below the outlet. */
export interface TankYear {
  name: string;
  year: number | null;
  firstDay: number;
  capacity_L: number;
  unusable_L: number;
  inUse: boolean;
  level_L: readonly number[];
  spill_L: readonly number[];
  short: readonly boolean[];
  shortDays: number;
  spilled_L: number;
  asked: boolean;
  /** The level of the same days as it was before a change; null where nothing is changed. */
  before_L: readonly number[] | null;
}

const MS_PER_DAY = 86_400_000;

/** The days of a calendar year that the record holds; of no year (null) all of them. */
export function prepareTankYear(
  tank: TankView,
  year: number | null,
  before_L: readonly number[] | null = null,
): TankYear {
  const days = tank.level_L.length;
  const day = (y: number) => Date.UTC(y, 0, 1) / MS_PER_DAY - tank.firstDay;
  const from = year === null ? 0 : Math.min(days, Math.max(0, day(year)));
  const to = year === null ? Math.min(days, 366) : Math.min(days, Math.max(0, day(year + 1)));
  const short = Array.from(tank.short.subarray(from, to), (s) => s === 1);
  const spill_L = Array.from(tank.spill_L.subarray(from, to));
  return {
    name: shortName(tank.name),
    year,
    firstDay: tank.firstDay + from,
    capacity_L: tank.capacity_L,
    unusable_L: tank.unusable_L,
    inUse: tank.inUse,
    level_L: Array.from(tank.level_L.subarray(from, to)),
    spill_L,
    short,
    shortDays: short.filter(Boolean).length,
    spilled_L: spill_L.reduce((a, b) => a + b, 0),
    asked: tank.asked,
    before_L,
  };
}

/** Spill of each run of seven days, litres. */
export function spillByWeek(spill_L: readonly number[]): number[] {
  const weeks: number[] = [];
  spill_L.forEach((x, i) => {
    const week = Math.floor(i / 7);
    weeks[week] = (weeks[week] ?? 0) + x;
  });
  return weeks;
}

export function tankFinding(t: TankYear, say: Formatter): string {
  const words = plate.tank;
  const year = t.year === null ? plate.tank.theRecord : String(t.year);
  if (!t.inUse) return words.notUsed(t.name);
  if (t.capacity_L <= 0) return words.noCapacity(t.name);
  if (!t.asked) return words.noDraw(t.name, year);
  const head =
    t.shortDays === 0
      ? words.never(t.name, year)
      : t.shortDays === 1
        ? words.shortOne(t.name, year)
        : words.short(t.name, say.number(t.shortDays), year);
  return t.spilled_L > 0.005 * t.capacity_L ? head + words.andSpills(say.litres(t.spilled_L)) : head;
}

export function tankReading(t: TankYear, i: number, say: Formatter): string {
  const level = t.level_L[i]!;
  return plate.tank.reading(
    say.date(t.firstDay + i),
    `${say.litresBare(level)}${NBSP}${say.volumeUnit}`,
    say.share(t.capacity_L > 0 ? level / t.capacity_L : 0),
    t.spill_L[i]! >= 0.5 ? `${say.litresBare(t.spill_L[i]!)}${NBSP}${say.volumeUnit}` : null,
    t.short[i]!,
  );
}

/** The day that the ruler stands at first: the last above half full before the tank runs short, else the lowest. */
export function telling(t: TankYear): number {
  const short = t.short.indexOf(true);
  if (short < 0) return Math.max(0, t.level_L.indexOf(Math.min(...t.level_L)));
  for (let i = short; i >= 0; i--) if (t.level_L[i]! > t.capacity_L / 2) return i;
  return short;
}

export function tankTable(t: TankYear, say: Formatter): ChartTable {
  const [date, level, spilled, short] = plate.tank.columns;
  const show = (x: number) => say.number(x, 0);
  return {
    columns: [
      { name: date },
      { name: `${level}, ${say.volumeSymbol}`, show },
      { name: `${spilled}, ${say.volumeSymbol}`, show },
      { name: short },
    ],
    rows: t.level_L.map((x, i) => [
      new Date((t.firstDay + i) * MS_PER_DAY).toISOString().slice(0, 10),
      say.volume(x),
      say.volume(t.spill_L[i]!),
      t.short[i] ? plate.tank.yes : plate.tank.no,
    ]),
  };
}
