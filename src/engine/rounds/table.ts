import { blankDays } from "../bed-run.ts";
import { bedRoots } from "../plants.ts";
import type { ReadyBed, ReadyGrounds } from "../prepare.ts";
import { grossFromNet_L } from "../watering.ts";
import { type Cost, costOf, runFit } from "./cost.ts";
import { fitTable } from "./fit.ts";
import type { FixedMonth } from "./fixed-run.ts";
import type { FitInput, MonthChoices } from "./month-fit.ts";
import {
  type MonthSums,
  meanOfMonth,
  needByMonth,
  type YearGroups,
  type YearOfMonths,
  yearGroups,
  yearsOfMonths,
} from "./month-need.ts";
import { openMinutesByDay, recordRules } from "./open-record.ts";
import { datePatterns, type Pattern, weeklyPatterns } from "./pattern.ts";
import { speaksOf } from "./rules.ts";
import { minutesWithin, type RunTime, runTime, wettedDepth_m } from "./run-time.ts";
import { minutesOfDay, type RoundsBed, type RoundsSite } from "./site.ts";

/** More cycles than this in one watering, and it is watered more often instead where it can be. Ours. */
const comfortableCycles = 4;

/** A bed's watering in one month of the table. */
export interface BedMonth extends RunTime {
  pattern: Pattern;
  /** Minutes before they were made whole. */
  exact_min: number;
  /** Part of the watering's water beyond the usual rain that spares it. */
  spares: number;
  /** Depth of soil that a watering wets. */
  wetted_m: number;
  /** Rain in the gauge since the last day of the round from which it is left out; null: rain does not count. */
  leaveAfterRain_mm: number | null;
  /** Litres of the whole month, mean over the years it was made for. */
  month_L: number;
}

/** What a bed's table costs beside watering to need; litres and days, means a year. */
export interface TableCost {
  need_L: number;
  given_L: number;
  needStressDays: number;
  stressDays: number;
}

export interface BedTable {
  id: string;
  middle: readonly BedMonth[];
  /** null where the record has one year. */
  dry: readonly BedMonth[] | null;
  cost: { middle: TableCost; dry: TableCost | null; allYears: TableCost };
  /** What the figures came from, by the same names. */
  from: { middle: TableFrom; dry: TableFrom | null; allYears: MonthSums };
}

/** What a table was fitted to, and what it gave in each year and month. */
export interface TableFrom {
  wanted_mm: readonly number[];
  sums: MonthSums;
}

export interface RoundsTable {
  years: readonly YearOfMonths[];
  groups: YearGroups;
  beds: readonly BedTable[];
}

/** A bed watered to need within its rules, kept for what else is worked out from it. */
export interface BedNeed {
  ready: ReadyBed;
  rounds: RoundsBed;
  input: FitInput;
}

export interface RoundsNeed {
  site: RoundsSite;
  ready: ReadyGrounds;
  years: readonly YearOfMonths[];
  groups: YearGroups;
  beds: readonly BedNeed[];
}

/** Waters every bed to need on the days that its rules leave, over the record. */
export function roundsNeed(ready: ReadyGrounds, site: RoundsSite): RoundsNeed {
  const { calendar } = ready.weather;
  const rules = recordRules(site, calendar);
  const years = yearsOfMonths(calendar);
  const scratch_mm = new Float64Array(calendar.days);
  const scratchDays = blankDays(calendar.days);
  const rain_mm_day = rainByMonth_mm_day(ready.weather.rain_mm, calendar.month);
  const beds = ready.beds.map((bed, k): BedNeed => {
    const rounds = site.beds[k]!;
    const minutes = openMinutesByDay(rules, rounds, bed.grown.bed);
    const open = bed.open.map((isOpen, i) => (isOpen && minutes[i]! > 0 ? 1 : 0));
    return {
      ready: bed,
      rounds,
      input: {
        bed: bed.grown,
        open,
        calendar,
        years,
        need: needByMonth(bed.grown, open, years, scratchDays),
        choices: monthChoices(bed, rounds, site, minutes, calendar.month, calendar.weekday),
        rain_mm_day: rain_mm_day.map((mm) => mm * bed.grown.bed.rainShare),
        scratch_mm,
      },
    };
  });
  return { site, ready, years, groups: yearGroups(siteNeed_L(beds, years.length)), beds };
}

/** Mean rain of a day of each month. */
function rainByMonth_mm_day(rain_mm: Float64Array, month: Uint8Array): number[] {
  const sums = new Float64Array(12);
  const days = new Float64Array(12);
  for (let i = 0; i < rain_mm.length; i++) {
    sums[month[i]!]! += rain_mm[i]!;
    days[month[i]!]!++;
  }
  return Array.from(sums, (sum, m) => (days[m]! > 0 ? sum / days[m]! : 0));
}

