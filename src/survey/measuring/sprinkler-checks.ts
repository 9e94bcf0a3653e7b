/** What to look for while sprinklers run, before any cans: each is mended first, for cans only measure it. */
export const sprinklerFaults = [
  "tilted",
  "sunken",
  "blocked",
  "leaking",
  "broken",
  "misting",
  "weak",
  "not-turning",
  "overspray",
  "hidden-by-plants",
  "mixed-heads",
  "does-not-pop-up",
  "runs-on-after",
  "low-head-drains",
] as const;

export type SprinklerFault = (typeof sprinklerFaults)[number];

/** Faults that make a test with cans worthless until they are mended. Ours, after common practice. */
const mendFirst: readonly SprinklerFault[] = [
  "tilted",
  "blocked",
  "broken",
  "leaking",
  "misting",
  "weak",
  "not-turning",
];

export interface SprinklerLook {
  /** Sprinklers looked at. */
  sprinklers: number;
  /** Number of sprinklers with each fault. */
  seen: Partial<Record<SprinklerFault, number>>;
}

/** Faults seen, commonest first, and whether cans are worth setting out yet. */
export function sprinklerFindings({ sprinklers, seen }: SprinklerLook): {
  faults: { fault: SprinklerFault; sprinklers: number; share: number }[];
  cansWorthwhile: boolean;
} {
  const faults = sprinklerFaults
    .map((fault) => ({ fault, sprinklers: seen[fault] ?? 0, share: (seen[fault] ?? 0) / sprinklers }))
    .filter((found) => found.sprinklers > 0)
    .sort((a, b) => b.sprinklers - a.sprinklers);
  return { faults, cansWorthwhile: !faults.some(({ fault }) => mendFirst.includes(fault)) };
}
