import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { byPlace, mostExact, shapley } from "../../src/engine/shapley.ts";
import { randomStream } from "../../src/engine/weather/rng.ts";

const rng = () => randomStream(7);
const maskOf = (set: Uint8Array) => set.reduce((mask, one, i) => mask + (one << i), 0);
const sharesOf = (members: number, value: (set: Uint8Array) => number) =>
  shapley(members, value, rng()).map(({ share }) => share);

/** A game of up to seven members: a value for each set, nothing for the empty one. */
const game = fc.integer({ min: 2, max: 7 }).chain((members) =>
  fc
    .array(fc.double({ min: -100, max: 100, noNaN: true }), {
      minLength: 2 ** members,
      maxLength: 2 ** members,
    })
    .map((values) => ({
      members,
      value: (set: Uint8Array) => (maskOf(set) === 0 ? 0 : values[maskOf(set)]!),
    })),
);

describe("Shapley shares", () => {
  test("the glove market: one left glove, two right ones", () => {
    // Shapley 1953; as worked in game theory textbooks: 2/3, 1/6, 1/6
    const pairs = (set: Uint8Array) => (set[0] === 1 && set[1]! + set[2]! > 0 ? 1 : 0);
    const shares = sharesOf(3, pairs);
    [2 / 3, 1 / 6, 1 / 6].forEach((share, i) => {
      expect(shares[i]).toBeCloseTo(share, 12);
    });
  });

  test("the airport game: a runway of 3 lengths, each paid by those who need it", () => {
    // Littlechild and Owen 1973: each stretch is shared evenly by all that use it
    const length = [1, 3, 7];
    const cost = (set: Uint8Array) => Math.max(0, ...length.filter((_, i) => set[i] === 1));
    const shares = sharesOf(3, cost);
    [1 / 3, 1 / 3 + 1, 1 / 3 + 1 + 4].forEach((share, i) => {
      expect(shares[i]).toBeCloseTo(share, 12);
    });
  });

  test("efficiency: shares add up to the whole", () => {
    fc.assert(
      fc.property(game, ({ members, value }) => {
        const sum = sharesOf(members, value).reduce((total, share) => total + share, 0);
        expect(sum).toBeCloseTo(value(new Uint8Array(members).fill(1)), 9);
      }),
      { numRuns: 50 },
    );
  });

  test("symmetry: two that add the same get the same", () => {
    fc.assert(
      fc.property(game, ({ members, value }) => {
        const alike = (set: Uint8Array) => {
          const turned = set.slice();
          [turned[0], turned[1]] = [set[1]!, set[0]!];
          return value(set) + value(turned);
        };
        const [a, b] = sharesOf(members, alike);
        expect(a).toBeCloseTo(b!, 9);
      }),
      { numRuns: 50 },
    );
  });

  test("dummy: one that adds nothing gets nothing", () => {
    fc.assert(
      fc.property(game, ({ members, value }) => {
        const idle = (set: Uint8Array) => value(Uint8Array.from(set, (one, i) => (i === 0 ? 0 : one)));
        expect(sharesOf(members, idle)[0]).toBeCloseTo(0, 9);
      }),
      { numRuns: 50 },
    );
  });

  test("additivity: the shares of two games added are the sums of their shares", () => {
    fc.assert(
      fc.property(game, ({ members, value }) => {
        const other = (set: Uint8Array) => maskOf(set) ** 2;
        const both = sharesOf(members, (set) => value(set) + other(set));
        const [one, two] = [sharesOf(members, value), sharesOf(members, other)];
        both.forEach((share, i) => {
          expect(share).toBeCloseTo(one[i]! + two[i]!, 7);
        });
      }),
      { numRuns: 50 },
    );
  });

  test("a share is the mean over the places that a member may have, from first to last", () => {
    fc.assert(
      fc.property(game, ({ members, value }) => {
        const shares = shapley(members, value, rng());
        shares.forEach(({ share, first, last }, i) => {
          const places = byPlace(members, i, value);
          const mean = places.reduce((sum, place) => sum + place.mean, 0) / members;
          expect(mean).toBeCloseTo(share, 9);
          expect(places[0]!.mean).toBeCloseTo(first, 9);
          expect(places.at(-1)!.mean).toBeCloseTo(last, 9);
          // of n − 1 others, all sets of so many: binomial coefficients, 2^(n − 1) in all
          expect(places.reduce((sum, { sets }) => sum + sets.length, 0)).toBe(2 ** (members - 1));
        });
      }),
    );
  });

  test("first and last are what a member adds at either end", () => {
    const value = (set: Uint8Array) => (set[0]! + set[1]!) ** 2;
    expect(shapley(2, value, rng())[0]).toEqual({ share: 2, standardError: null, first: 1, last: 3 });
  });
});

describe("more members than are counted out", () => {
  const members = mostExact + 2;
  const value = (set: Uint8Array) => {
    const weight = set.reduce((sum, one, i) => sum + one * (i + 1), 0);
    return Math.sqrt(weight) * 10 + (set[3] === 1 && set[8] === 1 ? 5 : 0);
  };
  /** All 2^12 sets, weighted by a second formula: the mean over sizes of the mean over sets of that size. */
  const exact = (i: number) => {
    let sum = 0;
    const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k);
    for (let mask = 0; mask < 2 ** members; mask++) {
      if ((mask >> i) & 1) continue;
      const set = Uint8Array.from({ length: members }, (_, k) => (mask >> k) & 1);
      const size = set.reduce((count, one) => count + one, 0);
      const before = value(set);
      set[i] = 1;
      sum += (value(set) - before) / (members * choose(members - 1, size));
    }
    return sum;
  };

  test("drawn orders come within four standard errors of the exact share, and still add up", () => {
    const shares = shapley(members, value, rng());
    for (const i of [0, 3, 8, 11]) {
      const { share, standardError } = shares[i]!;
      expect(standardError).toBeGreaterThan(0);
      expect(Math.abs(share - exact(i))).toBeLessThan(4 * standardError!);
    }
    const sum = shares.reduce((total, { share }) => total + share, 0);
    expect(sum).toBeCloseTo(value(new Uint8Array(members).fill(1)), 9);
  });

  test("the same seed gives the same shares", () => {
    expect(shapley(members, value, rng())).toEqual(shapley(members, value, rng()));
  });
});
