import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import { inOrder } from "../order/prepare.ts";

/** More beds than this are too many to put in order; the largest are asked for. */
export const mostGuessed = 12;

/** The beds that a class is asked for, in an order that gives nothing away: by name. */
export function toGuess(beds: readonly ThirstBed[]): ThirstBed[] {
  const watered = beds.filter(({ supply, gross_L_year }) => supply !== "none" && gross_L_year >= 1);
  return [...watered]
    .sort((a, b) => b.area_m2 - a.area_m2)
    .slice(0, mostGuessed)
    .sort((a, b) => a.name.localeCompare(b.name));
}

/** A list with one of its items at another place; places count from 0 and are held to the list. */
export function moved<T>(list: readonly T[], from: number, to: number): T[] {
  const rest = list.filter((_, i) => i !== from);
  const place = Math.max(0, Math.min(rest.length, to));
  return [...rest.slice(0, place), list[from]!, ...rest.slice(place)];
}

export interface GuessLine {
  bed: ThirstBed;
  /** Places from 0, thirstiest first. */
  guessed: number;
  found: number;
  /** Litres on each m² more than the next more frugal bed; null of the last. */
  more_L_m2: number | null;
}

/** How a guess came out, in the order that was worked out. */
export interface GuessResult {
  lines: readonly GuessLine[];
  right: number;
  near: number;
  /** The bed farthest from where it was guessed; null where all are right. */
  farthest: GuessLine | null;
}

/** @param guess ids, thirstiest first */
export function resultOf(beds: readonly ThirstBed[], guess: readonly string[]): GuessResult {
  const found = inOrder(beds, "area");
  const lines = found.map((bed, place): GuessLine => {
    const next = found[place + 1];
    return {
      bed,
      guessed: guess.indexOf(bed.id),
      found: place,
      more_L_m2: next ? bed.gross_L_m2_year - next.gross_L_m2_year : null,
    };
  });
  const off = (line: GuessLine) => Math.abs(line.guessed - line.found);
  const farthest = [...lines].sort((a, b) => off(b) - off(a))[0];
  return {
    lines,
    right: lines.filter((line) => off(line) === 0).length,
    near: lines.filter((line) => off(line) <= 1).length,
    farthest: farthest && off(farthest) > 0 ? farthest : null,
  };
}
