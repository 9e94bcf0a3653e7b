/** Sentences of the rounds: cautions, conflicts, and the month table as it is printed in a terminal. */
import type { Conflict } from "../../engine/rounds/conflicts.ts";
import type { UnitSystem } from "../../units.ts";
import { roundAt } from "../round-at.ts";
import { said, textOf } from "../said.ts";
import { cautionSentence } from "./cautions.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import type { Sentence, Slot } from "./page.ts";
import { type RoundAmounts, roundAmounts } from "./rounds-amounts.ts";

const roundCautions: Readonly<Record<string, string>> = {
  "people-first": "In heat, people first: drink, rest in the shade, and leave the round for the evening.",
  "spray-drift":
    "Keep sprays off paths, play and open windows: tank water is not for breathing or drinking, and wet paving is slippery.",
  "stood-warm":
    "Water that stood warm in a hose or a line can carry legionella: let the first water run out on the ground, not into a spray.",
  "pump-electrics":
    "A pump’s plug, cable and switch are for a licensed electrician; dry hands, and never in standing water.",
  "hoses-trip":
    "A hose across a path is a trip hazard: lay it along the edge, or close the path while it lies there.",
};

/** The sentence of a caution, the round's own or the survey's. */
export function roundCaution(code: string): string {
  return roundCautions[code] ?? cautionSentence({ code });
}

export const monthNames = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

export const dayNames: Readonly<Record<string, string>> = {
  mon: "Monday",
  tue: "Tuesday",
  wed: "Wednesday",
  thu: "Thursday",
  fri: "Friday",
  sat: "Saturday",
  sun: "Sunday",
};

export const shortDayNames: Readonly<Record<string, string>> = {
  mon: "Mon",
  tue: "Tue",
  wed: "Wed",
  thu: "Thu",
  fri: "Fri",
  sat: "Sat",
  sun: "Sun",
};

const againstWords: Readonly<Record<string, string>> = {
  "allowed-days": "its allowed days",
  "must-be-dry": "the days when it must be dry",
  "nobody-there": "days when nobody is there to water by hand",
};

interface Names {
  bed(id: string): string;
  restriction(id: string): string;
}

/** What rules that are kept cost a bed. */
export function conflictSaid({ bed, month, stressDays, against }: Conflict, names: Names): Sentence {
  const rules = against.map((rule) =>
    typeof rule === "string" ? againstWords[rule]! : `“${names.restriction(rule.restriction)}”`,
  );
  const days = Math.max(1, Math.round(stressDays));
  const cost: Slot = {
    at: roundAt.conflict(bed, month),
    text: `${count(days)} ${days === 1 ? "day" : "days"}`,
  };
  return said`${names.bed(bed)} in ${monthNames[month]!}: ${allOf(rules)} cost it about ${cost} of stress a year. The rules are kept; the plants give.`;
}

/** A whole number with its sign; ±0 where it rounds to none. */
export function signed(x: number): string {
  const whole = Math.round(x);
  return `${whole === 0 ? "±" : whole > 0 ? "+" : "−"}${Math.abs(whole)}`;
}

const ordinals = ["", "1st", "2nd", "3rd", "4th", "5th"];

interface Watering {
  minutes: number;
  cycles: number;
  soak_min: number;
  days: readonly string[];
  turns: readonly number[] | null;
  dates: readonly number[] | null;
}

/** "Mon, Thu" · "1st and 3rd Mon" · "on the 2nd, 10th…" · "not this month" */
export function whenWords({ minutes, days, turns, dates }: Watering): string {
  if (minutes === 0) return "not this month";
  if (dates !== null) return `on the ${allOf(dates.map(ordinal))}`;
  const names = days.map((day) => shortDayNames[day]!);
  if (turns !== null) return `${allOf(turns.map((turn) => ordinals[turn]!))} ${names[0]} of the month`;
  return names.length === 7 ? "every day" : names.join(", ");
}

type Runs = Pick<Watering, "minutes" | "cycles" | "soak_min">;

