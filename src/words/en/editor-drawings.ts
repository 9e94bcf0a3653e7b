/** Words in and below the drawings of the survey's editor. */
import { count } from "./count.ts";

export const drawingWords = {
  compass: ["N", "E", "S", "W"],
  midsummer: "midsummer sun",
  midwinter: "midwinter sun",
  skyline: (things: number, taken_pct: number) =>
    things === 0
      ? "Open sky all round, as seen from the middle of the bed."
      : `${things === 1 ? "One thing" : `${count(things)} things`} in the way, as seen from the middle of the bed: ${count(taken_pct)}% of the sky’s light is taken.`,
  tank: (words: string) => `The tank cut open: ${words}.`,
  full: (litres: string) => `full: ${litres}`,
  level: (litres: string) => `now: ${litres}`,
  outlet: (litres: string) => `outlet: ${litres} stays`,
  topUpBelow: "mains fill below this",
  topUpTo: "and stop here",
  encloses: (drawn: string, said: string) =>
    said === ""
      ? `The outline encloses ${drawn}.`
      : `The outline encloses ${drawn}; the survey says ${said}.`,
  crossing: "The sides cross each other: the corners are not in order round it.",
} as const;
