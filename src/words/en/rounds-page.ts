/** Words of the page of the rounds: its parts, Monday's entries, the week as it is drawn. */
import { shown } from "../../units.ts";
import type { Formatter } from "../format.ts";
import { said } from "../said.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import type { Slot } from "./page.ts";
import { dayWords } from "./rounds-week.ts";

interface Range {
  low: number;
  middle: number;
  high: number;
}

const plural = (n: number, one: string, many: string) => `${count(n)} ${n === 1 ? one : many}`;

const numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const smallNumber = (n: number) => numbers[n] ?? count(n);
const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

export const roundsPage = {
  parts: {
    week: "This week",
    months: "The months",
    paper: "Paper and calendar",
    log: "The log",
  },
  partsName: "Parts of the rounds",
  working: "Working the round out…",
  again: "Working it out again…",
  crashed: (message: string) => `The calculation stopped: ${message}`,
  wrong: {
    survey: "What the survey has to have before a round can be made",
    weather: "What the weather record has to have before a round can be made",
    log: "What stands in the way in the log",
  },
  noBeds: "No bed here is watered, so there is no round. Say in the survey how a bed is watered.",
} as const;

export const mondayWords = {
  heading: "Monday’s five entries",
  lead: "Each line may be left as it is. The round follows what you write.",
  rain: "Rain in the gauge",
  rainOver: "Days that it gathered",
  lastRound: "Last round",
  lastRoundHint: "Where the log says nothing",
  done: { all: "all", some: "some", none: "none", unknown: "don’t know" },
  dip: (tank: string) => `Dip of ${tank}`,
  dipHint: (capacity: string) => `holds ${capacity}`,
  noTank: "No tank in the survey",
  heat: "The week’s heat",
  heats: { cooler: "cooler", usual: "usual", hotter: "hotter", typed: "in degrees" },
  tmin: "Nights",
  tmax: "Days",
  degrees: "°C",
  forecast: "Forecast",
  forecasts: { none: "nothing sure", rain: "rain", hot: "a hot spell" },
  forecastDay: "On",
  forecastRain: "How much",
  chance: "How likely",
  chances: [
    { share: 0.3, words: "3 in 10" },
    { share: 0.5, words: "even" },
    { share: 0.7, words: "7 in 10" },
    { share: 0.9, words: "9 in 10" },
  ],
  keep: "Write rain and dips into the log",
  kept: "Written into the log.",
  notNumber: (found: string) => `This must be a number, as 12 or 12.5. You entered ${found}.`,
  range: (low: string, high: string, found: string) =>
    `This must be between ${low} and ${high}. You entered ${found}.`,
  coldFirst: "Nights must not be warmer than days.",
} as const;

export const weekPage = {
  clock: (minute: number) => `${String(Math.floor(minute / 60)).padStart(2, "0")}:00`,
  /** The answer in a sentence. */
  headline(beds: number, days: readonly number[], leave: number, without: number): string {
    const short =
      without === 0
        ? ""
        : ` ${capital(smallNumber(without))} would be due and ${without === 1 ? "goes" : "go"} without: see why below.`;
    if (beds === 0) return `Nothing to water this week.${short}`;
    const rounds = allOf(days.map((day) => dayWords(day).split(" ")[0]!));
    const left =
      leave === 0
        ? ""
        : ` ${leave === 1 ? "One is" : `${capital(smallNumber(leave))} are`} left as ${leave === 1 ? "it is" : "they are"}.`;
    return `Water ${beds === 1 ? "one bed" : `${smallNumber(beds)} beds`} this week, on ${rounds}.${left}${short}`;
  },
  total: (litres: Slot, tank: Slot | null) =>
    tank === null ? said`${litres} in all.` : said`${litres} in all, ${tank} of it from tanks.`,
  checkFirst: (beds: readonly string[]) =>
    `Dig a finger deep before you water ${allOf(beds)}: nobody said what was done of the last round.`,
  print: "Print this week’s round",
  heading: "The week on foot",
  key: "Solid is tank water, hatched is mains water. The dashed line is your walk, in the order of the numbers; beds without a number run by timer. The fine upright line is sunrise.",
  dayAbout: (stops: number) =>
    `${plural(stops, "bed", "beds")} on the day’s clock; the list below says the same`,
  restDays: (days: readonly number[]) => `Nothing on ${allOf(days.map((day) => dayWords(day)))}.`,
  doneBy: (time: string) => `done by ${time}`,
  sun: (dawn: string | null, dusk: string | null) =>
    dawn === null || dusk === null ? "" : `dawn ${dawn}, dusk ${dusk}`,
  hoses: (moves: number) => (moves === 0 ? "" : plural(moves, "hose to lay", "hoses to lay")),
  walk: (metres: number, say: Formatter) => {
    if (metres < 1) return "";
    const { value, unit } = shown(metres, "m", say.system);
    return `${count(Math.round(value))} ${unit} on foot`;
  },
  from: (times: readonly { from: string; to: string }[]) =>
    times.length === 0 ? "no time that fits" : `${times[0]!.from} to ${times.at(-1)!.to}`,
  noTime: "no time that fits",
  doesNotFit: (names: readonly string[]) => `Does not fit into the day’s hours: ${allOf(names)}.`,
  leave: "Left this week, and why",
  changed: "What changed since last week and last month",
  cautions: "Bear in mind",
  soil: "What each bed’s soil holds this morning",
  goneSoil: (dry: readonly string[]) =>
    dry.length === 0
      ? "Every bed has water its plants can still reach"
      : `${allOf(dry)} ${dry.length === 1 ? "is" : "are"} past what the plants bear`,
  soilKey:
    "Each trough is as long as what the roots’ soil can hold. Solid: water that is surely there. Thin hatching: it may be there, by the years and by what was not said. Blank: gone. The upright mark is what the plants bear: left of it they suffer.",
} as const;

export const soilWords = {
  about: (name: string, { low, high }: Range, holds_mm: number, say: Formatter) =>
    `${name}: ${say.depth(low)} to ${say.depth(high)} missing of ${say.depth(holds_mm)}`,
  missing: ({ low, high }: Range, say: Formatter) =>
    Math.round(low) === Math.round(high)
      ? `${say.depth(Math.round(low))} gone`
      : `${say.depthBare(Math.round(low))}–${say.depth(Math.round(high))} gone`,
} as const;
