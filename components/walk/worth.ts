import { pathSteps, valueAt } from "../../src/survey/measuring/field-path.ts";
import type { Survey, SurveyFinding } from "../../src/survey/survey.ts";
import type { Weigh, Weighed } from "./context.ts";
import { setField } from "./keep.ts";
import { type Stop, stopsOf } from "./stops.ts";

/** A guess and what was read after it. */
export interface Guessed {
  stop: Stop;
  row: SurveyFinding;
  guess: number | string;
}

/** What one reading was worth, in litres a year: how far the guess was off, and what the reading leaves open. */
export interface Worth extends Guessed {
  off_L: number;
  left_L: number;
}

/** A group's guesses that have a reading beside them, in the walk's order; of every group where none is named. */
export function guessesOf(survey: Survey, group?: string): Guessed[] {
  const stops = stopsOf(survey);
  return (survey.found ?? []).flatMap((row) => {
    const isGuess = typeof row.guess === "number" || typeof row.guess === "string";
    if (!isGuess || row.used === false || (group !== undefined && row.group !== group)) return [];
    const stop = stops.find(({ at, also }) => at === row.at || also.includes(row.at));
    return stop ? [{ stop, row, guess: row.guess as number | string }] : [];
  });
}

/** Litres that a stop moves: its bed's need, else mains water to need. */
function litres({ list, id }: Stop, { beds, need_kL_year }: Weighed): number {
  return list === "beds" ? (beds.get(id) ?? 0) : 1000 * need_kL_year;
}

/** Works each guess out in litres: the survey with the guess in its place against the survey as it is. */
export async function worthOf(survey: Survey, guesses: readonly Guessed[], weigh: Weigh): Promise<Worth[]> {
  const base = await weigh(survey);
  const worth: Worth[] = [];
  for (const guessed of guesses) {
    const { stop, row, guess } = guessed;
    const at = row.at;
    const asGuessed = litres(stop, await weigh(setField(survey, at, guess)));
    const off_L = Math.abs(asGuessed - litres(stop, base));
    worth.push({ ...guessed, off_L, left_L: await leftOpen(survey, stop, row, weigh) });
  }
  return worth;
}

/** Half the difference between the reading a standard error up and down. */
async function leftOpen(
  survey: Survey,
  stop: Stop,
  { at, standardError }: SurveyFinding,
  weigh: Weigh,
): Promise<number> {
  const value = valueAt(survey, pathSteps(at) ?? []);
  if (typeof value !== "number" || !standardError) return 0;
  const low = value - standardError > 0 ? value - standardError : value / 2;
  const [up, down] = [
    await weigh(setField(survey, at, value + standardError)),
    await weigh(setField(survey, at, low)),
  ];
  return Math.abs(litres(stop, up) - litres(stop, down)) / 2;
}
