import { parseIso } from "../engine/weather/dates.ts";
import { usualStarts } from "../report/rounds-starts.ts";
import type { UnitSystem } from "../units.ts";
import { roundsRefusals } from "../words/en/rounds-refusals.ts";
import { FlagReader, parsedFlags } from "./flags.ts";

export interface RoundsFlags {
  survey: string;
  weather: string | null;
  month: number | null;
  asJson: boolean;
  ics: string | null;
  html: string | null;
  csv: string | null;
  /** Minutes before a watering at which the calendar rings; null: it does not. */
  alarm_min: number | null;
  paper: "A4" | "letter";
  /** Of sentences, sheets and calendar. */
  units: UnitSystem;
  /** Start times of a day that the simple timer has. */
  starts: number;
  /** Day on which the sheets are made. */
  today: number | null;
  week: WeekFlags | null;
}

/** What a week's round is told on the command line. */
export interface WeekFlags {
  firstDay: number;
  log: string | null;
  level_L: ReadonlyMap<string, number>;
  lastRound: LastRound;
  heat: "cooler" | "usual" | "hotter" | { tmin_c: number; tmax_c: number };
  forecast: readonly { day: number; rain_mm: number; chance: number }[];
  hotSpell: number | null;
}

export const lastRounds = ["all", "some", "none", "unknown"] as const;
export type LastRound = (typeof lastRounds)[number];

const options = {
  weather: { type: "string" },
  month: { type: "string" },
  week: { type: "string" },
  log: { type: "string" },
  level_L: { type: "string", multiple: true },
  "last-round": { type: "string" },
  heat: { type: "string" },
  temperatures: { type: "string" },
  forecast: { type: "string", multiple: true },
  "hot-spell": { type: "string" },
  starts: { type: "string" },
  json: { type: "boolean" },
  ics: { type: "string" },
  html: { type: "string" },
  csv: { type: "string" },
  alarm: { type: "string" },
  paper: { type: "string" },
  units: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

const number = /^[+-]?(\d+\.?\d*|\.\d+)$/;
const say = roundsRefusals;

/**
 * Reads the command's arguments; null where help was asked for.
 * @throws Refused with a line for each argument that is not understood
 */
export function readRoundsFlags(args: readonly string[]): RoundsFlags | null {
  const { values, positionals } = parsedFlags(args, options);
  if (values.help) return null;
  const read = new FlagReader();
  const { faults } = read;
  const survey = read.survey(positionals, "rounds");
  const month = values.month === undefined ? null : Number(values.month);
  if (month !== null && !(Number.isInteger(month) && month >= 1 && month <= 12))
    faults.push(say.month(values.month!));
  const alarm_min = values.alarm === undefined ? null : Number(values.alarm);
  if (alarm_min !== null && !(Number.isInteger(alarm_min) && alarm_min >= 0 && alarm_min <= 1440))
    faults.push(say.alarm(values.alarm!));
  const { paper = "A4" } = values;
  if (paper !== "A4" && paper !== "letter") faults.push(say.paper(paper));
  const units = read.units(values.units);
  const starts = read.whole("--starts", values.starts ?? String(usualStarts), 1, 8);
  const week = weekFlags(values, faults);
  return read.done({
    survey,
    weather: values.weather ?? null,
    month,
    asJson: values.json ?? false,
    ics: values.ics ?? null,
    html: values.html ?? null,
    csv: values.csv ?? null,
    alarm_min,
    paper: paper === "letter" ? "letter" : "A4",
    units,
    starts,
    today: week?.firstDay ?? null,
    week,
  });
}

type Values = ReturnType<typeof parsedFlags<typeof options>>["values"];

function weekFlags(values: Values, faults: string[]): WeekFlags | null {
  const firstDay = values.week === undefined ? null : parseIso(values.week);
  if (values.week !== undefined && firstDay === null) faults.push(say.week(values.week));
  const onlyWithWeek = [
    "log",
    "level_L",
    "last-round",
    "heat",
    "temperatures",
    "forecast",
    "hot-spell",
  ] as const;
  if (values.week === undefined)
    for (const flag of onlyWithWeek) if (values[flag] !== undefined) faults.push(say.needsWeek(flag));
  const lastRound = values["last-round"] ?? "unknown";
  if (!isLastRound(lastRound)) faults.push(say.lastRound(lastRound));
  const heat = heatOf(values, faults);
  const level_L = levelsOf(values.level_L ?? [], faults);
  const forecast = (values.forecast ?? []).flatMap((text) => forecastOf(text, faults));
  const hotSpell = values["hot-spell"] === undefined ? null : Number(values["hot-spell"]);
  if (hotSpell !== null && !(number.test(values["hot-spell"]!) && hotSpell >= 0 && hotSpell <= 1))
    faults.push(say.hotSpell(values["hot-spell"]!));
  if (firstDay === null || !isLastRound(lastRound)) return null;
  return { firstDay, log: values.log ?? null, level_L, lastRound, heat, forecast, hotSpell };
}

function isLastRound(text: string): text is LastRound {
  return (lastRounds as readonly string[]).includes(text);
}

function heatOf({ heat, temperatures }: Values, faults: string[]): WeekFlags["heat"] {
  if (temperatures !== undefined) {
    const [low, high] = temperatures
      .split(",")
      .map((part) => (number.test(part) ? Number(part) : Number.NaN));
    if (low !== undefined && high !== undefined && low <= high && low >= -60 && high <= 60)
      return { tmin_c: low, tmax_c: high };
    faults.push(say.temperatures(temperatures));
  }
  if (heat === undefined || heat === "cooler" || heat === "usual" || heat === "hotter")
    return heat ?? "usual";
  faults.push(say.heat(heat));
  return "usual";
}

function levelsOf(texts: readonly string[], faults: string[]): Map<string, number> {
  const levels = new Map<string, number>();
  for (const text of texts) {
    const [id = "", litres = ""] = text.split("=");
    if (id !== "" && number.test(litres) && Number(litres) >= 0) levels.set(id, Number(litres));
    else faults.push(say.level(text));
  }
  return levels;
}

function forecastOf(text: string, faults: string[]): WeekFlags["forecast"] {
  const match = /^(\d{4}-\d{2}-\d{2})=(\d+\.?\d*)@(\d?\.?\d+)$/.exec(text);
  const day = match ? parseIso(match[1]!) : null;
  const chance = match ? Number(match[3]) : Number.NaN;
  if (match && day !== null && chance >= 0 && chance <= 1)
    return [{ day, rain_mm: Number(match[2]), chance }];
  faults.push(say.forecast(text));
  return [];
}