/** What the site's beds ask for in each year, litres; beds that nobody waters stand aside. */
function siteNeed_L(beds: readonly BedNeed[], years: number): number[] {
  return Array.from({ length: years }, (_, k) =>
    beds.reduce((total, { ready, input }) => {
      const { bed } = ready.grown;
      if (bed.watering.supply === "none") return total;
      let net_mm = 0;
      for (let month = 0; month < 12; month++) net_mm += input.need.net_mm[12 * k + month]!;
      return total + grossFromNet_L(net_mm, bed.area_m2, bed.watering.efficiency);
    }, 0),
  );
}

/** The days and minutes that each month's rules leave. A weekday counts as open where half its dates are. */
function monthChoices(
  { grown: { bed } }: ReadyBed,
  rounds: RoundsBed,
  site: RoundsSite,
  minutes: Uint16Array,
  month: Uint8Array,
  weekday: Uint8Array,
): MonthChoices[] {
  const open = new Float64Array(84);
  const all = new Float64Array(84);
  const most = new Float64Array(12).fill(Number.POSITIVE_INFINITY);
  for (let i = 0; i < minutes.length; i++) {
    const at = 7 * month[i]! + weekday[i]!;
    all[at]!++;
    if (minutes[i] === 0) continue;
    open[at]!++;
    most[month[i]!] = Math.min(most[month[i]!]!, minutes[i]!);
  }
  const parity = site.bans.find(
    (ban) => ban.parity !== null && ban.minutes === null && speaksOf(ban, rounds, bed),
  )?.parity;
  return Array.from({ length: 12 }, (_, m) => {
    const share = Array.from({ length: 7 }, (_, d) => open[7 * m + d]! / Math.max(1, all[7 * m + d]!));
    const always = share.every((s) => s > 0.95);
    const byDates = parity !== undefined && parity !== null && !always && share.every((s) => s > 0.3);
    const patterns = byDates
      ? datePatterns(parity === "odd" ? "even" : "odd")
      : weeklyPatterns(share.map((s) => s >= 0.5));
    return {
      patterns,
      mostMinutes: Math.min(bed.watering.maxMinutes, most[m]!, minutesOfDay),
      comfortable_min: minutesWithin(bed, rounds, comfortableCycles),
    };
  });
}

/** The month table of every bed, fitted for the middle and the dry years and run over all. */
export function roundsTable(need: RoundsNeed): RoundsTable {
  const { years, groups } = need;
  return { years, groups, beds: need.beds.map((bed) => bedTable(bed, groups, need.beds.length)) };
}

function bedTable({ ready, rounds, input }: BedNeed, groups: YearGroups, beds: number): BedTable {
  const { bed } = ready.grown;
  const litres = litresOf(ready);
  const all = input.years.map((_, k) => k);
  const fitted = (group: readonly number[], judged: readonly number[]) => {
    const { months, cost, sums, wanted_mm } = fitTable(input, { group, judged, beds });
    return {
      months,
      from: { wanted_mm, sums },
      cost: litres(cost),
      rows: months.map((row, m) => bedMonth(input, rounds, row, m, sums, group)),
    };
  };
  const rest = all.filter((k) => !groups.dry?.includes(k));
  const middle = fitted(groups.middle, rest);
  const dry = groups.dry && fitted(groups.dry, groups.dry);
  const both = runFit(input, middle.months, rest);
  if (dry) addTo(both, runFit(input, dry.months, groups.dry!));
  const everyYear = costOf(input.need, both, all);
  return {
    id: bed.id,
    middle: middle.rows,
    dry: dry?.rows ?? null,
    cost: { middle: middle.cost, dry: dry?.cost ?? null, allYears: litres(everyYear) },
    from: { middle: middle.from, dry: dry?.from ?? null, allYears: both },
  };
}

function addTo(sums: MonthSums, more: MonthSums): void {
  for (let at = 0; at < sums.net_mm.length; at++) {
    sums.net_mm[at]! += more.net_mm[at]!;
    sums.stressDays[at]! += more.stressDays[at]!;
  }
}

function litresOf({ grown: { bed } }: ReadyBed): (cost: Cost) => TableCost {
  const litres = (net_mm: number) => grossFromNet_L(net_mm, bed.area_m2, bed.watering.efficiency);
  return ({ need_mm, given_mm, needStressDays, stressDays }) => ({
    need_L: litres(need_mm),
    given_L: litres(given_mm),
    needStressDays,
    stressDays,
  });
}

function bedMonth(
  { bed: prepared }: FitInput,
  rounds: RoundsBed,
  { pattern, minutes, exact_min, spares, leaveAfterRain_mm }: FixedMonth,
  month: number,
  sums: MonthSums,
  group: readonly number[],
): BedMonth {
  const { bed } = prepared;
  const run = runTime(bed, rounds, minutes);
  const { rootDepth_m } = bedRoots(bed);
  return {
    ...run,
    pattern,
    exact_min,
    spares,
    wetted_m: minutes > 0 ? wettedDepth_m(run.net_mm, prepared.trigger_mm, rootDepth_m) : 0,
    leaveAfterRain_mm,
    month_L: grossFromNet_L(meanOfMonth(sums.net_mm, group, month), bed.area_m2, bed.watering.efficiency),
  };
}
