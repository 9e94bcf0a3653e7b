import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readHow, writeHow } from "../../../src/survey/measuring/how.ts";
import { countsOf } from "../../../src/survey/measuring/read-slots.ts";
import { walkParts } from "../../../src/survey/measuring/way.ts";
import { wayOf, ways, waysOf } from "../../../src/survey/measuring/ways.ts";
import { workOut } from "../../../src/survey/measuring/work-out.ts";
import { noteSentence } from "../../../src/words/en/walk-notes.ts";

const reading = fc.oneof(
  fc.double({ min: 0, max: 500, noNaN: true }),
  fc.integer({ min: -5, max: 400 }),
  fc.constantFrom(0, 1, 2, 1e-300, 1e300, Number.NaN, Number.POSITIVE_INFINITY),
);

describe.each(ways.map(({ code }) => code))("%s", (code) => {
  const { slots } = wayOf(code)!;

  test("gives finite figures with errors of 0 or more, or says in words why not, whatever is read", () => {
    const most = slots.length + 9;
    fc.assert(
      fc.property(fc.array(reading, { maxLength: most }), (readings) => {
        const outcome = workOut(code, readings)!;
        const said = "impossible" in outcome ? [outcome.impossible] : outcome.notes;
        for (const note of said) {
          const sentence = noteSentence(note);
          if (/undefined|NaN|invalid|please|oops/i.test(sentence)) throw new Error(sentence);
        }
        if ("impossible" in outcome) return true;
        return Object.values(outcome.figures).every(
          ({ figure, standardError }) =>
            Number.isFinite(figure) && Number.isFinite(standardError) && standardError >= 0,
        );
      }),
      { numRuns: 100 },
    );
  });
});

test("every part of the walk has its ways, each code once", () => {
  for (const part of walkParts) expect(waysOf(part).length, part).toBeGreaterThan(2);
  expect(new Set(ways.map(({ code }) => code)).size).toBe(ways.length);
});

describe("how something was measured", () => {
  test.each([
    "rectangle",
    "rectangle 3,1",
    "rectangle 2,1 + circle 1 - triangle",
    "paced four-sides",
    "plan 1,1,1,8",
  ])("%s is read and written back", (text) => {
    expect(writeHow(readHow(text)!)).toBe(text);
  });

  test.each([
    "jug test: a 10 L bucket",
    "tape: length and two widths, m",
    "",
    "rectangle,",
    "Rectangle",
    "a - - b",
  ])("%s is nobody's way, and its figure stands as entered", (text) => {
    expect(workOut(text, [1, 2])).toBeNull();
  });

  test("readings are dealt one to a blank, the rest to the list", () => {
    const { slots } = wayOf("catch-cans")!;
    expect(countsOf(slots, 23, null)).toEqual([1, 1, 1, 20]);
    expect(countsOf(slots, 2, null)).toBeNull();
    expect(countsOf(slots, 23, [1, 1])).toBeNull();
  });
});
