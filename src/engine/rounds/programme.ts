import { grossFromNet_L } from "../watering.ts";
import { costOf, runFit } from "./cost.ts";
import type { FixedMonth } from "./fixed-run.ts";
import type { FitInput } from "./month-fit.ts";
import { meanOfMonth } from "./month-need.ts";
import { longestWait, type Pattern, spreadWeekdays } from "./pattern.ts";
import { minutesFor, minutesWithin, netOf_mm } from "./run-time.ts";
import type { BedNeed, RoundsNeed, TableCost } from "./table.ts";

/** A setting of a simple timer: the same days for every bed, whole minutes each, and a percentage by month. */
export interface Programme {
  /** Times of the day at which the whole list is run; each gives a part of the minutes. */
  startTimes: number;
  weekdays: readonly boolean[];
  /** 0–200 in steps of ten; 0 is off. */
  percentByMonth: readonly number[];
  /** What all beds ask for in each month, mean over the middle years; the largest is 100 %. */
  litresByMonth: readonly number[];
  /** Days of a mean year that count as one each at 100 %, and in part below. */
  fullDays: number;
  beds: readonly ProgrammeBed[];
}

export interface ProgrammeBed {
  id: string;
  /** Minutes of one day in a month of 100 %, all start times together. */
  minutes: number;
  /** Minutes of a mean year that the bed asks for. */
  asked_min: number;
  /** Longest run of a day, by hours and method. */
  most_min: number;
  cost: TableCost;
}

const step_pct = 10;
const month_days = 365.25 / 12;

/**
 * The programme of few entries that costs least: for one to seven days a week, minutes from each bed's thirstiest
 * month and percentages from what all ask for together, run through the engine over the middle years.
 * @param mostStarts start times that the timer has
 * @returns null where no bed is watered on any day that all have in common
 */
export function programmeFor(
  need: RoundsNeed,
  beds: readonly BedNeed[],
  mostStarts: number,
): Programme | null {
  if (beds.length === 0) return null;
  const common = Array.from({ length: 7 }, (_, day) => beds.every((bed) => isOpenWeekday(bed.input, day)));
  const most = common.filter(Boolean).length;
  const tried = Array.from({ length: most }, (_, k) =>
    withDays(need, beds, spreadWeekdays(common, k + 1), mostStarts),
  );
  return tried.reduce<Programme | null>(
    (best, next) => (!best || burden(next) < burden(best) ? next : best),
    null,
  );
}

/** Whether a weekday is open to a bed in most weeks. */
function isOpenWeekday({ open, calendar }: FitInput, weekday: number): boolean {
  let all = 0;
  let isOpen = 0;
  for (let i = 0; i < open.length; i++) {
    if (calendar.weekday[i] !== weekday) continue;
    all++;
    isOpen += open[i]!;
  }
  return all > 0 && isOpen / all > 0.5;
}

function withDays(
  need: RoundsNeed,
  beds: readonly BedNeed[],
  weekdays: readonly boolean[],
  mostStarts: number,
): Programme {
  const group = need.groups.middle;
  const times = (weekdays.filter(Boolean).length * month_days) / 7;
  const wanted = beds.map(({ input }) =>
    Array.from({ length: 12 }, (_, month) =>
      minutesFor(input.bed.bed, meanOfMonth(input.need.spread_mm, group, month)),
    ),
  );
  const litresByMonth = sharedLitres(beds, wanted);
  const percentByMonth = sharedPercents(litresByMonth);
  const fullDays = percentByMonth.reduce((sum, percent) => sum + (times * percent) / 100, 0);
  const rows = beds.map((bed, k): ProgrammeBed => {
    const { input } = bed;
    const asked_min = wanted[k]!.reduce((sum, minutes) => sum + minutes, 0);
    const most_min = Math.min(...input.choices.map(({ mostMinutes }) => mostMinutes));
    const isGiven = fullDays > 0 && asked_min > 0;
    const minutes = isGiven ? Math.max(1, Math.min(most_min, Math.round(asked_min / fullDays))) : 0;
    const cost = costOfBed(bed, weekdays, percentByMonth, minutes, group);
    return { id: input.bed.bed.id, minutes, asked_min, most_min, cost };
  });
  const cycles = Math.max(
    ...beds.map((bed, k) => Math.ceil(rows[k]!.minutes / minutesWithin(bed.input.bed.bed, bed.rounds, 1))),
  );
  return {
    startTimes: Math.max(1, Math.min(mostStarts, cycles)),
    weekdays,
    percentByMonth,
    litresByMonth,
    fullDays,
    beds: rows,
  };
}

/** Each month's water, all beds together. */
function sharedLitres(beds: readonly BedNeed[], wanted: readonly (readonly number[])[]): number[] {
  return Array.from({ length: 12 }, (_, month) =>
    beds.reduce((sum, { input }, k) => sum + wanted[k]![month]! * input.bed.bed.watering.flow_L_min, 0),
  );
}

/** Each month's water beside the thirstiest month's, in tens. */
function sharedPercents(litres: readonly number[]): number[] {
  const peak = Math.max(...litres);
  return litres.map((month) => (peak > 0 ? step_pct * Math.round((100 * month) / peak / step_pct) : 0));
}

function costOfBed(
  { input }: BedNeed,
  weekdays: readonly boolean[],
  percentByMonth: readonly number[],
  minutes: number,
  group: readonly number[],
): TableCost {
  const { bed } = input.bed;
  const pattern: Pattern = { kind: "week", weekdays };
  const months = percentByMonth.map((percent, month): FixedMonth => {
    const run = Math.min(input.choices[month]!.mostMinutes, (minutes * percent) / 100);
    return {
      pattern,
      minutes: run,
      exact_min: run,
      spares: 1,
      net_mm: netOf_mm(bed, run),
      leaveAfterRain_mm: null,
    };
  });
  const cost = costOf(input.need, runFit(input, months, group), group);
  const litres = (net_mm: number) => grossFromNet_L(net_mm, bed.area_m2, bed.watering.efficiency);
  return {
    need_L: litres(cost.need_mm),
    given_L: litres(cost.given_mm),
    needStressDays: cost.needStressDays,
    stressDays: cost.stressDays,
  };
}

/** Water beyond need over all, a hundredth a bed's mean extra day of stress, a little for each day's round. */
function burden({ beds, weekdays }: Programme): number {
  const need_L = beds.reduce((sum, { cost }) => sum + cost.need_L, 0);
  const over_L = beds.reduce((sum, { cost }) => sum + Math.max(0, cost.given_L - cost.need_L), 0);
  const stress = beds.reduce((sum, { cost }) => sum + Math.max(0, cost.stressDays - cost.needStressDays), 0);
  const rounds = weekdays.filter(Boolean).length / (100 * longestWait(weekdays));
  return (need_L > 0 ? over_L / need_L : 0) + (0.01 * stress) / beds.length + rounds / 100;
}
