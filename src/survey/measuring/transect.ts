import type { Figure } from "./figure.ts";
import { wilson } from "./wilson.ts";

/** A planting's part of what grows along a tape, with the interval of its share. */
export interface TransectShare extends Figure {
  low: number;
  high: number;
}

/**
 * Shares of a mixed bed by counting, at even steps along a tape, which planting stands there; points on bare
 * ground are left out before. Points near each other are not independent, so the interval is a narrow one.
 */
export function transectShares(counts: readonly number[]): TransectShare[] {
  const all = counts.reduce((sum, count) => sum + count, 0);
  return counts.map((count) => {
    const { low, high, standardError } = wilson(count, all);
    return { figure: count / all, standardError, low, high };
  });
}

/** Shares by the length of tape that lies over each planting: from, to and the planting's place, 0 the first. */
export function interceptShares(pieces: readonly { from: number; to: number; planting: number }[]): number[] {
  const plantings = Math.max(...pieces.map(({ planting }) => planting)) + 1;
  const lengths = Array.from({ length: plantings }, (_, planting) =>
    pieces
      .filter((piece) => piece.planting === planting)
      .reduce((sum, { from, to }) => sum + Math.abs(to - from), 0),
  );
  const all = lengths.reduce((sum, length) => sum + length, 0);
  return lengths.map((length) => length / all);
}
