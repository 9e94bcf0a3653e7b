import type { Rng } from "../engine/weather/rng.ts";
import type { PickFigure, Range } from "./resolve-assumed.ts";
import type { Survey } from "./survey.ts";

/**
 * Draws of everything that a survey leaves open: one place in its range for each unknown and draw. A row of a table is
 * one unknown whichever bed uses it; what was judged bed by bed is an unknown of its bed.
 */
export interface Draws {
  /** Figures of the draw that stands. */
  pick: PickFigure;
  /** Makes the next draw; the first one too. */
  next(): void;
  /** For each unknown asked for so far, its place in its range in each draw, 0–1. */
  places(): ReadonlyMap<string, Float64Array>;
}

/**
 * @param stream a stream of random numbers for each unknown, by its name: whether a figure is asked for in one draw, or
 * another survey has it too, moves no other unknown
 */
export function drawsOf(stream: (unknown: string) => Rng): Draws {
  const known = new Map<string, { rng: Rng; places: number[] }>();
  let draw = -1;
  const placeOf = (unknown: string): number => {
    let entry = known.get(unknown);
    if (!entry) {
      entry = { rng: stream(unknown), places: [] };
      known.set(unknown, entry);
    }
    while (entry.places.length <= draw) entry.places.push(entry.rng.uniform());
    return entry.places[draw]!;
  };
  return {
    pick: (unknown, range) => (range.low < range.high ? triangular(range, placeOf(unknown)) : range.middle),
    next: () => {
      draw++;
    },
    places: () =>
      new Map(
        [...known].map(([unknown, { places }]) => [
          unknown,
          Float64Array.from({ length: draw + 1 }, (_, k) => places[k] ?? Number.NaN),
        ]),
      ),
  };
}

/** The figure at a place 0–1 of a triangular distribution. @source method of this project, section 9 */
export function triangular({ low, middle, high }: Range, place: number): number {
  const width = high - low;
  const turn = (middle - low) / width;
  return place < turn
    ? low + Math.sqrt(place * width * (middle - low))
    : high - Math.sqrt((1 - place) * width * (high - middle));
}

/**
 * The survey with what was measured drawn again within its standard error: a triangle as wide as gives that error
 * (half its width is √6 standard errors). Only figures in use whose reading gives an error.
 */
export function withMeasuredAgain(survey: Survey, pick: PickFigure): Survey {
  let drawn = survey;
  for (const { at, used, standardError } of survey.found ?? [])
    if (used !== false && standardError !== undefined && standardError > 0)
      drawn = withNumberAt(drawn, stepsOf(at), (figure) => {
        const half = Math.sqrt(6) * standardError;
        const range = { low: Math.max(figure * 0.01, figure - half), middle: figure, high: figure + half };
        return pick(`found.${at}`, range);
      });
  return drawn;
}

/** The steps of a path such as `beds[4].watering.flow_L_min`. */
function stepsOf(path: string): string[] {
  return path.split(/[.[\]]+/).filter((step) => step !== "");
}

/** A copy with the number at a path changed; the same where there is no number there. */
function withNumberAt<T>(part: T, steps: readonly string[], change: (figure: number) => number): T {
  const [step, ...rest] = steps;
  if (step === undefined) return typeof part === "number" ? (change(part) as T) : part;
  if (typeof part !== "object" || part === null || !Object.hasOwn(part, step)) return part;
  const before = (part as Record<string, unknown>)[step];
  const after = withNumberAt(before, rest, change);
  if (after === before) return part;
  if (Array.isArray(part)) return part.with(Number(step), after) as T;
  return { ...part, [step]: after };
}
