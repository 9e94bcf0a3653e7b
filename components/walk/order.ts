import { walkParts } from "../../src/survey/measuring/way.ts";
import type { Stop } from "./stops.ts";

/** What an open question does to the answer: the path that it hangs on, and its share of the answer's width. */
export interface Weight {
  at: string;
  share: number;
}

/** Length of the short walk, minutes. */
export const shortWalk_min = 45;

/** Widths that rest on a table row are shared by the beds that use it; a bed's own path is its own. */
function weightOf(stop: Stop, weights: readonly Weight[]): number {
  return weights
    .filter(({ at }) => [stop.at, ...stop.also].some((path) => at === path || at.startsWith(`${path}.`)))
    .reduce((sum, { share }) => sum + share, 0);
}

/** What to measure first where nothing says what it does to the answer: sizes, thirst, flows and habits, cover. */
const firstKinds = [
  "area",
  "habit",
  "flow",
  "thirst",
  "capacity",
  "roof-area",
  "cover",
  "soil",
  "mulch",
  "shade",
];

/**
 * Stops that fit into a short walk, in the walk's own order: those that do most to the answer a minute first.
 * @param weights from the last answer; none where there is no answer yet
 */
export function shortWalk(
  stops: readonly Stop[],
  weights: readonly Weight[] = [],
  minutes = shortWalk_min,
): Stop[] {
  const rank = (stop: Stop) => {
    const at = firstKinds.indexOf(stop.kind);
    return at === -1 ? firstKinds.length + walkParts.indexOf(stop.part) : at;
  };
  const byWorth = [...stops].sort(
    (a, b) =>
      weightOf(b, weights) / b.minutes - weightOf(a, weights) / a.minutes ||
      rank(a) - rank(b) ||
      a.index - b.index,
  );
  let left = minutes;
  const chosen = new Set<Stop>();
  for (const stop of byWorth) {
    if (stop.minutes > left) continue;
    left -= stop.minutes;
    chosen.add(stop);
  }
  return stops.filter((stop) => chosen.has(stop));
}

/** The stop that does most to the answer of those still open; the first one where nothing says. */
export function mostWanted(open: readonly Stop[], weights: readonly Weight[]): Stop | null {
  const weighed = open.map((stop) => ({ stop, weight: weightOf(stop, weights) }));
  const best = weighed.reduce<(typeof weighed)[number] | null>(
    (most, next) => (next.weight > (most?.weight ?? 0) ? next : most),
    null,
  );
  return best?.stop ?? null;
}
