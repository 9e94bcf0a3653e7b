import type { Candidate } from "./field-guess.ts";

/** Place in the file and how sure the shape of its values makes us, 0–1: never as sure as a header does. */
export interface ShapeGuess {
  at: number;
  certainty: number;
}

/** Columns whose values look like daily rain: none below 0, many at 0, a long tail. */
export function rainLike(candidates: readonly Candidate[]): ShapeGuess[] {
  return candidates
    .flatMap(({ at, values }) => {
      const numbers =
        values && values.numericShare > 0.9
          ? values.numbers.filter((value) => value > -90 && value < 9000)
          : [];
      if (numbers.length < 10 || numbers.some((value) => value < 0)) return [];
      const zeros = numbers.filter((value) => value === 0).length / numbers.length;
      return zeros > 0.15 && zeros < 0.98 ? [{ at, certainty: 0.5 }] : [];
    })
    .sort((a, b) => b.certainty - a.certainty);
}

/**
 * Columns whose values look like daily temperatures: today's is close to yesterday's, seldom 0. Pairs of which one
 * lies at or below the other on nearly every day are the lowest and the highest.
 */
export function temperaturePairs(
  candidates: readonly Candidate[],
): { low: number; high: number; certainty: number }[] {
  const steady = candidates.filter(({ values }) => {
    return (
      values && values.numericShare > 0.9 && values.numbers.length >= 10 && sameness(values.numbers) > 0.5
    );
  });
  const pairs = steady.flatMap((low) =>
    steady.flatMap((high) => {
      const below = low === high ? 0 : shareBelow(low.values!.byRow, high.values!.byRow);
      return below >= 0.98 ? [{ low: low.at, high: high.at, certainty: 0.45 }] : [];
    }),
  );
  return pairs.slice(0, 6);
}

/** Share of the rows with both on which the first is not above the second; 0 where there are none. */
export function shareBelow(low: readonly number[], high: readonly number[]): number {
  let both = 0;
  let below = 0;
  for (let at = 0; at < low.length; at++) {
    if (Number.isNaN(low[at]!) || Number.isNaN(high[at]!)) continue;
    both += 1;
    if (low[at]! <= high[at]!) below += 1;
  }
  return both === 0 ? 0 : below / both;
}

/** Correlation of each value with the one before. */
function sameness(numbers: readonly number[]): number {
  const mean = numbers.reduce((sum, value) => sum + value, 0) / numbers.length;
  let together = 0;
  let alone = 0;
  for (let at = 0; at < numbers.length; at++) {
    const apart = numbers[at]! - mean;
    alone += apart * apart;
    if (at > 0) together += apart * (numbers[at - 1]! - mean);
  }
  return alone > 0 ? together / alone : 0;
}
