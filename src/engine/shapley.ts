import type { Rng } from "./weather/rng.ts";

/** What one member of a set brings to its value. */
export interface Share {
  /** The mean of what it adds over all orders in which the members may come. */
  share: number;
  /** null where every order was counted. */
  standardError: number | null;
  /** What it adds when it comes first, and when it comes last. */
  first: number;
  last: number;
}

/** Up to this many members all 2^n sets are valued; beyond, orders are drawn. */
export const mostExact = 10;

/** Sets valued for the orders drawn beyond it, in pairs of one and its reverse: fewer pairs for many members. */
const valued = 12_000;
/** Orders drawn for so many members, each with its reverse. */
export const pairsFor = (members: number) => Math.min(500, Math.max(60, Math.round(valued / (2 * members))));

/**
 * The Shapley value of each member of a set: shares add up to the value of the whole set, members that always add the
 * same get the same, and no order is favoured.
 * @param value of the set whose members are marked 1; of the empty one too
 * @param rng draws the orders where there are more than `mostExact` members
 * @source Shapley 1953, A value for n-person games, Contributions to the Theory of Games II:307–317; drawn orders:
 * Castro, Gómez and Tejada 2009, Computers and Operations Research 36:1726–1730
 */
export function shapley(members: number, value: (set: Uint8Array) => number, rng: Rng): Share[] {
  const ends = firstAndLast(members, value);
  const shares = members <= mostExact ? exactShares(members, value) : drawnShares(members, value, rng);
  return shares.map((share, i) => ({ ...share, ...ends[i]! }));
}

function firstAndLast(members: number, value: (set: Uint8Array) => number): Pick<Share, "first" | "last">[] {
  const none = value(new Uint8Array(members));
  const all = value(new Uint8Array(members).fill(1));
  return Array.from({ length: members }, (_, i) => {
    const alone = new Uint8Array(members);
    alone[i] = 1;
    const without = new Uint8Array(members).fill(1);
    without[i] = 0;
    return { first: value(alone) - none, last: all - value(without) };
  });
}

/** What a member adds when a number of others stand before it. */
export interface AtPlace {
  /** How many stand before it. */
  before: number;
  /** The mean over all sets of so many others. */
  mean: number;
  /** Those sets, with what the member adds to each. */
  sets: { set: Uint8Array; adds: number }[];
}

/**
 * A member's share taken apart by how many stand before it: in an order drawn blindly each number is as likely as every
 * other, and then every set of so many others is, so that the mean of these means is the share.
 */
export function byPlace(members: number, i: number, value: (set: Uint8Array) => number): AtPlace[] {
  const places = Array.from({ length: members }, (_, before): AtPlace => ({ before, mean: 0, sets: [] }));
  for (let mask = 0; mask < 2 ** members; mask++) {
    if ((mask >> i) & 1) continue;
    const set = Uint8Array.from({ length: members }, (_, k) => (mask >> k) & 1);
    const without = value(set);
    const more = set.slice();
    more[i] = 1;
    places[ones(mask)]!.sets.push({ set, adds: value(more) - without });
  }
  return places.map((place) => ({
    ...place,
    mean: place.sets.reduce((sum, { adds }) => sum + adds, 0) / place.sets.length,
  }));
}

type Mean = Pick<Share, "share" | "standardError">;

function exactShares(members: number, value: (set: Uint8Array) => number): Mean[] {
  const values = new Float64Array(2 ** members);
  const set = new Uint8Array(members);
  for (let mask = 0; mask < values.length; mask++) {
    for (let i = 0; i < members; i++) set[i] = (mask >> i) & 1;
    values[mask] = value(set);
  }
  const weights = orderWeights(members);
  return Array.from({ length: members }, (_, i) => {
    let share = 0;
    for (let mask = 0; mask < values.length; mask++)
      if (!((mask >> i) & 1)) share += weights[ones(mask)]! * (values[mask | (1 << i)]! - values[mask]!);
    return { share, standardError: null };
  });
}

/** s! (n − s − 1)! / n!: how often s members stand before a given one, over all orders. */
function orderWeights(members: number): number[] {
  const weights = [1 / members];
  for (let s = 1; s < members; s++) weights.push((weights[s - 1]! * s) / (members - s));
  return weights;
}

function ones(mask: number): number {
  let count = 0;
  for (let rest = mask; rest > 0; rest &= rest - 1) count++;
  return count;
}

function drawnShares(members: number, value: (set: Uint8Array) => number, rng: Rng): Mean[] {
  const pairs = pairsFor(members);
  const sums = new Float64Array(members);
  const squares = new Float64Array(members);
  for (let k = 0; k < pairs; k++) {
    const order = shuffled(members, rng);
    const forth = added(order, value);
    const back = added([...order].reverse(), value);
    for (let i = 0; i < members; i++) {
      const mean = (forth[i]! + back[i]!) / 2;
      sums[i]! += mean;
      squares[i]! += mean * mean;
    }
  }
  return Array.from(sums, (sum, i) => {
    const share = sum / pairs;
    const variance = Math.max(0, squares[i]! / pairs - share * share) * (pairs / (pairs - 1));
    return { share, standardError: Math.sqrt(variance / pairs) };
  });
}

/** What each member adds when they come in an order. */
function added(order: readonly number[], value: (set: Uint8Array) => number): Float64Array {
  const gains = new Float64Array(order.length);
  const set = new Uint8Array(order.length);
  let before = value(set);
  for (const i of order) {
    set[i] = 1;
    const after = value(set);
    gains[i] = after - before;
    before = after;
  }
  return gains;
}

/** @source Fisher and Yates 1938 */
function shuffled(length: number, rng: Rng): number[] {
  const order = Array.from({ length }, (_, i) => i);
  for (let i = length - 1; i > 0; i--) {
    const j = Math.floor(rng.uniform() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}
