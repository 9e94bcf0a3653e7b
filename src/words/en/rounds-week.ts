/** Sentences of the week's round: why a bed is watered or left, tanks, holidays. Figures in them open. */
import type { HolidayBed } from "../../engine/rounds/holiday.ts";
import type { PackingHelp } from "../../engine/rounds/packing-day.ts";
import type { OrderReason, RationedWeek } from "../../engine/rounds/ration.ts";
import type { ClosedBy } from "../../engine/rounds/rules.ts";
import type { Range } from "../../engine/rounds/soil-now.ts";
import type { LeaveReason, WeekBed, WeekWatering } from "../../engine/rounds/week-facts.ts";
import { formatIso, fromDay, weekday } from "../../engine/weather/dates.ts";
import type { UnitSystem } from "../../units.ts";
import { roundAt } from "../round-at.ts";
import { said } from "../said.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import type { Sentence, Slot } from "./page.ts";
import { monthNames } from "./rounds.ts";
import { type RoundAmounts, roundAmounts } from "./rounds-amounts.ts";

const weekdayNames = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/** "Monday 5 January" */
export function dayWords(day: number): string {
  const { month, day: date } = fromDay(day);
  return `${weekdayNames[weekday(day)]!} ${date} ${monthNames[month - 1]!}`;
}

/** "Mon 5" */
export function shortDay(day: number): string {
  return `${weekdayNames[weekday(day)]!.slice(0, 3)} ${fromDay(day).day}`;
}

/** Water missing from a bed's roots, as the week begins or on a morning in it. */
function missing(at: string, { low, high }: Range, say: RoundAmounts): Slot {
  return { at, text: say.depths(low, high, " to ") };
}

function bears({ id, trigger_mm }: WeekBed, say: RoundAmounts): Slot {
  return { at: `bed/${id}/trigger`, text: say.depth(trigger_mm) };
}

