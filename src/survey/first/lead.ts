import type { UnknownShare } from "../../engine/spread.ts";
import { type FirstEntries, type FirstEntry, madeEntries, sixEntries } from "./entries.ts";

/** What would narrow the answer: an entry still to be made, or something to be measured. */
export type FirstLead =
  | { is: "entry"; entry: FirstEntry; share: number | null }
  | { is: "measure"; what: FirstMeasure; share: number }
  /** What is left is the weather of the years, which no measuring narrows. */
  | { is: "years"; share: number };

export type FirstMeasure = "plants" | "soil" | "sky" | "flow" | "reach" | "roof" | "mulch" | "today";

type Group = FirstEntry | FirstMeasure | "kinds" | "years" | "other";

/**
 * The one thing that would narrow the answer most. While the garden's size is not said the answer is by the hundred
 * square metres, so that comes first; then the entry that brings most of the width, then today's watering, without
 * which no saving can be told; then what is to be measured.
 */
export function leadOf(entries: FirstEntries, byUnknown: readonly UnknownShare[]): FirstLead | null {
  const made = new Set(madeEntries(entries));
  if (made.size === 0) return { is: "entry", entry: "place", share: null };
  if (!made.has("garden")) return { is: "entry", entry: "garden", share: null };
  const shares = sharesByGroup(entries, byUnknown);
  const open = sixEntries.filter((entry) => !made.has(entry));
  const widest = open
    .map((entry) => ({ entry, share: shares.get(entry) ?? 0 }))
    .sort((a, b) => b.share - a.share)[0];
  if (widest) return { is: "entry", entry: widest.entry, share: widest.share > 0 ? widest.share : null };
  if (!made.has("today")) return { is: "entry", entry: "today", share: null };
  const [best] = [...shares].filter(([group]) => group !== "other").sort((a, b) => b[1] - a[1]);
  if (!best) return null;
  const [group, share] = best;
  return group === "years" ? { is: "years", share } : { is: "measure", what: measureOf(group), share };
}

/** Shares of the width by what would narrow them. */
export function sharesByGroup(
  entries: FirstEntries,
  byUnknown: readonly UnknownShare[],
): ReadonlyMap<Group, number> {
  const shares = new Map<Group, number>();
  for (const { at, share } of byUnknown) {
    const group = groupOf(at, entries);
    shares.set(group, (shares.get(group) ?? 0) + share);
  }
  return shares;
}

const groups: readonly (readonly [RegExp, Group])[] = [
  [/^weather$/, "years"],
  [/^first\.(rain|et0)$/, "place"],
  [/^first\.thirst$/, "thirst"],
  [/^first\.mulched$/, "mulch"],
  [/^(first\.mulch|mulches\.)/, "mulch"],
  [/^first\.roof$/, "roof"],
  [/^first\.tank$/, "tank"],
  [/^first\.(told|bills)$/, "today"],
  [/^first\.sky$/, "sky"],
  [/^(site\.soil|soils\.)/, "soil"],
  [/^roofs\./, "roof"],
  [/flow_L_min$/, "flow"],
  [/^methods\./, "reach"],
  [/^(first\.kind|plants\.|beds\[0\]\.)/, "plants"],
];

function groupOf(at: string, entries: FirstEntries): Group {
  const group = groups.find(([pattern]) => pattern.test(at))?.[1] ?? "other";
  // the class of thirst itself is what spreads the plants' figures until it was said
  return group === "plants" && entries.thirst === undefined ? "thirst" : group;
}

function measureOf(group: Exclude<Group, "years">): FirstMeasure {
  return measured.find((what) => what === group) ?? "plants";
}

const measured: readonly FirstMeasure[] = [
  "plants",
  "soil",
  "sky",
  "flow",
  "reach",
  "roof",
  "mulch",
  "today",
];
