import type { Frame } from "./frame.ts";

/**
 * Litres over a record: twelve calendar months, then the whole years, in one array so that adding two is one loop.
 * The months hold every day of the record; the years leave out those that are not whole.
 */
export type Tally = Float64Array;

const months = 12;

export function blankTally({ years }: Frame): Tally {
  return new Float64Array(months + years.length);
}

export function addTally(into: Tally, more: Tally): void {
  for (let k = 0; k < into.length; k++) into[k]! += more[k]!;
}

/** Adds a stretch of days to the month and the year that they belong to. */
export function addStretch(tally: Tally, month: number, year: number, litres: number): void {
  tally[month]! += litres;
  if (year >= 0) tally[months + year]! += litres;
}

/** A daily series by month and year. */
export function tallyOf(values_L: Float64Array, frame: Frame): Tally {
  const tally = blankTally(frame);
  for (const { from, to, month, year } of frame.stretches) {
    let sum_L = 0;
    for (let i = from; i < to; i++) sum_L += values_L[i]!;
    addStretch(tally, month, year, sum_L);
  }
  return tally;
}

/** Litres over the whole record. */
export function total_L(tally: Tally): number {
  let sum_L = 0;
  for (let month = 0; month < months; month++) sum_L += tally[month]!;
  return sum_L;
}

/** Litres of each whole year, in the frame's order. */
export function byYear_L(tally: Tally): Float64Array {
  return tally.subarray(months);
}

/** Litres of each calendar month in a mean year. */
export function meanMonths_L(tally: Tally, days: number): number[] {
  return Array.from(tally.subarray(0, months), (litres) => (litres / days) * 365.25);
}
