/** Words of the sheets to print. */
import { parseIso } from "../../engine/weather/dates.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import { minutesWords, monthNames, whenWords } from "./rounds.ts";
import { dayWords, weekText } from "./rounds-week.ts";

const plain = new Intl.NumberFormat("en", { maximumFractionDigits: 3 });

export const sheetWords = {
  language: "en",
  wallTitle: (month: number, year: number) => `Watering in ${monthNames[month - 1]!} ${year}`,
  wallHead: ["Bed", "When", "How long", "Water", "Leave out after", "In a dry year"],
  gridHead: ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"],
  when: whenWords,
  minutes: minutesWords,
  litres: (L: number) => `${count(Math.round(L))} L`,
  rain: (leaveAfter_mm: number | null) =>
    leaveAfter_mm === null ? "no rain there" : `${count(leaveAfter_mm)} mm of rain`,
  dry: (watering: Parameters<typeof whenWords>[0]) =>
    watering.minutes === 0 ? "none" : `${minutesWords(watering)}, ${whenWords(watering)}`,
  closed: (day: number, beds: readonly string[]) => `Not on ${dayWords(day)}: ${allOf(beds)}.`,
  gridKey: "Which beds on which date, by their numbers above:",
  check: "Before you water, dig a finger deep: leave it if it is moist there.",
  card: (bed: string) => bed,
  cardHead: ["Month", "When", "How long", "Water", "Leave out after"],
  month: (month: number) => monthNames[month - 1]!,
  wets: (wetted_m: number) =>
    `A full watering wets the soil about ${count(Math.round(100 * wetted_m))} cm deep: push a thin rod in an hour after.`,
  place: "Where it lies: draw it here.",
  plants: ({ plants, litresEach, cansEach }: { plants: number; litresEach: number; cansEach: number }) =>
    `${count(plants)} plants: ${plain.format(Math.round(10 * litresEach) / 10)} L each (${plain.format(cansEach)} cans of 10 L).`,
  weekTitle: (from: string, to: string) => weekText.title(parseIso(from)!, parseIso(to)!),
  weekHead: ["Done", "From", "Bed", "How long", "Water", "Really"],
  day: (date: string) => dayWords(parseIso(date)!),
  noTime: "no time that fits",
  left: "Left this week",
  gauge: "Rain in the gauge (mm)",
  dip: (tank: string) => `Dip of ${tank} (litres, or cm):`,
  holiday: (name: string) => `Before you go: ${name}`,
  tanks: "Tanks",
  cautions: "Bear in mind",
  assumptions: "Assumed, where the survey is silent",
  assumed: (where: string, value: string | number | boolean) =>
    `${where}: ${typeof value === "number" ? plain.format(value) : String(value)}`,
  footer: (place: string, madeOn: string | null, surveyVersion: string, from: string, to: string) =>
    `${place}. Made ${madeOn === null ? "without a date" : `on ${dayWords(parseIso(madeOn)!)} ${madeOn.slice(0, 4)}`} from survey ${surveyVersion}, weather ${from} to ${to}.`,
};
