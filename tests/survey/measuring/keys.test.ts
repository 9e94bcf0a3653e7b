import { describe, expect, test } from "vitest";
import { textureClasses } from "../../../src/engine/texture-class.ts";
import { type Key, walkKey } from "../../../src/survey/measuring/key.ts";
import { thirsts } from "../../../src/survey/words.ts";
import { soilFeelKey, thirstKey } from "../../../src/tables/keys.ts";
import { come, refusal } from "./readings.ts";

/** Every way through a key, as the places of the answers. */
function everyWalk(key: Key, answers: number[] = []): number[][] {
  const walk = walkKey(key, answers)!;
  if (walk.end) return [answers];
  expect(walk.next, `after ${JSON.stringify(walk.path)}`).not.toBeNull();
  expect(answers.length).toBeLessThan(8);
  return walk.next!.answers.flatMap((_, place) => everyWalk(key, [...answers, place]));
}

describe.each<[string, Key, readonly string[]]>([
  ["thirst key", thirstKey, thirsts],
  ["soil by feel", soilFeelKey, textureClasses],
])("%s", (_, key, words) => {
  const ends = everyWalk(key).map((answers) => walkKey(key, answers)!);

  test("leads to an end whatever is answered, and to every class", () => {
    const reached = new Set(ends.map(({ end }) => end!.is));
    expect([...reached].sort()).toEqual([...words].sort());
  });

  test("asks every question on some way", () => {
    const asked = new Set(ends.flatMap(({ path }) => path.map(({ question }) => question)));
    expect([...asked].sort()).toEqual(key.map(({ question }) => question).sort());
  });

  test("says at each end why, how sure and from where", () => {
    for (const { end } of ends) {
      expect(end!.reason).toMatch(/^[a-z-]+$/);
      expect(end!.certainty).toBeGreaterThan(0);
      expect(end!.certainty).toBeLessThan(1);
      expect(end!.source.length).toBeGreaterThan(10);
    }
  });
});

test("a woolly plant that a dry fortnight leaves alone is watered now and then", () => {
  const found = come("thirst-key", 0, 1);
  expect(found.words).toEqual({ thirst: "low" });
  expect(found.notes[0]!.code).toBe("because-grey-or-hairy");
});

test("a ribbon of 25 to 50 mm, neither gritty nor smooth, is clay loam", () => {
  expect(come("soil-feel", 1, 2, 2).words).toEqual({ "soil.texture": "clay-loam" });
});

test("a key that is not finished says which question is next", () => {
  expect(refusal("soil-feel", 1)).toBe("key-not-finished");
  expect(refusal("thirst-key", 9)).toBe("answer-not-there");
  expect(refusal("soil-feel", 0, 0)).toBe("answer-not-there");
});
