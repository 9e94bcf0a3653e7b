import { expect, test } from "vitest";
import { coolHours, proposedHours } from "../../../src/engine/rounds/cool-hours.ts";
import { nextTurn } from "../../../src/engine/rounds/holiday.ts";
import { orderOf, ration } from "../../../src/engine/rounds/ration.ts";
import type { RoundsBed } from "../../../src/engine/rounds/site.ts";
import { parseIso } from "../../../src/engine/weather/dates.ts";

const day = parseIso("2026-07-06")!;
const bed = (id: string, change: Partial<RoundsBed>) =>
  ({ id, priority: null, use: "flowers", youngUntilDay: null, ...change }) as RoundsBed;

test("young plants go first, then food, trees, shrubs, flowers, and lawn last", () => {
  const beds = [
    bed("lawn", { use: "lawn" }),
    bed("border", { use: "flowers" }),
    bed("hedge", { use: "shrubs" }),
    bed("oak", { use: "trees" }),
    bed("beans", { use: "food" }),
    bed("new", { use: "lawn", youngUntilDay: day }),
  ];
  expect(orderOf(beds, day).map(({ id }) => id)).toEqual(["new", "beans", "oak", "hedge", "border", "lawn"]);
  expect(
    orderOf(beds, day + 1)
      .map(({ id }) => id)
      .slice(-2),
  ).toEqual(["lawn", "new"]);
});

test("the site's own order stands before ours, and says so", () => {
  const order = orderOf([bed("beans", { use: "food" }), bed("pitch", { use: "lawn", priority: 1 })], day);
  expect(order).toEqual([
    { id: "pitch", reason: "site-order" },
    { id: "beans", reason: "food" },
  ]);
});

test("a ration closes: what is asked is given from the tank, from the mains, or short", () => {
  const { rows, mainsToKeepAll_L } = ration(1000, [
    { id: "a", asks_L: 700, hasMains: false },
    { id: "b", asks_L: 500, hasMains: true },
    { id: "c", asks_L: 200, hasMains: false },
  ]);
  expect(rows.map(({ fromTank_L }) => fromTank_L)).toEqual([700, 300, 0]);
  expect(rows.map(({ fromMains_L }) => fromMains_L)).toEqual([0, 200, 0]);
  expect(rows.map(({ short_L }) => short_L)).toEqual([0, 0, 200]);
  expect(mainsToKeepAll_L).toBe(400);
});

const summer = {
  dawn_min: 290,
  sunrise_min: 325,
  sunset_min: 1270,
  dusk_min: 1305,
  midnight_min: 80,
  polar: null,
};

test("the cool hours lie about dawn, then about dusk", () => {
  const [morning, evening] = coolHours(summer, 30);
  expect(morning).toEqual({ from: 230, to: 445 });
  expect(evening).toEqual({ from: 1210, to: 1365 });
  expect(proposedHours([{ from: 0, to: 1440 }], summer, 30)).toEqual([morning]);
  expect(proposedHours([{ from: 600, to: 1440 }], summer, 30)).toEqual([evening]);
  expect(proposedHours([{ from: 600, to: 900 }], summer, 30)).toEqual([{ from: 600, to: 900 }]);
});

test("a long watering begins earlier, so that it ends by the same hour", () => {
  expect(coolHours(summer, 400)[0]).toEqual({ from: 45, to: 445 });
});

test("the polar day is coolest when the sun is lowest; the polar night at any hour", () => {
  const none = { dawn_min: null, sunrise_min: null, sunset_min: null, dusk_min: null };
  expect(coolHours({ ...none, midnight_min: 20, polar: "day" }, 60)).toEqual([{ from: 0, to: 200 }]);
  expect(coolHours({ ...none, midnight_min: 20, polar: "night" }, 60)).toEqual([{ from: 0, to: 1440 }]);
});

test("an absence over New Year is found from either side of it", () => {
  const winter = { from: "12-20", to: "01-03" };
  const turn = { fromDay: parseIso("2026-12-20"), toDay: parseIso("2027-01-03") };
  expect(nextTurn(winter, parseIso("2026-07-01")!)).toEqual(turn);
  expect(nextTurn(winter, parseIso("2027-01-02")!)).toEqual(turn);
  expect(nextTurn({ from: "2026-03-01", to: "2026-03-08" }, day)).toBeNull();
  expect(nextTurn({ from: "02-29", to: "03-05" }, parseIso("2027-01-15")!)).toEqual({
    fromDay: parseIso("2027-02-28"),
    toDay: parseIso("2027-03-05"),
  });
});
