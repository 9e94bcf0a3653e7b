import type { Trial } from "../../src/report/tank-trial.ts";
import type { TankStory } from "../../src/report/tanks-view.ts";
import type { TankView } from "../../src/report/view.ts";
import { tanks } from "../../src/words/en/tanks.ts";
import type { Formatter } from "../../src/words/format.ts";
import { daysText } from "../../src/words/tanks-spoken.ts";

const words = tanks.trial;
const MS_PER_DAY = 86_400_000;

/** Where the two rulers stand. */
export interface Setting {
  capacity_L: number;
  roof_m2: number;
}

export function settingOf({ capacity_L, roof_m2 }: TankStory): Setting {
  return { capacity_L, roof_m2 };
}

/** The tank tried, as its drawing takes it: the days of the year asked for. */
export function triedView(tank: TankStory, trial: Trial): TankView {
  const { capacity_L, firstDay, level_L, spill_L, short } = trial;
  return { ...tank, capacity_L, firstDay, level_L, spill_L, short };
}

/** The level of a year as it is. */
export function levelOf({ level_L, firstDay }: TankStory, year: number | null): number[] {
  if (year === null) return Array.from(level_L.subarray(0, 366));
  const day = (y: number) => Math.max(0, Date.UTC(y, 0, 1) / MS_PER_DAY - firstDay);
  return Array.from(level_L.subarray(day(year), day(year + 1)));
}

/** What the tank would do at that size, beside what it does. */
export function triedSentence(tank: TankStory, trial: Trial, say: Formatter): string {
  const more_L = trial.yield_L_year - tank.yield_L_year;
  const near_L = Math.max(1, 0.001 * tank.yield_L_year);
  const gives = words.gives(
    say.litres(trial.capacity_L),
    say.area(trial.roof_m2),
    say.litres(trial.yield_L_year),
  );
  const change =
    Math.abs(more_L) < near_L
      ? words.same
      : (more_L > 0 ? words.more : words.less)(say.litres(Math.abs(more_L)));
  return `${gives}${change}${shortWords(trial.shortDays_year, tank.shortDays_year, say)}.`;
}

function shortWords(days: number, before: number, say: Formatter): string {
  const [now, then] = [daysText(days, say), daysText(before, say)];
  if (days === 0) return before === 0 ? words.neverAsNow : words.neverShort(then);
  return now === then ? words.shortSame(now) : words.short(now, then);
}

/** The heading of the drawing: short, so that it keeps to its line while a ruler moves. */
export function trialFinding(trial: Trial, say: Formatter): string {
  const short = trial.short.reduce((sum, each) => sum + each, 0);
  const [size, year] = [say.litres(trial.capacity_L), trial.year === null ? "" : String(trial.year)];
  return short === 0 ? words.foundNever(size, year) : words.found(size, daysText(short, say), year);
}
