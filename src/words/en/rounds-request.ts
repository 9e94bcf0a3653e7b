import { oneOf } from "./lists.ts";

/** What is said of a request for rounds that is not understood. */
export const roundsRequestWords = {
  unknownMember: "There is no such field here. The body holds survey, weather, month and week.",
  month: (found: string) => `The month must be a whole number from 1 to 12. You entered ${found}.`,
  weekForm: "The week must be an object with the day it begins on, from.",
  unknownWeekMember: (known: readonly string[]) =>
    `There is no such field in a week. It has ${oneOf(known)}.`,
  from: (found: string) =>
    `The first day of the week must be a day of the calendar, as 2026-01-05. You entered ${found}.`,
  log: "The log must be CSV text with a header row.",
  levels: "The dips must be an object with a tank’s litres under its id.",
  level: (found: string) => `The level must be a number of litres, 0 or more. You entered ${found}.`,
  noTank: "The survey has no tank with this id.",
  aboveTank: (capacity_L: number, found: number) =>
    `The level must be at most the tank’s capacity, ${capacity_L} L. You entered ${found}.`,
  oneOf: (known: readonly string[], found: string) => `This must be ${oneOf(known)}. You entered ${found}.`,
  temperatures: "The temperatures must be tmin_c and tmax_c in °C, from -60 to 60, the lowest first.",
  hotSpell: (found: string) =>
    `The chance of a hot spell must be a number from 0 to 1. You entered ${found}.`,
  forecast: "A forecast must be a date, its rain_mm from 0 to 2,000 and its chance from 0 to 1.",
} as const;
