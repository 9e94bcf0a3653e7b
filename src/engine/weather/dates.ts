/**
 * Calendar dates as plain day numbers: days since 1970-01-01 in the proleptic Gregorian calendar.
 * A calendar day has no hour and no zone, so whole-number arithmetic is all it takes.
 */

export interface CalendarDate {
  year: number;
  /** 1–12 */
  month: number;
  /** 1–31 */
  day: number;
}

const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A leap year is one that 4 divides, unless 100 divides it and 400 does not. */
export function isLeap(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days in a month, `month` 1–12. */
export function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeap(year) ? 29 : monthLengths[month - 1]!;
}

/** Whether there is such a date: month 1–12, day within the month. */
export function isRealDate(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

/** Day number of a real date. */
export function dayNumber(year: number, month: number, day: number): number {
  const afterFebruary = month > 2 && isLeap(year) ? 1 : 0;
  return newYear(year) + daysBeforeMonth[month - 1]! + afterFebruary + day - 1;
}

/** The date of a day number. */
export function fromDay(dayNumber: number): CalendarDate {
  const year = yearOf(dayNumber);
  let day = dayNumber - newYear(year) + 1;
  let month = 1;
  for (let length = 31; day > length; length = daysInMonth(year, month)) {
    day -= length;
    month += 1;
  }
  return { year, month, day };
}

/** Day of the year, 1 to 365 or 366: FAO-56's J. */
export function dayOfYear(dayNumber: number): number {
  return dayNumber - newYear(yearOf(dayNumber)) + 1;
}

/** Day of the week, Monday 0 to Sunday 6; 1970-01-01 was a Thursday. */
export function weekday(dayNumber: number): number {
  return (((dayNumber + 3) % 7) + 7) % 7;
}

/** Reads `YYYY-MM-DD`; null where it is not of that form or there is no such date. */
export function parseIso(text: string): number | null {
  if (text.length !== 10 || text.charCodeAt(4) !== 45 || text.charCodeAt(7) !== 45) return null;
  const year = digits(text, 0, 4);
  const month = digits(text, 5, 7);
  const day = digits(text, 8, 10);
  return year >= 1 && isRealDate(year, month, day) ? dayNumber(year, month, day) : null;
}

/** Writes `YYYY-MM-DD`. */
export function formatIso(dayNumber: number): string {
  const { year, month, day } = fromDay(dayNumber);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** Days from 1970-01-01 to 1 January of the year; 719,162 days lie between the years 1 and 1970. */
function newYear(year: number): number {
  const before = year - 1;
  return (
    365 * before + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) - 719_162
  );
}

/** 400 years have 146,097 days; the guess from that mean length is off by a year at most. */
function yearOf(dayNumber: number): number {
  const guess = 1970 + Math.floor((dayNumber * 400) / 146_097);
  if (dayNumber < newYear(guess)) return guess - 1;
  return dayNumber >= newYear(guess + 1) ? guess + 1 : guess;
}

/** The number that the characters from `start` up to `end` spell; NaN where one is no digit. */
function digits(text: string, start: number, end: number): number {
  let value = 0;
  for (let at = start; at < end; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) return Number.NaN;
    value = value * 10 + digit;
  }
  return value;
}
