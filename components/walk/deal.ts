import type { Survey } from "../../src/survey/survey.ts";

/** Beds of each group, by name: round and round, each of the larger half to two groups where there are as many. */
export function dealBeds({ beds }: Survey, groups: number): string[][] {
  const hands: string[][] = Array.from({ length: groups }, () => []);
  const bySize = [...beds].sort((a, b) => b.area_m2 - a.area_m2);
  const twice = groups > 1 ? Math.ceil(bySize.length / 2) : 0;
  let hand = 0;
  const give = (name: string) => {
    hands[hand % groups]!.push(name);
    hand++;
  };
  for (const { name } of bySize) give(name);
  // the second judge of a bed is never the first
  bySize.slice(0, twice).forEach(({ name }, i) => {
    hands[(i + 1) % groups]!.push(name);
  });
  return hands.map((names) => [...new Set(names)]);
}
