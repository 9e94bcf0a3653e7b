/**
 * Addresses of the rounds' own figures, whose workings `explainRound` hands out. What they rest on opens further at
 * the addresses of the engine's figures.
 */

export const monthFigures = [
  "asked",
  "minutes",
  "net",
  "interval",
  "cycles",
  "soak",
  "litres",
  "month",
  "wetted",
  "rain",
] as const;
export type MonthFigure = (typeof monthFigures)[number];

export const runFigures = ["minutes", "litres", "cycles", "soak", "times", "missing"] as const;
export type RunFigure = (typeof runFigures)[number];

const two = (n: number) => String(n).padStart(2, "0");
const monthPart = (month: number, isDry: boolean) => `${two(month + 1)}${isDry ? "-dry" : ""}`;

/** Months count from 0. */
export const roundAt = {
  /** A bed's watering in a month of the table. */
  month: (bed: string, month: number, what: MonthFigure, isDry = false) =>
    `round/month/${bed}/${monthPart(month, isDry)}/${what}`,
  /** All beds' water of a month. */
  months: (month: number, isDry = false) => `round/months/${monthPart(month, isDry)}`,
  rounding: (bed: string, what: "water" | "stress") => `round/rounding/${bed}/${what}`,
  /** What the rules cost a bed in a month. */
  conflict: (bed: string, month: number) => `round/conflict/${bed}/${two(month + 1)}`,
  percent: (month: number) => `round/percent/${two(month + 1)}`,
  timer: (bed: string, what: "minutes" | "water" | "stress") => `round/timer/${bed}/${what}`,
  /** Water missing from a bed's roots as the week begins. */
  soil: (bed: string) => `round/soil/${bed}`,
  /** The same in one year's weather; of several answers to what was done, the first is 0. */
  soilOf: (bed: string, place: number) => `round/soil/${bed}/${place}`,
  /** A watering of the week. */
  run: (bed: string, date: string, what: RunFigure) => `round/run/${bed}/${date}/${what}`,
  week: (bed: string) => `round/week/${bed}`,
  lastWeek: (bed: string) => `round/last-week/${bed}`,
  /** Done by the log in a month, as 2026-07. */
  done: (bed: string, month: string) => `round/done/${bed}/${month}`,
  all: (what: "litres" | "tank") => `round/all/${what}`,
  finish: (date: string) => `round/finish/${date}`,
  tank: (tank: string, what: "days" | "gives" | "keep") => `round/tank/${tank}/${what}`,
  ration: (tank: string, bed: string) => `round/ration/${tank}/${bed}`,
  /** An absence by its place among those ahead. */
  away: (place: number, bed: string, what: "soak" | "lasts") => `round/away/${place}/${bed}/${what}`,
};

export function isRoundAddress(address: string): boolean {
  return address.startsWith("round/");
}
