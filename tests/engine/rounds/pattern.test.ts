import { expect, test } from "vitest";
import {
  datePatterns,
  everyDays,
  fallsOn,
  longestWait,
  type Pattern,
  spreadWeekdays,
  timesInMonth,
  weeklyPatterns,
} from "../../../src/engine/rounds/pattern.ts";

const every = Array<boolean>(7).fill(true);
const named = (days: readonly boolean[]) =>
  ["mon", "tue", "wed", "thu", "fri", "sat", "sun"].filter((_, k) => days[k]).join(" ");

test("days of the week are spread as widely as the open ones let them be", () => {
  expect(named(spreadWeekdays(every, 2))).toBe("mon thu");
  expect(named(spreadWeekdays(every, 3))).toBe("mon wed fri");
  const monWedFriSat = [true, false, true, false, true, true, false];
  expect(longestWait(spreadWeekdays(monWedFriSat, 2))).toBe(4);
  expect(named(spreadWeekdays(monWedFriSat, 4))).toBe("mon wed fri sat");
});

test("no pattern uses a day that is closed", () => {
  for (let bits = 0; bits < 128; bits++) {
    const open = every.map((_, k) => (bits & (1 << k)) > 0);
    for (const pattern of weeklyPatterns(open))
      for (let date = 1; date <= 31; date++)
        for (let weekday = 0; weekday < 7; weekday++)
          if (fallsOn(pattern, weekday, date)) expect(open[weekday]).toBe(true);
  }
});

test("patterns go from the rarest to the oftenest", () => {
  const times = weeklyPatterns(every).map(timesInMonth);
  expect(times).toEqual([...times].sort((a, b) => a - b));
  expect(times).toHaveLength(9);
});

test("the first and third Monday come twice in every month", () => {
  const pattern: Pattern = { kind: "turns", weekday: 0, turns: [1, 3] };
  for (let firstWeekday = 0; firstWeekday < 7; firstWeekday++) {
    const dates = Array.from({ length: 31 }, (_, k) => k + 1).filter((date) =>
      fallsOn(pattern, (firstWeekday + date - 1) % 7, date),
    );
    expect(dates).toHaveLength(2);
    expect(dates[1]! - dates[0]!).toBe(14);
  }
});

test("dates keep to odd or even ones", () => {
  for (const parity of ["odd", "even"] as const)
    for (const pattern of datePatterns(parity)) {
      const dates = pattern.kind === "dates" ? pattern.dates : [];
      expect(dates.length).toBeGreaterThan(0);
      for (const date of dates) expect(date % 2).toBe(parity === "odd" ? 1 : 0);
    }
  expect(datePatterns("even").map(timesInMonth)).toEqual([1, 2, 3, 4, 5, 8, 15]);
});

test("the mean interval belongs to the pattern", () => {
  expect(everyDays({ kind: "none" })).toBeNull();
  expect(everyDays({ kind: "week", weekdays: every })).toBe(1);
  expect(everyDays({ kind: "week", weekdays: spreadWeekdays(every, 2) })).toBe(3.5);
  expect(everyDays({ kind: "turns", weekday: 0, turns: [1, 3] })).toBe(15.2);
});
