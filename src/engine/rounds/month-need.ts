import { type BedDays, type BedState, freshState, type PreparedBed, runDays, slot } from "../bed-day.ts";
import { beginRecord, spinUpDays } from "../bed-run.ts";
import type { Calendar } from "../weather/series.ts";
import { wholeYears, type YearSpan } from "../years.ts";

/** A year's months as stretches of a record. */
export interface MonthSpan {
  month: number;
  from: number;
  to: number;
}

export interface YearOfMonths extends YearSpan {
  months: readonly MonthSpan[];
}

/** The whole calendar years of a record with their months; a record without one counts as one year as it stands. */
export function yearsOfMonths(calendar: Calendar): YearOfMonths[] {
  const whole = wholeYears(calendar);
  const spans = whole.length > 0 ? whole : [{ year: calendar.year[0]!, from: 0, to: calendar.days }];
  return spans.map((span) => ({ ...span, months: monthsOf(span, calendar) }));
}

function monthsOf({ from, to }: YearSpan, { month }: Calendar): MonthSpan[] {
  const months: MonthSpan[] = [];
  for (let i = from; i < to; i++) {
    const last = months[months.length - 1];
    if (last && last.month === month[i]) last.to = i + 1;
    else months.push({ month: month[i]!, from: i, to: i + 1 });
  }
  return months;
}

/** Sums of a bed's run, one slot for each year and month: 12 × the year's place + the month. */
export interface MonthSums {
  net_mm: Float64Array;
  stressDays: Float64Array;
}

export function blankSums(years: number): MonthSums {
  return { net_mm: new Float64Array(12 * years), stressDays: new Float64Array(12 * years) };
}

/** A bed watered to need: its months, and the state of its soil as each year begins. */
export interface NeedOfBed extends MonthSums {
  /** Half of the water in the month it was given, half in the month it was used. */
  spread_mm: Float64Array;
  /** Evapotranspiration of each year and month. */
  etc_mm: Float64Array;
  startOfYear: readonly BedState[];
  /** What it got on each day. */
  byDay_mm: Float64Array;
  /** Water missing from the roots at the end of each day. */
  depletion_mm: Float64Array;
}

/**
 * Waters a bed to need over the record and keeps its months.
 * @param open days on which it may be watered
 */
export function needByMonth(
  bed: PreparedBed,
  open: Uint8Array,
  years: readonly YearOfMonths[],
  scratch: BedDays,
): NeedOfBed {
  const days = open.length;
  const net = new Float64Array(days);
  const keep = { ...scratch, rootDepletion_mm: new Float64Array(days) };
  const state = freshState();
  if (days >= spinUpDays) runDays(bed, state, net, open, 0, spinUpDays, null);
  beginRecord(bed, state);
  const sums = blankSums(years.length);
  const startOfYear: BedState[] = [];
  let at = 0;
  years.forEach((year, k) => {
    runDays(bed, state, net, open, at, year.from, keep);
    startOfYear.push(state.slice());
    runYear(bed, state, net, open, year, k, sums, keep);
    at = year.to;
  });
  runDays(bed, state, net, open, at, days, keep);
  const depletion_mm = keep.rootDepletion_mm;
  const spread_mm = spreadOver(years, net, depletion_mm, sums);
  const etc_mm = sumsByMonth(years, keep.etc_mm);
  return { ...sums, spread_mm, etc_mm, startOfYear, byDay_mm: net, depletion_mm };
}

function sumsByMonth(years: readonly YearOfMonths[], byDay_mm: Float64Array): Float64Array {
  const sums_mm = new Float64Array(12 * years.length);
  years.forEach(({ months }, k) => {
    for (const { month, from, to } of months)
      for (let i = from; i < to; i++) sums_mm[12 * k + month]! += byDay_mm[i]!;
  });
  return sums_mm;
}

/**
 * A month's need in two halves: water as it was given, and as the roots used it after. What a refill gives in
 * one go at a month's end serves the next month; a table of fixed days has to follow the use.
 */
function spreadOver(
  years: readonly YearOfMonths[],
  net_mm: Float64Array,
  depletion_mm: Float64Array,
  given: MonthSums,
): Float64Array {
  const spread_mm = given.net_mm.map((mm) => mm / 2);
  years.forEach(({ months }, k) => {
    let stored_mm = 0;
    let storedIn = 0;
    const put = (month: number, mm: number) => {
      spread_mm[12 * k + month]! += mm / 2;
      stored_mm -= mm;
    };
    for (const { month, from, to } of months)
      for (let i = from; i < to; i++) {
        const before_mm = i > 0 ? depletion_mm[i - 1]! : 0;
        if (net_mm[i]! > 0) {
          stored_mm += net_mm[i]!;
          storedIn = month;
        }
        const used_mm = depletion_mm[i]! - before_mm + net_mm[i]!;
        if (used_mm > 0) put(month, Math.min(used_mm, stored_mm));
        else if (depletion_mm[i] === 0) put(storedIn, stored_mm);
      }
    put(storedIn, stored_mm);
  });
  return spread_mm;
}

/** Runs one year month by month and adds what each got and suffered. */
export function runYear(
  bed: PreparedBed,
  state: BedState,
  net_mm: Float64Array,
  open: Uint8Array | null,
  year: YearOfMonths,
  k: number,
  sums: MonthSums,
  keep: BedDays | null = null,
): void {
  for (const { month, from, to } of year.months) {
    const before = state[slot.stressDays]!;
    runDays(bed, state, net_mm, open, from, to, keep);
    sums.stressDays[12 * k + month]! += state[slot.stressDays]! - before;
    for (let i = from; i < to; i++) sums.net_mm[12 * k + month]! += net_mm[i]!;
  }
}

/** Years that stand for a kind of season, by their place among the whole years. */
export interface YearGroups {
  middle: readonly number[];
  /** null where the record has but one year. */
  dry: readonly number[] | null;
}

/**
 * The middle half and the driest quarter of years by what the whole site asks for, at least a year each. Ours:
 * single years would make a month's figures hang on one storm.
 */
export function yearGroups(need_L: readonly number[]): YearGroups {
  const order = need_L.map((_, k) => k).sort((a, b) => need_L[a]! - need_L[b]! || a - b);
  const count = order.length;
  if (count < 2) return { middle: order, dry: null };
  const half = Math.max(1, Math.round(count / 2));
  const from = Math.round((count - half) / 2);
  const quarter = Math.max(1, Math.round(count / 4));
  return {
    middle: order.slice(from, from + half).sort((a, b) => a - b),
    dry: order.slice(count - quarter).sort((a, b) => a - b),
  };
}

/** Mean of a month over a group of years. */
export function meanOfMonth(sums: Float64Array, group: readonly number[], month: number): number {
  return group.reduce((total, k) => total + sums[12 * k + month]!, 0) / group.length;
}
