import { bedRoots } from "../../engine/plants.ts";
import { usualRain_mm } from "../../engine/rounds/month-fit.ts";
import { meanOfMonth } from "../../engine/rounds/month-need.ts";
import { everyDays, timesInMonth } from "../../engine/rounds/pattern.ts";
import { roundNotes, roundSources, roundSteps } from "../../words/en/explain-rounds.ts";
import type { Working } from "../working.ts";
import { assumed, opens, type RoundBook, triggerInput, workedOut } from "./book.ts";
import { cycleSteps, soakSteps } from "./cycles.ts";
import { type MonthRow, rowDone, sameRow } from "./month-row.ts";

const month_days = 365.25 / 12;

/** RAW ÷ ETc, and the days that the table keeps. */
export function interval(book: RoundBook, of: MonthRow): Working | null {
  const { bed, row, month, group, years, sheet } = of;
  const { pattern } = row;
  const days = everyDays(pattern);
  if (row.minutes === 0 || days === null) return null;
  const { etc_mm } = bed.input.need;
  const parts = group.map((k) => ({
    ...workedOut(etc_mm[12 * k + month]!, roundSources.needRun),
    name: roundSteps.year(years[k]!.year),
  }));
  const etcMonth = sheet.sum(
    "etcMonth",
    roundSteps.years,
    parts,
    parts.reduce((sum, { value }) => sum + value, 0),
  );
  const daysInMonth = assumed(month_days, roundSources.calendar);
  const etcDay_mm = meanOfMonth(etc_mm, group, month) / month_days;
  const etcDay = sheet.step(
    "etcMonthMean",
    { etcMonth, yearsCount: workedOut(group.length, roundSources.counted), daysInMonth },
    etcDay_mm,
  );
  if (etcDay_mm > 0)
    sheet.step("interval", { trigger: triggerInput(bed), etcDay }, bed.input.bed.trigger_mm / etcDay_mm);
  sheet.note(roundNotes.rains, roundSources.rainHelps, {
    provenance: "worked-out",
    source: roundSources.needRun,
  });
  if (pattern.kind === "week") {
    const daysAWeek = workedOut(pattern.weekdays.filter(Boolean).length, roundSources.pattern);
    sheet.step("everyWeek", { daysAWeek }, days);
  } else {
    const timesPlanned = workedOut(timesInMonth(pattern), roundSources.pattern);
    sheet.step("everyMonth", { daysInMonth, timesPlanned }, days);
  }
  return rowDone(book, of, "interval");
}

/** How deep a watering wets the soil. */
export function wetted(book: RoundBook, of: MonthRow): Working | null {
  const { bed, id, row, sheet } = of;
  if (row.minutes === 0) return null;
  const { rootDepth_m } = bedRoots(bed.ready.grown.bed);
  sheet.step(
    "wetDepth",
    {
      rootDepth: opens(rootDepth_m, `bed/${id}/root-depth`),
      netGiven: sameRow(of, "net", row.net_mm),
      trigger: triggerInput(bed),
    },
    row.wetted_m,
  );
  return rowDone(book, of, "wetted");
}

/** The rain after which a watering is left out. */
export function leaveAfter(book: RoundBook, of: MonthRow): Working | null {
  const { bed, row, month, sheet } = of;
  if (row.minutes === 0 || row.leaveAfterRain_mm === null) return null;
  const { input } = bed;
  const usualRain = sheet.step(
    "usualRain",
    {
      rainDay: workedOut(input.rain_mm_day[month]!, roundSources.rain),
      daysInMonth: assumed(month_days, roundSources.calendar),
      timesPlanned: workedOut(timesInMonth(row.pattern), roundSources.pattern),
    },
    usualRain_mm(input, month, row.pattern),
  );
  sheet.step(
    "leaveAfter",
    {
      netGiven: sameRow(of, "net", row.net_mm),
      usualRain,
      spares: workedOut(row.spares, roundSources.rerun),
      rainShare: workedOut(input.bed.bed.rainShare, roundSources.rainShare),
    },
    row.leaveAfterRain_mm,
  );
  return rowDone(book, of, "rain");
}

/** Runs into which a watering is split. */
export function cycles(book: RoundBook, of: MonthRow): Working | null {
  const { bed, row, sheet } = of;
  if (row.minutes === 0) return null;
  cycleSteps(
    book,
    sheet,
    bed,
    row,
    sameRow(of, "minutes", row.minutes),
    bed.ready.grown.bed.watering.flow_L_min,
  );
  return rowDone(book, of, "cycles");
}

export function soak(book: RoundBook, of: MonthRow): Working | null {
  const { bed, row, sheet } = of;
  if (row.minutes === 0) return null;
  soakSteps(book, sheet, bed, row);
  return rowDone(book, of, "soak");
}
