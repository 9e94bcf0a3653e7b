import type { MonthSums } from "../../engine/rounds/month-need.ts";
import { roundSources, roundSteps, roundTitles } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { nameOf, needOf, pageOf, type RoundBook, workedOut } from "./book.ts";

/** What whole minutes on fixed days cost a bed, over all years of the record. */
export function rounding(book: RoundBook, id: string, what: "water" | "stress"): Working | null {
  const bed = needOf(book, id);
  const table = book.worked.table.beds.find((one) => one.id === id);
  if (!bed || !table) return null;
  const { sheet, at } = pageOf(book, roundAt.rounding(id, what));
  const { years } = book.worked.table;
  const ofYears = (sums: MonthSums, name: (year: number) => string, source: string): Part[] =>
    years.map(({ year }, k) => ({
      ...workedOut(sumOfYear(what === "water" ? sums.net_mm : sums.stressDays, k), source),
      name: name(year),
    }));
  const given = ofYears(table.from.allYears, roundSteps.yearGiven, roundSources.tableRun);
  const needed = ofYears(bed.input.need, roundSteps.yearNeeded, roundSources.needRun);
  const { given_L, need_L, stressDays, needStressDays } = table.cost.allYears;
  if (what === "water") {
    if (need_L <= 0) return null;
    const netYears = sheet.sum("netYears", roundSteps.years, given, totalOf(given));
    const needYears = sheet.sum("needYears", roundSteps.years, needed, totalOf(needed));
    sheet.step("over", { netYears, needYears }, given_L / need_L - 1);
    return sheet.done(at, roundTitles.water(nameOf(book, id)));
  }
  const stressYears = sheet.sum("stressYears", roundSteps.years, given, totalOf(given));
  const stressNeed = sheet.sum("stressNeed", roundSteps.years, needed, totalOf(needed));
  const yearsCount = workedOut(years.length, roundSources.counted);
  sheet.step("stressMore", { stressYears, stressNeed, yearsCount }, stressDays - needStressDays);
  return sheet.done(at, roundTitles.stress(nameOf(book, id)));
}

/** What the rules cost a bed in a month, beside watering on any day. */
export function conflict(book: RoundBook, id: string, month: number): Working | null {
  const found = book.worked.conflicts.find((one) => one.bed === id && one.month === month);
  if (!found) return null;
  const { sheet, at } = pageOf(book, roundAt.conflict(id, month));
  sheet.step(
    "stressByRules",
    {
      stressRules: workedOut(found.bound, roundSources.needRun),
      stressFree: workedOut(found.free, roundSources.freeRun),
    },
    found.stressDays,
  );
  return sheet.done(at, roundTitles.conflict(nameOf(book, id), month));
}

function sumOfYear(sums: Float64Array, k: number): number {
  let total = 0;
  for (let month = 0; month < 12; month++) total += sums[12 * k + month]!;
  return total;
}

function totalOf(parts: readonly Part[]): number {
  return parts.reduce((sum, { value }) => sum + value, 0);
}
