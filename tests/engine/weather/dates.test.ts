import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dayNumber,
  dayOfYear,
  daysInMonth,
  formatIso,
  fromDay,
  isLeap,
  isRealDate,
  parseIso,
  weekday,
} from "../../../src/engine/weather/dates.ts";

const anyDay = fc.integer({ min: dayNumber(1, 1, 1), max: dayNumber(9999, 12, 31) });

describe("calendar days", () => {
  it("agree with the platform's own UTC calendar from year 1 to 9999", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const date = new Date(day * 86_400_000);
        expect(fromDay(day)).toEqual({
          year: date.getUTCFullYear(),
          month: date.getUTCMonth() + 1,
          day: date.getUTCDate(),
        });
        expect(weekday(day)).toBe((date.getUTCDay() + 6) % 7);
        expect(formatIso(day)).toBe(date.toISOString().slice(0, 10));
      }),
      { numRuns: 2000 },
    );
  });

  it("come back from date and text", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const { year, month, day: dayOfMonth } = fromDay(day);
        expect(dayNumber(year, month, dayOfMonth)).toBe(day);
        expect(parseIso(formatIso(day))).toBe(day);
        expect(dayOfYear(day)).toBe(day - dayNumber(year, 1, 1) + 1);
      }),
    );
  });

  it("run on without a break over the four centuries of a cycle", () => {
    const first = dayNumber(1800, 1, 1);
    let next = first;
    let broken = 0;
    for (let year = 1800; year < 2200; year++)
      for (let month = 1; month <= 12; month++)
        for (let day = 1; day <= daysInMonth(year, month); day++)
          if (dayNumber(year, month, day) !== next++) broken++;
    expect(broken).toBe(0);
    expect(next - first).toBe(146_097);
  });

  it("know leap years", () => {
    expect([1900, 2000, 2012, 2015, 2100].map(isLeap)).toEqual([false, true, true, false, false]);
    expect(isRealDate(2013, 2, 29)).toBe(false);
    expect(dayOfYear(dayNumber(2012, 12, 31))).toBe(366);
  });

  it("are numbered as FAO-56 numbers them: 3 September is day 246, 6 July day 187 (examples 8 and 18)", () => {
    expect(dayOfYear(dayNumber(2001, 9, 3))).toBe(246);
    expect(dayOfYear(dayNumber(2001, 7, 6))).toBe(187);
  });

  it.each([
    "2012-1-01",
    "2012-02-30",
    "2012-13-01",
    "20120101",
    "2012-01-01T00:00",
    "0000-01-01",
    "2O12-01-01",
    "",
  ])("refuse %j as an ISO date", (text) => expect(parseIso(text)).toBeNull());
});
