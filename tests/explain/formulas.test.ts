import { expect, test } from "vitest";
import { quantities } from "../../src/quantities.ts";
import { formulas } from "../../src/words/en/explain-formulas.ts";
import { terms } from "../../src/words/en/explain-terms.ts";
import { evaluate } from "./evaluate.ts";

const all = Object.entries(formulas);

/** Letters of a template. */
const lettersOf = (template: string) => [...template.matchAll(/\{(\w+)\}/g)].map(([, letter]) => letter!);

test.each(all)("%s is made of letters that have a name and a unit", (_key, { template }) => {
  for (const letter of lettersOf(template)) expect(Object.keys(terms)).toContain(letter);
});

test.each(all)("%s can be worked out as it is written", (_key, { template }) => {
  const inputs = Object.fromEntries(lettersOf(template).map((letter) => [letter, 1]));
  expect(evaluate({ template, inputs })).toBeTypeOf("number");
});

test("only plain arithmetic goes without a source", () => {
  const bare = all.filter(([, { source }]) => source === null).map(([key]) => key);
  expect(bare.sort()).toEqual(
    [
      "askedBefore",
      "draw",
      "emptyYear",
      "inflow",
      "kcb",
      "mainsToKL",
      "newDrawAll",
      "partOf",
      "stressDay",
      "stressNot",
      "sunsetDeg",
      "usable",
      "usableBefore",
    ].sort(),
  );
});

test("a letter that stands for one thing in a paper has that paper's sign", () => {
  for (const name of ["ks", "kcb", "ke"] as const) expect(terms[name].symbol).toBe(quantities[name].symbol);
  expect(terms.taw.symbol).toBe("TAW");
  expect(terms.raw.symbol).toBe("RAW");
  expect(terms.root.symbol).toBe("Dr");
});

test("the reader of formulas keeps to the order of operations", () => {
  const one = (template: string, inputs = {}) => evaluate({ template, inputs });
  expect(one("1 + 2 × 3 ÷ 4 − 5")).toBeCloseTo(-2.5, 12);
  expect(one("2^3^2")).toBe(512);
  expect(one("4.903 × 10^(−9)")).toBeCloseTo(4.903e-9, 20);
  expect(one("max(0, {a} − {b}) × √(16)", { a: 5, b: 3 })).toBe(8);
  expect(one("arccos(min(1, max(−1, −tan({a}) × tan({a}))))", { a: 0 })).toBeCloseTo(Math.PI / 2, 12);
  expect(() => one("2 × × 3")).toThrow("wanted");
  expect(() => one("{a}")).toThrow("no {a}");
});
