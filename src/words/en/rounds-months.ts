/** Words of the month table, the timer's programme, what is printed, and the log. */
import type { Formatter } from "../format.ts";
import { said } from "../said.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import type { Slot } from "./page.ts";
import { dayNames, monthNames, signed } from "./rounds.ts";
import { roundAmounts } from "./rounds-amounts.ts";

const plain = new Intl.NumberFormat("en", { maximumFractionDigits: 1 });

export const monthsPage = {
  headline: (month: number, litres: Slot, most: boolean) =>
    said`${monthNames[month - 1]!} asks ${litres} in a middle year${most ? ", more than any other month" : ""}.`,
  nothing: (month: number) => `Nothing to water in ${monthNames[month - 1]!} of a middle year.`,
  resting: (beds: readonly string[]) => `Not this month, in a middle year or a dry one: ${allOf(beds)}.`,
  month: "Month",
  head: [
    "Bed",
    "When",
    "How long",
    "Each time, and depth for the roots",
    "In the month",
    "Wets down to",
    "Left out after rain of",
  ],
  dryRow: "in a dry year",
  none: "nothing",
  cm: (wetted_m: number, say: Formatter) =>
    say.system === "us" ? `${plain.format(wetted_m * 39.37)} in` : `${count(Math.round(100 * wetted_m))} cm`,
  noRain: "no rain there",
  minutes: (minutes: number) => `${count(minutes)} min`,
  plants: (plants: number, litres: string, cans: number, { system }: Formatter) =>
    `${count(plants)} plants, ${litres} each: ${plain.format(cans)} cans of ${roundAmounts(system).can}`,
  year: "The year, month by month",
  yearAbout: "Litres a month by the table: the bar a middle year, the mark a dry one",
  years: (middle: readonly number[], dry: readonly number[] | null) =>
    dry
      ? `Middle: the middle half of the record’s years (${middle.join(", ")}). Dry: the driest quarter (${dry.join(", ")}).`
      : `Made for the record’s one year (${middle.join(", ")}).`,
  programme: "For a simple timer",
  programmeSays: (starts: number, days: readonly string[]) =>
    `${starts === 1 ? "One start time" : `${count(starts)} start times, each with an equal part of the minutes`}, on ${days.length === 7 ? "every day" : allOf(days.map((day) => dayNames[day]!))}, the same for all beds; turn the seasonal percentage at the head of each month.`,
  starts: "Start times that the timer has",
  programmeHead: ["Bed", "Minutes at 100%", "Water beside need", "Stress beside need"],
  percent: "Seasonal percentage",
  over: (share: number) => `${signed(100 * share)}%`,
  stress: (days: number) => `${signed(days)} ${Math.abs(Math.round(days)) === 1 ? "day" : "days"} a year`,
  noProgramme: "No bed here is on a timer.",
  rounding: "What whole minutes and fixed days cost",
  roundingLead: (share: number, days: number) =>
    `The table run through all the years again, beside water given to need on the very day. It is mended until it stays within ${Math.round(100 * share)}% more water and ${days} more days of stress a year.`,
  beyond: "beyond the bound",
  within: "within the bound",
  roundingHead: ["Bed", "Water beside need", "Stress beside need", "Bound"],
} as const;

export const paperPage = {
  headline: "For the shed wall, the bed’s edge and the calendar.",
  lead: "Black on white, to be read at arm’s length. Each sheet names its date, the survey it was made from and what was assumed.",
  paper: "Paper",
  papers: { A4: "A4", letter: "US letter" },
  month: "Month",
  print: "Print",
  sheets: {
    week: ["The week’s round", "a tick list with blanks for gauge and dips"],
    wall: ["The wall sheet of the month", "which bed, when, how long; the month’s dates below"],
    cards: ["A card for each bed", "its year, how to check the soil, where it lies"],
  },
  printIt: (name: string) => `Print: ${name}`,
  calendar: "Into a calendar",
  calendarLead:
    "A file that any calendar reads, in the site’s own time. A later file moves the earlier entries and takes away what is no longer wanted.",
  alarm: "Ring before",
  alarms: {
    none: "not at all",
    start: "at the start",
    quarter: "15 minutes",
    hour: "an hour",
    half: "12 hours",
  },
  weekFile: "Save this week’s waterings",
  monthFile: "Save the month’s waterings",
  files: "As files",
  table: "Save the month table (CSV)",
  html: "Save all sheets (HTML)",
  log: "Save the log (CSV)",
  fileNames: {
    week: "rounds-week.ics",
    month: "rounds-month.ics",
    table: "rounds.csv",
    sheets: "rounds.html",
    log: "log.csv",
  },
} as const;

export const logPage = {
  headline: "What was done?",
  lead: "Tap what is done. It is kept on this device at once, signal or no signal.",
  day: "On",
  planned: (minutes: number) => `${count(minutes)} min, as planned`,
  doIt: (bed: string, minutes: number) => `${bed}: ${count(minutes)} min done`,
  leftOut: (bed: string) => `${bed}: left out`,
  leftOutShort: "left out",
  written: (minutes: number) =>
    minutes === 0 ? "written down: left out" : `written down: ${count(minutes)} min`,
  none: "Nothing is planned for that day.",
  other: "Something else",
  kind: "What",
  kinds: { watering: "a bed watered", rain: "rain in the gauge", dip: "a tank dipped" },
  bed: "Bed",
  tank: "Tank",
  minutes: "Minutes",
  rain: "Rain",
  days: "Days that it gathered",
  level: "Level",
  write: "Write it down",
  wrote: "Written down.",
  notNumber: (name: string, found: string) =>
    `${name} must be a number, 0 or more. You entered ${found === "" ? "nothing" : found}.`,
  waiting: (n: number) =>
    n === 1
      ? "One line waits on this device for the site’s log."
      : `${count(n)} lines wait on this device for the site’s log.`,
  done: "Planned and done",
  doneLead: "Litres by the month table beside litres by the log. Outline: planned. Solid: done.",
  nothingDone: "No watering is in the log yet.",
  doneAbout: (bed: string, planned: string, done: string) => `${bed}: planned ${planned}, done ${done}`,
  doneRow: (planned: Slot, done: Slot | string) => said`${done} of ${planned}`,
  lines: "The log, newest first",
  line: {
    watering: (name: string, minutes: number | undefined, litres: string | null) =>
      `${name}: ${minutes === 0 ? "left out" : [...(minutes === undefined ? [] : [`${count(minutes)} min`]), ...(litres === null ? [] : [litres])].join(", ")}`,
    rain: (depth: string, days: number) =>
      `Rain: ${depth} ${days === 1 ? "in a day" : `over ${count(days)} days`}`,
    dip: (name: string, litres: string) => `${name}: ${litres}`,
  },
  bring: "Bring in a log (CSV)",
  bringHint: "date,kind,id,minutes,litres,rain_mm,days,level_L,group",
  brought: (n: number) =>
    n === 1 ? "One new line was brought in." : `${count(n)} new lines were brought in.`,
  faults: "Nothing was brought in. In that file:",
} as const;