function waterSentence(bed: WeekBed, watering: WeekWatering, say: RoundAmounts): Sentence {
  const { reason, missing_mm, day } = watering;
  const gone = missing(roundAt.run(bed.id, formatIso(day), "missing"), missing_mm, say);
  switch (reason.code) {
    case "due":
      return said`Due: ${gone} are missing; its plants bear ${bears(bed, say)}.`;
    case "before-closed-days":
      return said`Before its time, because the next day that is open, ${dayWords(reason.nextOpenDay)}, would come too late: ${gone} are missing; its plants bear ${bears(bed, say)}.`;
    case "check-first":
      return said`Dig a finger deep first, since nobody said what was done of the last round; water if it is dry there. ${gone} may be missing; its plants bear ${bears(bed, say)}.`;
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

function leaveSentence(reason: LeaveReason, bed: WeekBed, names: Names, say: RoundAmounts): Sentence {
  const state = said`${missing(roundAt.soil(bed.id), bed.depletion_mm, say)} are missing, and its plants bear ${bears(bed, say)}`;
  switch (reason.code) {
    case "enough":
      return said`Leave it: ${state}.`;
    case "enough-after-rain":
      return said`Leave it: about ${say.depth(reason.rain_mm)} of rain in the last week; ${state}.`;
    case "watered-lately":
      return said`Leave it: watered on ${dayWords(reason.day)}; ${state}.`;
    case "rain-likely":
      return said`Wait: ${say.depth(reason.rain_mm)} of rain are likely by ${dayWords(reason.day)} (${Math.round(100 * reason.chance)} in 100), and its plants bear the wait. Look again the day after.`;
    case "closed":
      return said`It would be due, but ${allOf(reason.closedBy.map((one) => closedWords(one, names)))}: the plants give.`;
    case "tank-short":
      return said`It would be due, but the tank has nothing left for it.`;
    case "nobody-waters":
      return said`Nobody waters it; it lives on rain.`;
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
  id: string;
  litres: number;
  lastWeek_L: number | null;
  month: number;
  monthNow_L: number;
  monthBefore_L: number;
}

function changedSentence(change: Change, say: RoundAmounts): Sentence {
  const { id, month, monthNow_L, monthBefore_L } = change;
  const before = monthNames[(month + 11) % 12]!;
  const week = weekChange(change, say);
  const asks = (of: number, litres: number): Slot => ({
    at: roundAt.month(id, of, "month"),
    text: say.litres(litres),
  });
  const now = asks(month, monthNow_L);
  if (Math.round(monthNow_L) === Math.round(monthBefore_L))
    return said`${week} A usual ${monthNames[month]!} asks as much as ${before}: ${now}.`;
  return said`${week} A usual ${monthNames[month]!} asks ${now}, ${before} ${asks((month + 11) % 12, monthBefore_L)}.`;
}

function weekChange({ id, litres: now_L, lastWeek_L }: Change, say: RoundAmounts): Sentence {
  if (lastWeek_L === null) return said`Last week’s water is not in the log.`;
  if (Math.round(now_L) === Math.round(lastWeek_L)) return said`As last week.`;
  const now: Slot = { at: roundAt.week(id), text: say.litres(now_L) };
  const last: Slot = { at: roundAt.lastWeek(id), text: say.litres(lastWeek_L) };
  return said`${now_L > lastWeek_L ? "More" : "Less"} than last week: ${now} after ${last}.`;
}

interface Tank {
  id: string;
  level_L: number | null;
  usable_L: number | null;
  daysLeft: { days: Range; years: number } | null;
}

const far_days = 180;

function daysSentence(id: string, { days: { low, middle, high } }: { days: Range }): Sentence {
  const at = roundAt.tank(id, "days");
  if (Math.round(low) >= far_days)
    return said`It lasts ${{ at, text: "half a year or more" }} in nearly all years`;
  const days = (figure: number): Slot => ({
    at,
    text: Math.round(figure) >= far_days ? "half a year or more" : count(Math.floor(figure)),
  });
  const unit = Math.floor(low) === 1 ? "day" : "days";
  return said`Left for ${days(low)} ${unit} in a dry year, ${days(middle)} in a middle one, ${days(high)} in a wet one`;
}

function tankSentence(
  { id, level_L, daysLeft }: Tank,
  rationed: RationedWeek | null,
  name: string,
  say: RoundAmounts,
): Sentence {
  if (level_L === null || daysLeft === null || rationed === null)
    return said`${name} was not dipped: dip it, and enter the ${say.volumeWord}.`;
  const lasts = said`${name} holds ${{ at: roundAt.tank(id, "gives"), text: say.litres(level_L) }}. ${daysSentence(id, daysLeft)}.`;
  const { mainsToKeepAll_L } = rationed;
  if (mainsToKeepAll_L < 1) return said`${lasts} It is enough for this week’s round.`;
  const short: Slot = { at: roundAt.tank(id, "keep"), text: say.litres(mainsToKeepAll_L) };
  return said`${lasts} This week’s round asks ${short} more than it can give: the order below says who goes first; ${short} from the mains would keep all.`;
}

function holidaySentence(
  { id, soakDay, soak, visitByDay, lasts_days, movePots }: HolidayBed,
  name: string,
  place: number,
): Sentence {
  const minutes: Slot = { at: roundAt.away(place, id, "soak"), text: `${soak.minutes} min` };
  const last =
    soakDay === null
      ? said`No day for a last soak in the fortnight before`
      : said`Last soak on ${dayWords(soakDay)}: ${minutes}`;
  const days = (figure: number) => count(Math.max(0, Math.floor(figure)));
  const range: Slot = {
    at: roundAt.away(place, id, "lasts"),
    text: `${days(lasts_days.low)} to ${days(lasts_days.high)} days`,
  };
  const visit =
    visitByDay === null
      ? said`lasts the absence in nine years of ten (${range})`
      : said`somebody must come by ${dayWords(visitByDay)} (lasts ${range})`;
  return said`${name}. ${last}; ${visit}.${movePots ? " Move pots into shade." : ""}`;
}

function helpSentence({ more_min, busiest }: PackingHelp): string {
  const ways = [
    ...(more_min !== null && more_min > 0 ? [`${count(more_min)} more minutes on that day`] : []),
    "another day for some beds",
    ...(busiest === null ? [] : [`more flow at ${busiest}, the busiest`]),
    "a timer for a bed run by hand",
  ];
  return `What would help: ${new Intl.ListFormat("en", { type: "disjunction" }).format(ways)}.`;
}

/** The week's sentences with their figures, in a system of units. */
export function weekSentences(units: UnitSystem) {
  const say = roundAmounts(units);
  return {
    water: (bed: WeekBed, watering: WeekWatering) => waterSentence(bed, watering, say),
    leave: (reason: LeaveReason, bed: WeekBed, names: Names) => leaveSentence(reason, bed, names, say),
    order: (reason: OrderReason) => orderWords[reason],
    changed: (change: Change) => changedSentence(change, say),
    tank: (tank: Tank, rationed: RationedWeek | null, name: string) =>
      tankSentence(tank, rationed, name, say),
    holiday: holidaySentence,
    help: helpSentence,
  };
}

export const weekText = {
  title: (from: number, to: number) => `The round from ${dayWords(from)} to ${dayWords(to)}`,
  times: (runs: readonly { from: string; to: string }[]) =>
    runs.length === 0 ? "no time that fits" : runs.map(({ from, to }) => `${from}–${to}`).join(", "),
  leave: "Left:",
  tanks: "Tanks:",
  order: "Who goes first:",
  ration: (
    { fromTank_L, fromMains_L, short_L }: { fromTank_L: number; fromMains_L: number; short_L: number },
    { litres }: RoundAmounts,
  ) =>
    [
      `${litres(fromTank_L)} from the tank`,
      ...(fromMains_L >= 1 ? [`${litres(fromMains_L)} from the mains`] : []),
      ...(short_L >= 1 ? [`${litres(short_L)} short`] : []),
    ].join(", "),
  holidays: "Before you go:",
  away: (from: number, to: number, back: number) =>
    `Nobody waters from ${dayWords(from)} to ${dayWords(to)}. First day back, ${dayWords(back)}: dig a finger deep at each of these beds, and water first what is dry.`,
  done: "Planned and done:",
  doneRow: (planned_L: number, done_L: number, { litres }: RoundAmounts) =>
    `planned ${litres(planned_L)}, done ${litres(done_L)}`,
  doesNotFit: (names: readonly string[]) => `Does not fit into the day’s hours: ${allOf(names)}.`,
} as const;
