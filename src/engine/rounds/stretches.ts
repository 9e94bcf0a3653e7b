import { minutesOfDay } from "./site.ts";

/** A stretch of a day in minutes from local midnight, `to` not included. */
export interface Stretch {
  from: number;
  to: number;
}

export const wholeDay: readonly Stretch[] = [{ from: 0, to: minutesOfDay }];

/** Stretches in order, those that touch joined, empty ones left out. */
export function joined(stretches: readonly Stretch[]): Stretch[] {
  const out: Stretch[] = [];
  for (const { from, to } of [...stretches].sort((a, b) => a.from - b.from)) {
    if (to <= from) continue;
    const last = out[out.length - 1];
    if (last && from <= last.to) last.to = Math.max(last.to, to);
    else out.push({ from, to });
  }
  return out;
}

/** What is left of stretches, in order, when others are taken out. */
export function without(stretches: readonly Stretch[], taken: readonly Stretch[]): Stretch[] {
  let left = joined(stretches);
  for (const hole of taken)
    left = left.flatMap((piece) => [
      { from: piece.from, to: Math.min(piece.to, hole.from) },
      { from: Math.max(piece.from, hole.to), to: piece.to },
    ]);
  return joined(left);
}

/** What two sets of stretches have in common. */
export function common(a: readonly Stretch[], b: readonly Stretch[]): Stretch[] {
  return joined(
    a.flatMap((one) =>
      b.map((other) => ({ from: Math.max(one.from, other.from), to: Math.min(one.to, other.to) })),
    ),
  );
}

export function minutesIn(stretches: readonly Stretch[]): number {
  return stretches.reduce((sum, { from, to }) => sum + to - from, 0);
}
