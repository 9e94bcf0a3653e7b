import { type Rng, randomStream } from "./weather/rng.ts";

/**
 * A stream of random numbers for each name under one seed: what one name draws moves no other's.
 * @source Fowler, Noll and Vo, FNV-1a, spreads the names
 */
export function namedStreams(seed: number): (name: string) => Rng {
  return (name) => {
    let hash = Math.imul(0x811c9dc5 ^ seed, 0x01000193);
    for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
    return randomStream(hash >>> 0);
  };
}
