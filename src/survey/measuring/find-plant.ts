import { type Genus, genera } from "../../tables/genera.ts";
import { editSteps } from "../near.ts";

/** A genus that fits what was typed, by which of its names, and how far off the spelling is. */
export interface FoundPlant {
  genus: Genus;
  /** The name that fits: the genus or a common one. */
  name: string;
  /** Letters that differ; 0 where it is as written or begins so. */
  off: number;
}

/** Lower case, without accents and marks, one space between words. */
function folded(name: string): string {
  return name
    .toLowerCase()
    .normalize("NFD")
    .replace(/\p{M}|['’]/gu, "")
    .replace(/[^\p{L}]+/gu, " ")
    .trim();
}

const known = genera.flatMap((genus) =>
  [genus.genus, ...genus.names].map((name) => ({ genus, name, plain: folded(name) })),
);

/** Misspellings forgiven: none in three letters, one in six, two in nine, three in more. */
function mostOff(length: number): number {
  return length < 4 ? 0 : length < 7 ? 1 : length < 10 ? 2 : 3;
}

/**
 * Genera by what was typed: a genus or a common name, misspelled too, a whole name or its beginning, a species
 * after the genus left aside. Best first; at most so many.
 */
export function findPlant(typed: string, most = 8): FoundPlant[] {
  const wanted = folded(typed.slice(0, 80));
  if (wanted.length < 2) return [];
  const rightly = fitting((plain) => asWritten(wanted, plain));
  const found = rightly.some(({ rank }) => rank <= 1) ? rightly : fitting((plain) => fitOf(wanted, plain));
  return found
    .sort((a, b) => a.rank - b.rank || (a.genus.genus < b.genus.genus ? -1 : 1))
    .slice(0, most)
    .map(({ genus, name, off }) => ({ genus, name, off }));
}

interface Fit {
  off: number;
  /** 0 the best. */
  rank: number;
}

/** Each genus by the name that fits it best. */
function fitting(fit: (plain: string) => Fit | null): (FoundPlant & Fit)[] {
  const best = new Map<string, FoundPlant & Fit>();
  for (const { genus, name, plain } of known) {
    const found = fit(plain);
    const before = best.get(genus.genus);
    if (found && (!before || found.rank < before.rank)) best.set(genus.genus, { genus, name, ...found });
  }
  return [...best.values()];
}

/** Rightly spelled: the whole name, a genus with its species, a name's beginning, one of its words. */
function asWritten(wanted: string, plain: string): Fit | null {
  if (plain === wanted || plain === `${wanted}s` || `${plain}s` === wanted) return { off: 0, rank: 0 };
  if (wanted.startsWith(`${plain} `)) return { off: 0, rank: 1 };
  if (plain.startsWith(wanted)) return { off: 0, rank: 2 };
  return plain.includes(` ${wanted}`) ? { off: 0, rank: 3 } : null;
}

/** The same misspelled too. */
function fitOf(wanted: string, plain: string): Fit | null {
  const rightly = asWritten(wanted, plain);
  if (rightly) return rightly;
  const words = plain.split(" ");
  const first = wanted.split(" ")[0]!;
  const whole = Math.min(misspelled(wanted, plain), misspelled(wanted, plain.slice(0, wanted.length)));
  const part = Math.min(...words.flatMap((word) => [misspelled(wanted, word), misspelled(first, word)]));
  const off = Math.min(whole, part);
  if (!Number.isFinite(off)) return null;
  // of two spellings as near, a whole name goes before a word of one
  return { off, rank: 3 + off + (whole === off ? 0 : 0.5) };
}

/** Letters that differ; Infinity where they are more than a misspelling. */
function misspelled(typed: string, name: string): number {
  const most = mostOff(typed.length);
  if (name.length < 3 || Math.abs(typed.length - name.length) > most) return Number.POSITIVE_INFINITY;
  if (lettersMissing(typed, name) > most) return Number.POSITIVE_INFINITY;
  const steps = editSteps(typed, name);
  return steps <= most ? steps : Number.POSITIVE_INFINITY;
}

/** Letters of the first that the second has none of: each takes a step at least. */
function lettersMissing(typed: string, name: string): number {
  let missing = 0;
  for (let i = 0; i < typed.length; i++) if (!name.includes(typed[i]!)) missing++;
  return missing;
}
