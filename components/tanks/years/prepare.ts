import { everySeventh } from "../../../src/report/level-steps.ts";
import type { Trial } from "../../../src/report/tank-trial.ts";
import type { TankStory } from "../../../src/report/tanks-view.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../../charts/chart.ts";

const words = tanks.years;
const MS_PER_DAY = 86_400_000;

/** One small picture: a year's level, every seventh day. */
export interface SmallYear {
  year: number;
  level_L: ArrayLike<number>;
  shortDays: number;
}

/** All whole years of a tank, as it is or as it is tried. */
export function smallYears(tank: TankStory, trial: Trial | null): SmallYear[] {
  if (trial) return trial.years.map(({ year, level_L, shortDays }) => ({ year, level_L, shortDays }));
  const day = (year: number) => Date.UTC(year, 0, 1) / MS_PER_DAY - tank.firstDay;
  return tank.byYear.map(({ year, shortDays }) => ({
    year,
    level_L: everySeventh(tank.level_L, day(year), day(year + 1)),
    shortDays,
  }));
}

export function shortText(days: number, say: Formatter): string {
  if (days === 0) return words.never;
  return words.short(days === 1 ? tanks.tank.oneDay : tanks.tank.days(say.number(days)));
}

export function yearsFinding(tank: TankStory, years: readonly SmallYear[], say: Formatter): string {
  const worst = [...years].sort((a, b) => b.shortDays - a.shortDays)[0];
  if (!worst || worst.shortDays === 0) return words.findingNever(tank.name);
  const days = worst.shortDays === 1 ? tanks.tank.oneDay : tanks.tank.days(say.number(worst.shortDays));
  const short = years.filter(({ shortDays }) => shortDays > 0).length;
  const ofYears = words.ofYears(say.number(short), say.number(years.length));
  return words.finding(tank.name, ofYears, String(worst.year), days);
}

/** The outline of a level in a small frame. */
export function outlineOf(
  level_L: ArrayLike<number>,
  capacity_L: number,
  width: number,
  height: number,
): string {
  const most = capacity_L > 0 ? capacity_L : 1;
  const last = Math.max(1, level_L.length - 1);
  const points = Array.from(
    level_L,
    (litres, i) =>
      `${((i / last) * width).toFixed(1)},${(height - (Math.min(litres, most) / most) * height).toFixed(1)}`,
  );
  return `M0,${height}L${points.join("L")}L${width},${height}Z`;
}

export function yearsTable({ byYear }: TankStory, say: Formatter): ChartTable {
  const [year, inflow, given, spilled, topUp, short] = words.columns;
  const show = (x: number) => say.number(x, 0);
  const volume = (name: string) => ({ name: `${name}, ${say.volumeSymbol}`, show });
  const tops = byYear.some(({ topUp_L }) => topUp_L > 0);
  return {
    columns: [
      { name: year! },
      volume(inflow!),
      volume(given!),
      volume(spilled!),
      ...(tops ? [volume(topUp!)] : []),
      { name: short!, show },
    ],
    rows: byYear.map((row) => [
      String(row.year),
      say.volume(row.inflow_L),
      say.volume(row.yield_L),
      say.volume(row.spill_L),
      ...(tops ? [say.volume(row.topUp_L)] : []),
      row.shortDays,
    ]),
  };
}
