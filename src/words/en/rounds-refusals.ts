import { oneOf } from "./lists.ts";

/** What the rounds command says of arguments that it does not understand. */
export const roundsRefusals = {
  month: (found: string) => `--month: The month must be a whole number from 1 to 12. You entered ${found}.`,
  week: (found: string) =>
    `--week: The first day of the week must be a day of the calendar, as 2026-01-05. You entered ${found}.`,
  needsWeek: (flag: string) => `--${flag}: This goes with --week DATE, which is not there.`,
  lastRound: (found: string) =>
    `--last-round: What was done must be all, some, none or unknown. You entered ${found}.`,
  heat: (found: string) => `--heat: The week’s heat must be cooler, usual or hotter. You entered ${found}.`,
  temperatures: (found: string) =>
    `--temperatures: Two temperatures in °C, the lowest first, as 14,29. You entered ${found}.`,
  level: (found: string) => `--level_L: A tank’s id and its litres, as hall-tank=5200. You entered ${found}.`,
  forecast: (found: string) =>
    `--forecast: A day, its rain in mm and the chance of it, as 2026-01-07=12@0.6. You entered ${found}.`,
  hotSpell: (found: string) =>
    `--hot-spell: The chance of a hot spell must be a number from 0 to 1. You entered ${found}.`,
  alarm: (found: string) => `--alarm: Whole minutes before a watering, from 0 to 1440. You entered ${found}.`,
  paper: (found: string) => `--paper: The paper must be A4 or letter. You entered ${found}.`,
  noTank: (id: string, known: readonly string[]) =>
    known.length > 0
      ? `--level_L: The survey has no tank with the id ${id}. It has ${oneOf(known)}.`
      : `--level_L: The survey has no tank, and so none with the id ${id}.`,
  aboveTank: (id: string, found: number, capacity_L: number) =>
    `--level_L: The level of ${id} must be at most its capacity, ${capacity_L} L. You entered ${found}.`,
  strangeId: (kind: "watering" | "dip", id: string, known: readonly string[]) =>
    `log, id: The survey has no ${kind === "dip" ? "tank" : "bed"} with the id ${id}. ${known.length > 0 ? `It has ${oneOf(known)}.` : "It has none."}`,
} as const;
