import fc from "fast-check";
import { expect, test } from "vitest";
import { readSurvey } from "../../src/survey/read.ts";
import { faultCodes, faultSentence } from "../../src/words/en/faults.ts";
import { stockWords, wholeText } from "./whole-survey.ts";

/** Whatever comes in: the survey as it was, or faults whose sentences are ours. */
function readsOrTells(input: unknown): void {
  const outcome = readSurvey(input);
  if ("survey" in outcome) {
    expect(outcome.survey).toEqual(typeof input === "string" ? JSON.parse(input) : input);
    return;
  }
  expect(outcome.faults.length).toBeGreaterThan(0);
  for (const fault of outcome.faults) {
    expect(faultCodes).toContain(fault.code);
    expect(JSON.parse(JSON.stringify(fault))).toEqual(fault);
    const sentence = faultSentence(fault);
    expect(sentence).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}]/u);
    // What was typed stands in quotation marks; the words around it are ours.
    expect(sentence.replaceAll(/"[^"]*"/g, "")).not.toMatch(stockWords);
  }
}

/** Every place in the document, as steps. */
function places(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([name, inner]) => places(inner, [...path, name]))];
}

const allPlaces = places(JSON.parse(wholeText)).filter((path) => path.length > 0);

/** JSON, and what a program may hand over besides. */
const odd = fc.oneof(
  fc.jsonValue({ maxDepth: 3 }),
  fc.constantFrom(
    -1,
    0,
    1,
    1e308,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    "",
    "shed",
    "02-29",
    "2024-02-29",
    [],
    {},
    null,
  ),
  fc.anything({ maxDepth: 2, withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }),
);

const edit = fc.record({
  path: fc.constantFrom(...allPlaces),
  how: fc.constantFrom("put", "take away", "double", "add a field"),
  value: odd,
  name: fc.string(),
});

type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

function apply(survey: unknown, { path, how, value, name }: Edit): void {
  let holder = survey;
  for (const step of path.slice(0, -1)) {
    if (typeof holder !== "object" || holder === null) return;
    holder = (holder as Record<string, unknown>)[step];
  }
  if (typeof holder !== "object" || holder === null) return;
  const fields = holder as Record<string, unknown>;
  const last = path[path.length - 1]!;
  if (how === "put") fields[last] = value;
  else if (how === "take away") delete fields[last];
  else if (Array.isArray(holder)) holder.push(fields[last]);
  else if (name !== "__proto__") fields[name] = value;
}

test("any JSON text or value is read, or told what is wrong; nothing is thrown", () => {
  fc.assert(fc.property(fc.oneof(fc.json(), fc.string(), odd), readsOrTells), { numRuns: 600 });
});

test("a survey broken in up to four places is told so in our words", () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 4 }), (edits) => {
      const survey: unknown = JSON.parse(wholeText);
      for (const one of edits) apply(survey, one);
      readsOrTells(survey);
    }),
    { numRuns: 600 },
  );
});

test("a survey's text with a few letters changed is told so in our words", () => {
  fc.assert(
    fc.property(fc.nat(wholeText.length - 1), fc.nat(8), fc.string({ maxLength: 4 }), (at, cut, put) => {
      readsOrTells(wholeText.slice(0, at) + put + wholeText.slice(at + cut));
    }),
    { numRuns: 400 },
  );
});
