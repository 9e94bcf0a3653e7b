import { expect, test } from "vitest";
import type { Bed } from "../../../src/engine/grounds.ts";
import { holdsOn, openHours, takenBy, withinRule } from "../../../src/engine/rounds/rules.ts";
import type { Ban, RoundsBed, RoundsSite } from "../../../src/engine/rounds/site.ts";
import { parseIso } from "../../../src/engine/weather/dates.ts";

const day = (iso: string) => parseIso(iso)!;
const everyDay = Array<boolean>(7).fill(true);

const ban = (change: Partial<Ban> = {}): Ban => ({
  id: "rule",
  from: null,
  to: null,
  weekdays: everyDay,
  minutes: null,
  methods: null,
  supplies: null,
  parity: null,
  exempt: [],
  ...change,
});

const rounds = (change: Partial<RoundsBed> = {}): RoundsBed => ({
  id: "lawn",
  method: "sprinkler",
  intake_mm_h: 15,
  surfaceStorage_mm: 3,
  priority: null,
  use: "lawn",
  youngUntilDay: null,
  inPots: false,
  dryDays: [],
  dryWeekdays: Array<boolean>(7).fill(false),
  counted: [],
  tap: null,
  ownFlow_L_min: null,
  at_m: null,
  ...change,
});

const bed = (change: Partial<Bed["watering"]> = {}) =>
  ({
    id: "lawn",
    watering: { supply: "mains-only", byHand: false, allowedWeekdays: everyDay, ...change },
  }) as Bed;

const site = (change: Partial<RoundsSite> = {}): RoundsSite => ({
  beds: [],
  taps: [],
  bans: [],
  hours: [],
  ...change,
});

const stretchesOn = (iso: string, of: { site?: RoundsSite; rounds?: RoundsBed; bed?: Bed }) =>
  openHours(of.site ?? site(), [], of.rounds ?? rounds(), of.bed ?? bed(), day(iso)).stretches;

test("a rule with days of the year holds every year, past New Year too", () => {
  expect(withinRule("11-15", "02-29", day("2023-12-31"))).toBe(true);
  expect(withinRule("11-15", "02-29", day("2024-02-29"))).toBe(true);
  expect(withinRule("11-15", "02-29", day("2024-03-01"))).toBe(false);
  expect(withinRule("11-15", "02-29", day("2023-02-28"))).toBe(true);
});

test("a rule with dates holds in its own year alone", () => {
  expect(withinRule("2026-07-01", "2026-07-31", day("2026-07-31"))).toBe(true);
  expect(withinRule("2026-07-01", "2026-07-31", day("2027-07-31"))).toBe(false);
  expect(withinRule("2026-07-01", null, day("2031-01-01"))).toBe(true);
});

test("odd and even dates are those of the month", () => {
  expect(holdsOn(ban({ parity: "odd" }), day("2026-07-31"))).toBe(true);
  expect(holdsOn(ban({ parity: "odd" }), day("2026-08-01"))).toBe(true);
  expect(holdsOn(ban({ parity: "even" }), day("2026-08-02"))).toBe(true);
});

test("hours that pass midnight take the tail from the day after, even past the rule's last day", () => {
  const night = ban({ from: "05-01", to: "05-31", minutes: { from: 22 * 60, to: 5 * 60 } });
  expect(takenBy(night, day("2026-05-01"))).toEqual([{ from: 1320, to: 1440 }]);
  expect(takenBy(night, day("2026-06-01"))).toEqual([{ from: 0, to: 300 }]);
  expect(takenBy(night, day("2026-06-02"))).toEqual([]);
});

test("a sprinkler's day loses the hours that are forbidden to sprinklers, a drip line's does not", () => {
  const noMidday = site({ bans: [ban({ minutes: { from: 600, to: 1080 }, methods: ["sprinkler"] })] });
  expect(stretchesOn("2026-07-07", { site: noMidday })).toEqual([
    { from: 0, to: 600 },
    { from: 1080, to: 1440 },
  ]);
  expect(stretchesOn("2026-07-07", { site: noMidday, rounds: rounds({ method: "drip" }) })).toHaveLength(1);
});

test("an exempt bed, and one with other water, are left alone", () => {
  const total = (change: Partial<Ban>) => site({ bans: [ban(change)] });
  expect(stretchesOn("2026-07-07", { site: total({}) })).toEqual([]);
  expect(stretchesOn("2026-07-07", { site: total({ exempt: ["lawn"] }) })).toHaveLength(1);
  expect(stretchesOn("2026-07-07", { site: total({ supplies: ["tank-only"] }) })).toHaveLength(1);
});

test("a bed that must be dry is closed that day, and done by noon the day before", () => {
  const match = rounds({ dryDays: [day("2026-07-11")] });
  expect(stretchesOn("2026-07-11", { rounds: match })).toEqual([]);
  expect(stretchesOn("2026-07-10", { rounds: match })).toEqual([{ from: 0, to: 720 }]);
  expect(stretchesOn("2026-07-09", { rounds: match })).toEqual([{ from: 0, to: 1440 }]);
});

test("what is done by hand keeps to the hours when somebody is there; a timer does not", () => {
  const weekdaysOnly = everyDay.map((_, k) => k < 5);
  const staffed = site({ hours: [{ weekdays: weekdaysOnly, fromMinute: 420, toMinute: 960 }] });
  expect(stretchesOn("2026-07-10", { site: staffed, bed: bed({ byHand: true }) })).toEqual([
    { from: 420, to: 960 },
  ]);
  expect(stretchesOn("2026-07-11", { site: staffed, bed: bed({ byHand: true }) })).toEqual([]);
  expect(stretchesOn("2026-07-11", { site: staffed })).toEqual([{ from: 0, to: 1440 }]);
});

test("nobody waters by hand in an absence without a carer, and the day says why", () => {
  const absence = { from: "12-20", to: "01-03", hasCarer: false };
  const byHand = bed({ byHand: true });
  const closed = openHours(site(), [absence], rounds(), byHand, day("2027-01-01"));
  expect(closed.stretches).toEqual([]);
  expect(closed.closedBy).toEqual([{ code: "nobody-there" }]);
  const cared = openHours(site(), [{ ...absence, hasCarer: true }], rounds(), byHand, day("2027-01-01"));
  expect(cared.closedBy).toEqual([]);
});
