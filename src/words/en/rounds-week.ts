/** Sentences of the week's round: why a bed is watered or left, tanks, holidays. */
import type { HolidayBed } from "../../engine/rounds/holiday.ts";
import type { PackingHelp } from "../../engine/rounds/packing-day.ts";
import type { OrderReason, RationedWeek } from "../../engine/rounds/ration.ts";
import type { ClosedBy } from "../../engine/rounds/rules.ts";
import type { Range } from "../../engine/rounds/soil-now.ts";
import type { LeaveReason, WaterReason, WeekBed } from "../../engine/rounds/week-facts.ts";
import { fromDay, weekday } from "../../engine/weather/dates.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import { monthNames } from "./rounds.ts";

const weekdayNames = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/** "Monday 5 January" */
export function dayWords(day: number): string {
  const { month, day: date } = fromDay(day);
  return `${weekdayNames[weekday(day)]!} ${date} ${monthNames[month - 1]!}`;
}

const litres = (L: number) => `${count(Math.round(L))} L`;
const mm = (depth: number) => `${count(Math.round(depth))} mm`;

function spread({ low, high }: Range): string {
  const from = Math.round(low);
  const to = Math.round(high);
  return from === to ? `${count(from)} mm` : `${count(from)} to ${count(to)} mm`;
}

export function waterSentence(reason: WaterReason, missing_mm: Range, mayLose_mm: number): string {
  const state = `${spread(missing_mm)} are missing; its plants bear ${mm(mayLose_mm)}`;
  switch (reason.code) {
    case "due":
      return `Due: ${state}.`;
    case "before-closed-days":
      return `Before its time, because the next day that is open, ${dayWords(reason.nextOpenDay)}, would come too late: ${state}.`;
    case "check-first":
      return `Dig a finger deep first, since nobody said what was done of the last round; water if it is dry there. ${spread(missing_mm)} may be missing; its plants bear ${mm(mayLose_mm)}.`;
  }
}

interface Names {
  bed(id: string): string;
  restriction(id: string): string;
}

function closedWords(closedBy: ClosedBy, names: Names): string {
  switch (closedBy.code) {
    case "no-supply":
      return "it has no water";
    case "not-an-allowed-day":
      return "it is not one of its days";
    case "must-be-dry":
      return "it must be dry";
    case "nobody-there":
      return "nobody is there to water by hand";
    case "restriction":
      return `“${names.restriction(closedBy.id)}” forbids it`;
  }
}

export function leaveSentence(
  reason: LeaveReason,
  { depletion_mm, trigger_mm }: WeekBed,
  names: Names,
): string {
  const state = `${spread(depletion_mm)} are missing, and its plants bear ${mm(trigger_mm)}`;
  switch (reason.code) {
    case "enough":
      return `Leave it: ${state}.`;
    case "enough-after-rain":
      return `Leave it: about ${mm(reason.rain_mm)} of rain in the last week; ${state}.`;
    case "watered-lately":
      return `Leave it: watered on ${dayWords(reason.day)}; ${state}.`;
    case "rain-likely":
      return `Wait: ${mm(reason.rain_mm)} of rain are likely by ${dayWords(reason.day)} (${Math.round(100 * reason.chance)} in 100), and its plants bear the wait. Look again the day after.`;
    case "closed":
      return `It would be due, but ${allOf(reason.closedBy.map((one) => closedWords(one, names)))}: the plants give.`;
    case "tank-short":
      return "It would be due, but the tank has nothing left for it.";
    case "nobody-waters":
      return "Nobody waters it; it lives on rain.";
  }
}

const orderWords: Readonly<Record<OrderReason, string>> = {
  "site-order": "The site’s own order.",
  young: "Young plants first: their roots reach no further.",
  food: "Food next: a dry week costs the crop.",
  trees: "Trees next: they take longest to replace.",
  shrubs: "Shrubs and hedges next: slow to replace.",
  flowers: "Flowers next: replaced in a season.",
  lawn: "Lawn last: it browns and comes back.",
};

interface Change {
  litres: number;
  lastWeek_L: number | null;
  month: number;
  monthNow_L: number;
  monthBefore_L: number;
}

