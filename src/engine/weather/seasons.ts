import { daysInMonth } from "./dates.ts";

/** A year's course of daily values. */
export type Course = (month: number, day: number, daysOfMonth: number) => number;

const anyCommonYear = 2001;

/**
 * Daily values on straight lines between mid-months, whose calendar months have the twelve means given:
 * the mid-month values are solved for, since lines through the means themselves would cut every peak off.
 * @param means January first
 * @returns the value on a day; `month` and `day` from 1
 * @source Sheng and Zwiers (1998), Climate Dynamics 14:609-613, here with each month's own length
 */
export function smoothCourse(means: readonly number[]): Course {
  const knots = midMonthValues(means);
  return (month, day, daysOfMonth) => {
    const at = (day - 0.5) / daysOfMonth - 0.5;
    const own = knots[month - 1]!;
    const other = knots[(month + (at < 0 ? 10 : 12)) % 12]!;
    return own + Math.abs(at) * (other - own);
  };
}

/** As `smoothCourse`, or the months' means as steps where its lines would pass below zero. */
export function positiveCourse(means: readonly number[]): Course {
  if (midMonthValues(means).some((value) => value < 0)) return (month) => means[month - 1]!;
  return smoothCourse(means);
}

/** Solves (1 − 2 w_m) x_m + w_m (x_{m−1} + x_{m+1}) = mean_m, w_m the mean share of a neighbour over the month. */
function midMonthValues(means: readonly number[]): number[] {
  const weights = means.map((_, m) => neighbourShare(daysInMonth(anyCommonYear, m + 1)));
  let values = [...means];
  // Gauss-Seidel: the diagonal outweighs the rest three to one, so 60 rounds leave nothing to gain.
  for (let round = 0; round < 60; round++) {
    for (let m = 0; m < 12; m++) {
      const neighbours = values[(m + 11) % 12]! + values[(m + 1) % 12]!;
      values = values.with(m, (means[m]! - weights[m]! * neighbours) / (1 - 2 * weights[m]!));
    }
  }
  return values;
}

/** Mean over a month's days of the share that the one neighbour's mid-month value has. */
function neighbourShare(daysOfMonth: number): number {
  let sum = 0;
  for (let day = 1; day <= daysOfMonth; day++) sum += Math.max(0, (day - 0.5) / daysOfMonth - 0.5);
  return sum / daysOfMonth;
}
