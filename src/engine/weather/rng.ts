/** A stream of random numbers, handed to whoever draws. */
export interface Rng {
  /** The next number, evenly spread over 0–1, both ends left out. */
  uniform(): number;
}

/**
 * A stream of its own for each use of one seed, so that one use drawing more does not move the others.
 * The state is four 32-bit words that SplitMix64 spreads from the seed, as the authors advise.
 * @param seed a whole number
 * @param stream 0, 1, 2…
 * @source Blackman and Vigna (2021), Scrambled linear pseudorandom number generators, ACM Transactions on
 * Mathematical Software 47(4):36, xoshiro128**; Steele, Lea and Flood (2014), OOPSLA, SplitMix64
 */
export function randomStream(seed: number, stream = 0): Rng {
  const words = splitMix64(BigInt(seed), 2 * stream + 2).slice(-2);
  const [high, low] = [words[0]!, words[1]!];
  const next = xoshiro128([half(high >> 32n), half(high), half(low >> 32n), half(low)]);
  return { uniform: () => ((next() >>> 5) * 2 ** 26 + (next() >>> 6) + 0.5) / 2 ** 53 };
}

/** The generator itself: 32-bit numbers from a state that is not all zero. */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [s0, s1, s2, s3] = state;
  return () => {
    const result = Math.imul(rotate(Math.imul(s1, 5), 7), 9) >>> 0;
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = rotate(s3, 11);
    return result;
  };
}

/** The first `count` 64-bit numbers of SplitMix64. */
export function splitMix64(seed: bigint, count: number): bigint[] {
  let state = seed;
  return Array.from({ length: count }, () => {
    state = BigInt.asUintN(64, state + 0x9e3779b97f4a7c15n);
    let z = state;
    z = BigInt.asUintN(64, (z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
    z = BigInt.asUintN(64, (z ^ (z >> 27n)) * 0x94d049bb133111ebn);
    return z ^ (z >> 31n);
  });
}

function rotate(x: number, by: number): number {
  return (x << by) | (x >>> (32 - by));
}

function half(x: bigint): number {
  return Number(BigInt.asUintN(32, x));
}