export function changedSentence({
  litres: now_L,
  lastWeek_L,
  month,
  monthNow_L,
  monthBefore_L,
}: Change): string {
  const week =
    lastWeek_L === null
      ? "Last week’s water is not in the log."
      : Math.round(now_L) === Math.round(lastWeek_L)
        ? "As last week."
        : `${now_L > lastWeek_L ? "More" : "Less"} than last week: ${litres(now_L)} after ${litres(lastWeek_L)}.`;
  const before = monthNames[(month + 11) % 12]!;
  if (Math.round(monthNow_L) === Math.round(monthBefore_L))
    return `${week} A usual ${monthNames[month]!} asks as much as ${before}.`;
  return `${week} A usual ${monthNames[month]!} asks ${litres(monthNow_L)}, ${before} ${litres(monthBefore_L)}.`;
}

interface Tank {
  level_L: number | null;
  usable_L: number | null;
  daysLeft: { days: Range; years: number } | null;
}

const far_days = 180;

function daysWords({ days: { low, middle, high } }: { days: Range }): string {
  if (Math.round(low) >= far_days) return "It lasts half a year or more in nearly all years";
  const days = (figure: number) =>
    Math.round(figure) >= far_days ? "half a year or more" : count(Math.floor(figure));
  return `Left for ${days(low)} days in a dry year, ${days(middle)} in a middle one, ${days(high)} in a wet one`;
}

export function tankSentence(
  { level_L, daysLeft }: Tank,
  rationed: RationedWeek | null,
  name: string,
): string {
  if (level_L === null || daysLeft === null || rationed === null)
    return `${name} was not dipped: dip it, and enter the litres.`;
  const lasts = `${name} holds ${litres(level_L)}. ${daysWords(daysLeft)}.`;
  const { mainsToKeepAll_L } = rationed;
  if (mainsToKeepAll_L < 1) return `${lasts} It is enough for this week’s round.`;
  return `${lasts} This week’s round asks ${litres(mainsToKeepAll_L)} more than it can give: the order below says who goes first; ${litres(mainsToKeepAll_L)} from the mains would keep all.`;
}

export function holidaySentence(
  { soakDay, soak, visitByDay, lasts_days, movePots }: HolidayBed,
  name: string,
): string {
  const last =
    soakDay === null
      ? "No open day for a last soak"
      : `Last soak on ${dayWords(soakDay)}: ${soak.minutes} min`;
  const range = `${count(Math.max(0, Math.floor(lasts_days.low)))} to ${count(Math.max(0, Math.floor(lasts_days.high)))} days`;
  const visit =
    visitByDay === null
      ? `lasts the absence in nine years of ten (${range})`
      : `somebody must come by ${dayWords(visitByDay)} (lasts ${range})`;
  return `${name}. ${last}; ${visit}.${movePots ? " Move pots into shade." : ""}`;
}

export function helpSentence({ more_min, busiest }: PackingHelp): string {
  const ways = [
    ...(more_min !== null && more_min > 0 ? [`${count(more_min)} more minutes on that day`] : []),
    "another day for some beds",
    ...(busiest === null ? [] : [`more flow at ${busiest}, the busiest`]),
    "a timer for a bed run by hand",
  ];
  return `What would help: ${new Intl.ListFormat("en", { type: "disjunction" }).format(ways)}.`;
}

export const weekWords = {
  water: waterSentence,
  leave: leaveSentence,
  order: (reason: OrderReason) => orderWords[reason],
  changed: changedSentence,
  tank: tankSentence,
  holiday: holidaySentence,
  help: helpSentence,
};

export const weekText = {
  title: (from: number, to: number) => `The round from ${dayWords(from)} to ${dayWords(to)}`,
  times: (runs: readonly { from: string; to: string }[]) =>
    runs.length === 0 ? "no time that fits" : runs.map(({ from, to }) => `${from}–${to}`).join(", "),
  leave: "Left:",
  tanks: "Tanks:",
  order: "Who goes first:",
  ration: ({
    fromTank_L,
    fromMains_L,
    short_L,
  }: {
    fromTank_L: number;
    fromMains_L: number;
    short_L: number;
  }) =>
    [
      `${litres(fromTank_L)} from the tank`,
      ...(fromMains_L >= 1 ? [`${litres(fromMains_L)} from the mains`] : []),
      ...(short_L >= 1 ? [`${litres(short_L)} short`] : []),
    ].join(", "),
  holidays: "Before you go:",
  done: "Planned and done:",
  doneRow: (planned_L: number, done_L: number) => `planned ${litres(planned_L)}, done ${litres(done_L)}`,
  doesNotFit: (names: readonly string[]) => `Does not fit into the day’s hours: ${allOf(names)}.`,
} as const;
