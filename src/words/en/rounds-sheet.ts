/** Words of the sheets to print. */
import { parseIso } from "../../engine/weather/dates.ts";
import type { UnitSystem } from "../../units.ts";
import { assumedWords } from "./assumed-words.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import { minutesWords, monthNames, whenWords } from "./rounds.ts";
import { roundAmounts } from "./rounds-amounts.ts";
import { dayWords, shortDay, weekText } from "./rounds-week.ts";

const halves = new Intl.NumberFormat("en", { maximumFractionDigits: 1 });

/** Words of the sheets, in a system of units. */
export function sheetWordsIn(units: UnitSystem) {
  const say = roundAmounts(units);
  return {
    language: "en",
    wallTitle: (month: number, year: number) => `Watering in ${monthNames[month - 1]!} ${year}`,
    wallHead: ["Bed", "When", "How long", "Water", "Leave out after rain of", "In a dry year"],
    gridHead: ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"],
    when: whenWords,
    minutes: minutesWords,
    litres: say.litres,
    depth: (mm: number) => `${say.depth(mm)} deep`,
    rain: (leaveAfter_mm: number | null) =>
      leaveAfter_mm === null ? "no rain there" : say.depth(leaveAfter_mm),
    dry: (watering: Parameters<typeof whenWords>[0]) =>
      watering.minutes === 0 ? "none" : `${minutesWords(watering)}, ${whenWords(watering)}`,
    closed: (day: number, beds: readonly string[]) => `Not on ${dayWords(day)}: ${allOf(beds)}.`,
    gridKey: "Which beds on which date, by their numbers above:",
    check: "Before you water, dig a finger deep: leave it if it is moist there.",
    card: (bed: string) => bed,
    cardHead: ["Month", "When", "How long", "Water", "Leave out after rain of"],
    month: (month: number) => monthNames[month - 1]!,
    wets: (wetted_m: number) =>
      `A full watering wets the soil about ${say.deep(wetted_m)} deep: push a thin rod in an hour after.`,
    place: "Where it lies: draw it here.",
    plants: ({ plants, litresEach, cansEach }: { plants: number; litresEach: number; cansEach: number }) =>
      `${count(plants)} plants: ${say.litresEach(litresEach)} each (${halves.format(cansEach)} cans of ${say.can}).`,
    weekTitle: (from: string, to: string) => weekText.title(parseIso(from)!, parseIso(to)!),
    weekHead: ["Done", "From", "Bed", "How long", "Water", "Given"],
    day: (date: string) => dayWords(parseIso(date)!),
    shortDay: (date: string) => shortDay(parseIso(date)!),
    noTime: "no time that fits",
    left: "Left this week",
    gauge: `Rain in the gauge (${say.rainUnit})`,
    dip: (tank: string) => `Dip of ${tank} (${say.volumeUnit} or ${say.lengthUnit}):`,
    holiday: (name: string) => `Before you go: ${name}`,
    away: (from: string, to: string, back: string) =>
      weekText.away(parseIso(from)!, parseIso(to)!, parseIso(back)!),
    tanks: "Tanks",
    ration: (row: Parameters<typeof weekText.ration>[0]) => weekText.ration(row, say),
    cautions: "Bear in mind",
    workings: "How it was worked out",
    method:
      "The soil of each bed is followed day by day through the weather record: rain and watering fill it, plants and sun empty it (FAO Irrigation and Drainage Paper 56, chapters 7 and 8). A bed is refilled once its plants have lost what they bear without harm. That is shared out over whole minutes on fixed days, and run through the same years again to see what the rounding costs. Minutes are depth ÷ efficiency × area ÷ flow:",
    assumptions: "Assumed, where the survey is silent",
    assumed: (where: string, value: string | number | boolean, kind: string | null) =>
      assumedWords(where, value, kind, units),
    footer: (place: string, madeOn: string | null, surveyVersion: string, from: string, to: string) =>
      `${place}. Made ${madeOn === null ? "without a date" : `on ${dayWords(parseIso(madeOn)!)} ${madeOn.slice(0, 4)}`} from survey ${surveyVersion}, weather ${from} to ${to}.`,
  };
}
