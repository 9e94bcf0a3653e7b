import type { Gazetteer, Place } from "./gazetteer.ts";
import { distance, folded, triples, triplesOf } from "./spelling.ts";

/** A place found, with how near its name is to what was typed: 1 is the same. */
export interface Found {
  place: Place;
  closeness: number;
}

export interface PlaceSearch {
  /** Places whose name is near `typed`, best first; "Springfield, Illinois" and "springfield il" tell which. */
  find(typed: string, most: number): Found[];
}

/** What closeness is worth beside size: ten times the people weigh as much as a twentieth of the name. */
const perTenfold = 0.05;
const leastCloseness = 0.6;
/** Names looked at letter by letter: those that share most runs of three signs with what was typed. */
const looked = 400;
const rightRegion = 0.3;

/** Makes names ready to be looked up; the index takes a fraction of a second and some tens of megabytes. */
export function placeSearch({ places, regionCodes, otherNames }: Gazetteer): PlaceSearch {
  const owners = [...places.keys(), ...otherNames.map(({ place }) => place)];
  const names = [...places.map(({ name }) => folded(name)), ...otherNames.map(({ name }) => folded(name))];
  const size = owners.map((owner) => perTenfold * Math.log10(places[owner]!.population + 1));
  const regions = regionWords(places, regionCodes);
  const knownRegions = new Set([...new Set(regions)].flat());
  const index = tripleIndex(names);
  const shared = new Uint8Array(names.length);
  const sorted = Uint32Array.from(names.keys()).sort((a, b) => (names[a]! < names[b]! ? -1 : 1));

  /** Entries that begin with what was typed, the largest. */
  function beginningWith(name: string): number[] {
    const from = firstNotBefore(sorted, names, name);
    const to = firstNotBefore(sorted, names, `${name}\uffff`);
    return foremost([...sorted.subarray(from, to)], (entry) => size[entry]!);
  }

  /** Entries that share most runs of three signs. */
  function alike(name: string): number[] {
    const runs = triplesOf(name);
    const least = Math.max(1, Math.floor(runs.length / 4));
    const touched: number[] = [];
    for (const run of runs) {
      for (let at = index.start[run]!; at < index.start[run + 1]!; at++) {
        const entry = index.entries[at]!;
        if (++shared[entry]! === least) touched.push(entry);
      }
    }
    const likeness = (entry: number) =>
      (2 * shared[entry]!) / (runs.length + index.count[entry]!) + size[entry]!;
    const best = foremost(touched, likeness);
    shared.fill(0);
    return best;
  }

  function find(typed: string, most: number): Found[] {
    const best = new Map<Place, Found & { score: number }>();
    for (const { name, region, sure } of readings(typed, knownRegions)) {
      for (const entry of new Set([...beginningWith(name), ...alike(name)])) {
        const owner = owners[entry]!;
        const fits = region === null || regions[owner]!.some((own) => isRegion(own, region));
        if (!fits && !sure) continue;
        const closeness = closenessOf(name, names[entry]!);
        if (closeness < leastCloseness) continue;
        const told = region === null ? 0 : fits ? rightRegion : -rightRegion;
        const score = closeness + size[entry]! + told;
        const place = places[owner]!;
        if (score > (best.get(place)?.score ?? Number.NEGATIVE_INFINITY))
          best.set(place, { place, closeness, score });
      }
    }
    const ranked = [...best.values()].sort((a, b) => b.score - a.score);
    return withoutTwins(ranked, most).map(({ place, closeness }) => ({ place, closeness }));
  }

  return { find };
}

/** The entries that weigh most, in no order. */
function foremost(entries: number[], weight: (entry: number) => number): number[] {
  if (entries.length <= looked) return entries;
  const weights = Float64Array.from(entries, weight);
  const least = weights.slice().sort()[weights.length - looked]!;
  return entries.filter((_, i) => weights[i]! >= least).slice(0, looked);
}

/** What a place's region and country may be typed as, folded; the same list for all places of one region. */
function regionWords(places: readonly Place[], regionCodes: readonly string[]): (readonly string[])[] {
  const lists = new Map<string, readonly string[]>();
  return places.map(({ region, country, countryCode }, i) => {
    const key = `${countryCode}.${regionCodes[i]!}`;
    let list = lists.get(key);
    if (list === undefined) {
      const names = [region ?? "", regionCodes[i]!, country, countryCode, alsoCalled[countryCode] ?? ""];
      list = names.map(folded).filter((name) => name !== "");
      lists.set(key, list);
    }
    return list;
  });
}

const alsoCalled: Readonly<Record<string, string>> = { GB: "uk", US: "usa", AE: "uae" };

/** What was typed, read as a name, and as a name with its region or country after it. */
interface Reading {
  name: string;
  region: string | null;
  /** A comma says so: what is elsewhere stays in, further down. */
  sure: boolean;
}

function readings(typed: string, knownRegions: ReadonlySet<string>): Reading[] {
  const [first, ...rest] = typed.split(",").map(folded);
  const region = rest.filter((part) => part !== "").at(0) ?? null;
  if (region !== null && first !== "") return [{ name: first!, region, sure: true }];
  const name = folded(typed);
  if (name === "") return [];
  const words = name.split(" ");
  const found: Reading[] = [{ name, region: null, sure: true }];
  for (let last = 1; last <= Math.min(3, words.length - 1); last++) {
    const tail = words.slice(-last).join(" ");
    if (knownRegions.has(tail))
      found.push({ name: words.slice(0, -last).join(" "), region: tail, sure: false });
  }
  return found;
}

/** The region typed, or the beginning of it while it is typed. */
function isRegion(own: string, typed: string): boolean {
  return own === typed || (typed.length >= 3 && own.startsWith(typed));
}

/**
 * How near what was typed is to a name, 0–1: by the letters that differ, or as the name's beginning, which
 * counts the more the more of it is there.
 */
function closenessOf(typed: string, name: string): number {
  const { whole, beginning } = distance(typed, name);
  const asWhole = 1 - whole / Math.max(typed.length, name.length);
  if (beginning > typed.length / 4) return asWhole;
  const there = Math.min(1, typed.length / name.length);
  return Math.max(asWhole, 0.8 + 0.19 * there - (1.2 * beginning) / typed.length);
}

/** Drops a place where a larger one of the same name lies in the same region. */
function withoutTwins<T extends Found>(ranked: readonly T[], most: number): T[] {
  const kept: T[] = [];
  const seen = new Set<string>();
  for (const found of ranked) {
    const { name, region, countryCode } = found.place;
    const key = `${name}|${region}|${countryCode}`;
    if (seen.has(key)) continue;
    seen.add(key);
    kept.push(found);
    if (kept.length === most) break;
  }
  return kept;
}

/** For each run of three signs the entries that have it, one after the other. */
function tripleIndex(names: readonly string[]) {
  const runs = names.map(triplesOf);
  const start = new Uint32Array(triples + 1);
  for (const own of runs) for (const run of own) start[run + 1]! += 1;
  for (let run = 0; run < triples; run++) start[run + 1]! += start[run]!;
  const next = start.slice();
  const entries = new Uint32Array(start[triples]!);
  runs.forEach((own, entry) => {
    for (const run of own) {
      entries[next[run]!] = entry;
      next[run]! += 1;
    }
  });
  return { start, entries, count: Uint8Array.from(runs, (own) => own.length) };
}

/** Where the first name not before `name` stands in the sorted order. */
function firstNotBefore(sorted: Uint32Array, names: readonly string[], name: string): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (names[sorted[middle]!]! < name) low = middle + 1;
    else high = middle;
  }
  return low;
}
