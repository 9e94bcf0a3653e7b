import { mostDose_mm, timesOpen } from "../../engine/rounds/month-fit.ts";
import { meanOfMonth } from "../../engine/rounds/month-need.ts";
import { minutesFor, netOf_mm } from "../../engine/rounds/run-time.ts";
import { roundNotes, roundSources, roundSteps } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Working } from "../working.ts";
import { methodInputs, type RoundBook, triggerInput, workedOut } from "./book.ts";
import { type MonthRow, rowDone, sameRow } from "./month-row.ts";

/** How deep a watering of the month should be, before its minutes are made whole. */
export function askedDepth(book: RoundBook, of: MonthRow): Working | null {
  const { bed, month, row, from, group, sheet } = of;
  const { input } = bed;
  const { pattern, exact_min } = row;
  if (row.minutes === 0) return null;
  const choices = input.choices[month]!;
  const times = timesOpen(input, group, month, pattern);
  const asked_mm = netOf_mm(input.bed.bed, exact_min);
  const dose_mm = mostDose_mm(input.bed, choices);
  const inputs = {
    trigger: triggerInput(bed),
    mostRun: workedOut(netOf_mm(input.bed.bed, choices.mostMinutes), roundSources.hours),
  };
  const comfortNet = netOf_mm(input.bed.bed, choices.comfortable_min);
  const dose = Number.isFinite(comfortNet)
    ? sheet.step("doseInRuns", { ...inputs, comfortNet: workedOut(comfortNet, roundSources.hours) }, dose_mm)
    : sheet.step("dose", inputs, dose_mm);
  const wanted_mm = from.wanted_mm[month]!;
  const shared_mm = Math.min(dose_mm, wanted_mm / times);
  const netWanted = sheet.step(
    "netWanted",
    {
      dose,
      wanted: workedOut(wanted_mm, roundSources.needRun),
      times: workedOut(times, roundSources.pattern),
    },
    shared_mm,
  );
  sheet.step(
    "netAsked",
    { netWanted, mending: workedOut(asked_mm / shared_mm, roundSources.rerun) },
    asked_mm,
  );
  sheet.note(roundNotes.search, roundSources.rerun, {
    provenance: "worked-out",
    at: roundAt.rounding(of.id, "water"),
  });
  return rowDone(book, of, "asked");
}

/** Whole minutes from depth, area, flow and efficiency. */
export function minutes(book: RoundBook, of: MonthRow): Working | null {
  const { bed, row, month, sheet } = of;
  if (row.minutes === 0) return null;
  const { bed: prepared, choices } = bed.input;
  const asked_mm = netOf_mm(prepared.bed, row.exact_min);
  const minutesExact = sheet.step(
    "minutesExact",
    { netAsked: sameRow(of, "asked", asked_mm), ...methodInputs(bed) },
    minutesFor(prepared.bed, asked_mm),
  );
  const longest = Math.max(1, Math.floor(choices[month]!.mostMinutes));
  sheet.step(
    "plannedMinutes",
    { longestDay_min: workedOut(longest, roundSources.hours), minutesExact },
    row.minutes,
  );
  return rowDone(book, of, "minutes");
}

/** The depth that the roots get of the whole minutes. */
export function net(book: RoundBook, of: MonthRow): Working | null {
  const { bed, row, sheet } = of;
  if (row.minutes === 0) return null;
  sheet.step(
    "netGiven",
    { plannedMinutes: sameRow(of, "minutes", row.minutes), ...methodInputs(bed) },
    row.net_mm,
  );
  return rowDone(book, of, "net");
}

/** Litres of one watering. */
export function litres(book: RoundBook, of: MonthRow): Working | null {
  const { bed, row, sheet } = of;
  if (row.minutes === 0) return null;
  const { flow } = methodInputs(bed);
  sheet.step("wateringLitres", { plannedMinutes: sameRow(of, "minutes", row.minutes), flow }, row.litres);
  return rowDone(book, of, "litres");
}

/** Litres of the month, mean over the years that it was made for. */
export function monthLitres(book: RoundBook, of: MonthRow): Working {
  const { bed, row, month, from, group, years, sheet } = of;
  const { net_mm } = from.sums;
  const parts = group.map((k) => ({
    ...workedOut(net_mm[12 * k + month]!, roundSources.tableRun),
    name: roundSteps.year(years[k]!.year),
  }));
  const total = parts.reduce((sum, { value }) => sum + value, 0);
  const netMonth = sheet.sum("netMonth", roundSteps.years, parts, total);
  const netMonthMean = sheet.step(
    "netMonthMean",
    { netMonth, yearsCount: workedOut(group.length, roundSources.counted) },
    meanOfMonth(net_mm, group, month),
  );
  const { area, efficiency } = methodInputs(bed);
  sheet.step("monthLitres", { netMonthMean, efficiency, area }, row.month_L);
  return rowDone(book, of, "month");
}
