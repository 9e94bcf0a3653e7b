import type { WeekTank } from "../../report/week-work.ts";
import { roundSources, roundSteps, roundTitles } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { assumed, measured, nameOf, opens, pageOf, pointSteps, type RoundBook, workedOut } from "./book.ts";

function tankOf({ week }: RoundBook, id: string): WeekTank | null {
  return week?.tanks.find((tank) => tank.id === id) ?? null;
}

/** Days of water left: dry, wet and middle year. */
export function daysOfWater(book: RoundBook, id: string): Working | null {
  const left = tankOf(book, id)?.daysLeft;
  if (!left || left.ofYears.length === 0) return null;
  const page = pageOf(book, roundAt.tank(id, "days"));
  const parts = left.ofYears.map(
    ({ year, days }): Part => ({ ...workedOut(days, roundSources.drain), name: roundSteps.year(year) }),
  );
  pointSteps(page, "lastingDays", "days", parts, [
    { share: 0.1, words: roundSteps.dry },
    { share: 0.9, words: roundSteps.wet },
    { share: 0.5, words: roundSteps.middle },
  ]);
  return page.sheet.done(page.at, roundTitles.days(nameOf(book, id)));
}

/** What a tank can give the beds of the week. */
export function givesThisWeek(book: RoundBook, id: string): Working | null {
  const tank = tankOf(book, id);
  if (!tank || tank.level_L === null || tank.usable_L === null) return null;
  const { sheet, at } = pageOf(book, roundAt.tank(id, "gives"));
  const { group } = book.worked.need.ready.tanks.find((one) => one.group.id === id)!;
  const usableNow = sheet.step(
    "usableNow",
    {
      levelNow: measured(tank.level_L, roundSources.dip),
      unusable: assumed(group.unusable_L, roundSources.unusable),
    },
    tank.usable_L,
  );
  sheet.step(
    "available",
    {
      usableNow,
      inflowDry: workedOut(tank.inflow_L, roundSources.tankDry),
      drawsWeek: workedOut(tank.draws_L, roundSources.middleOf),
    },
    availableIn(tank),
  );
  return sheet.done(at, roundTitles.gives(nameOf(book, id)));
}

function availableIn({ usable_L, inflow_L, draws_L }: WeekTank): number {
  return Math.max(0, (usable_L ?? 0) + inflow_L - draws_L);
}

/** What a bed gets of its tank, when those before it have theirs. */
export function rationOf(book: RoundBook, id: string, bed: string): Working | null {
  const tank = tankOf(book, id);
  const rows = tank?.rationed?.rows ?? [];
  const place = rows.findIndex((row) => row.id === bed);
  if (!tank || place < 0) return null;
  const { sheet, at } = pageOf(book, roundAt.ration(id, bed));
  const before = rows
    .slice(0, place)
    .map((row): Part => ({ ...workedOut(row.asks_L, roundSources.claim), name: nameOf(book, row.id) }));
  const askedFirst = sheet.sum(
    "askedFirst",
    roundSteps.order,
    before,
    before.reduce((sum, { value }) => sum + value, 0),
  );
  const { asks_L, fromTank_L } = rows[place]!;
  sheet.step(
    "fromTank",
    {
      asksWeek: workedOut(asks_L, roundSources.claim),
      available: opens(availableIn(tank), roundAt.tank(id, "gives")),
      askedFirst,
    },
    fromTank_L,
  );
  return sheet.done(at, roundTitles.ration(nameOf(book, bed), nameOf(book, id)));
}

/** Mains water that would keep all beds of a tank. */
export function keepsAll(book: RoundBook, id: string): Working | null {
  const rationed = tankOf(book, id)?.rationed;
  if (!rationed) return null;
  const { sheet, at } = pageOf(book, roundAt.tank(id, "keep"));
  const lacking = rationed.rows
    .filter(({ asks_L, fromTank_L }) => asks_L > fromTank_L)
    .map(({ id: bed, asks_L, fromTank_L }): Part => {
      const name = nameOf(book, bed);
      sheet.list([{ ...opens(fromTank_L, roundAt.ration(id, bed)), name: roundSteps.gets(name) }], "L");
      return { ...workedOut(asks_L - fromTank_L, roundSources.claim), name };
    });
  sheet.sum("keep_L", roundSteps.lacks, lacking, rationed.mainsToKeepAll_L);
  return sheet.done(at, roundTitles.keep(nameOf(book, id)));
}