/** "41 min" · "36 min in 3 runs, 15 min rest between", each figure with the address that it opens at. */
export function minutesSaid(
  { minutes, cycles, soak_min }: Runs,
  at: (what: "minutes" | "cycles" | "soak") => string,
): Sentence {
  if (minutes === 0) return ["—"];
  const all: Slot = { at: at("minutes"), text: `${count(minutes)} min` };
  if (cycles <= 1) return [all];
  const runs: Slot = { at: at("cycles"), text: `${cycles} runs` };
  const rest: Slot = { at: at("soak"), text: `${soak_min} min` };
  return said`${all} in ${runs}, ${rest} rest between`;
}

/** The same in plain text. */
export function minutesWords(runs: Runs): string {
  return textOf(minutesSaid(runs, () => ""));
}

function ordinal(date: number): string {
  const teen = date % 100 >= 11 && date % 100 <= 13;
  const ending = teen ? "th" : (["th", "st", "nd", "rd"][date % 10] ?? "th");
  return `${date}${ending}`;
}

export const roundsWords = {
  caution: roundCaution,
  conflict: (conflict: Conflict, names: Names) => textOf(conflictSaid(conflict, names)),
};

/** Words of the command's output for people. */
export const roundsText = {
  title: (place: string) => `Watering rounds for ${place}`,
  years: (middle: readonly number[], dry: readonly number[] | null) =>
    dry
      ? `Made for the middle half of years (${middle.join(", ")}); in brackets the driest quarter (${dry.join(", ")}).`
      : `Made for the record’s one year (${middle.join(", ")}).`,
  month: (month: number) => monthNames[month - 1]!,
  nothing: "Nothing to water.",
  leaveOut: (rain_mm: number, { depth }: RoundAmounts) => `leave out after ${depth(rain_mm)} of rain`,
  rounding: "What whole minutes and fixed days cost, over all years, beside watering to need:",
  roundingRow: (over_pct: number, days: number, within: boolean) =>
    `water ${signed(over_pct)}%, days of stress ${signed(days)} a year${within ? "" : ": beyond the bound"}`,
  bounds: (share: number, days: number) =>
    `Bound: at most ${Math.round(100 * share)}% more water and ${days} more days of stress a year.`,
  conflicts: "Where the rules stand against the need:",
  cautions: "Bear in mind:",
  usage: [
    "npm run --silent rounds -- SURVEY.json --weather RECORD.csv",
    "  --month 1…12            one month of the table",
    "  --week DATE             the round of the week from that day",
    "  --log LOG.csv           what was done, rain and dips",
    "  --level_L TANK=LITRES   a tank’s dip, as often as there are tanks",
    "  --last-round all|some|none|unknown   what was done of the last round, where the log is silent",
    "  --heat cooler|usual|hotter or --temperatures MIN,MAX   the week’s heat",
    "  --forecast DATE=MM@CHANCE   rain that is forecast, its chance from 0 to 1",
    "  --hot-spell CHANCE      a hot spell that is forecast for the week, its chance from 0 to 1",
    "  --starts N              start times of a day that a simple timer has, 2 unless said",
    "  --json                  the document on standard output",
    "  --ics FILE [--alarm MINUTES]   a calendar file of the month or week",
    "  --html FILE [--paper A4|letter]   sheets to print",
    "  --csv FILE              the table",
    "  --units metric|us       of sentences, sheets and calendar; documents and tables stay SI",
  ].join("\n"),
} as const;

interface Entry extends Pick<Watering, "minutes" | "cycles" | "soak_min"> {
  bed: string;
  litres: number;
  leaveAfterRain_mm: number | null;
}

/** Words of the calendar's entries, in a system of units. */
export function calendarWordsIn(units: UnitSystem) {
  const say = roundAmounts(units);
  return {
    calendar: (place: string) => `Watering, ${place}`,
    summary: (entry: Entry) => `Water ${entry.bed}: ${minutesWords(entry)}`,
    description: ({ litres, leaveAfterRain_mm }: Entry) =>
      [
        `${say.litres(litres)}.`,
        ...(leaveAfterRain_mm === null
          ? []
          : [
              `Leave it out if the gauge has ${say.depth(leaveAfterRain_mm)} or more since the last day of the round.`,
            ]),
        "Dig a finger deep: leave it if it is moist there.",
        roundCaution("people-first"),
      ].join(" "),
  };
}
