import { expect, test } from "vitest";
import { faultCodes, faultSentence } from "../../src/words/en/faults.ts";
import { brokenFields, brokenTies } from "./broken-fields.ts";
import { edited, faultsOf, sentencesOf, stockWords, wholeText } from "./whole-survey.ts";

test.each(brokenFields)("%s", (_, edits, wanted) => {
  const faults = faultsOf(edited(edits));
  const [[path, code]] = Object.entries(wanted) as [[string, string]];
  expect(faults).toContainEqual(expect.objectContaining({ path, code }));
  for (const fault of faults) expect(faultSentence(fault)).not.toMatch(stockWords);
});

test.each(brokenTies)("%s: that and no more", (_, edits, wanted) => {
  const faults = faultsOf(edited(edits));
  expect(Object.fromEntries(faults.map(({ path, code }) => [path, code]))).toEqual(wanted);
  expect(faults).toHaveLength(Object.keys(wanted).length);
  for (const fault of faults) expect(faultSentence(fault)).not.toMatch(stockWords);
});

test("there are at least forty broken surveys, and each code that they bring has a sentence", () => {
  const all = [...brokenFields, ...brokenTies];
  expect(all.length).toBeGreaterThanOrEqual(40);
  for (const [, , wanted] of all)
    for (const code of Object.values(wanted)) expect(faultCodes).toContain(code);
});

test("sentences say the field by its name, what is wanted and what was found", () => {
  const said = (path: string, value: unknown) => sentencesOf(edited({ [path]: value }))[0];
  expect(said("beds[2].area_m2", -4)).toBe(
    "beds[2].area_m2: Bed area must be between 0.1 and 50,000 m². You entered -4.",
  );
  expect(said("beds[2].area_m2", "20 m2")).toBe(
    'beds[2].area_m2: Bed area must be a number between 0.1 and 50,000 m². You entered the text "20 m2". Write the number alone, with a decimal point, without quotation marks or unit.',
  );
  expect(said("beds[2].area_m2", undefined)).toBe(
    "beds[2].area_m2: Bed area is missing. It must be a number between 0.1 and 50,000 m².",
  );
  expect(said("beds[2].plantings[0].kind", "shrub")).toMatch(
    /You entered the text "shrub"\. Is "shrubs" meant\?$/,
  );
  expect(said("beds[2].area", 4)).toBe(
    'beds[2].area: There is no field named "area" here. Is "area_m2" meant?',
  );
  expect(said("beds[1].watering.tank", "shd")).toBe(
    'beds[1].watering.tank: There is no tank with the id "shd". Is "shed" meant?',
  );
  expect(said("tanks[0].linked", ["shed"])).toBe(
    'tanks[0].linked[0]: A tank must not be linked to itself. "shed" is its own id.',
  );
});

test("a number too large for the machine is named as such", () => {
  const text = wholeText.replace('"area_m2": 9500', '"area_m2": 1e400');
  expect(sentencesOf(text)).toEqual([
    "beds[0].area_m2: Bed area must be a number between 0.1 and 50,000 m². The number there is larger than can be held.",
  ]);
});

test("every fault is listed, of shape and of what ties fields together, in the order of the document", () => {
  const faults = faultsOf(
    edited({
      "tariff.perKL": 3,
      "tanks[0].linked": ["shed"],
      "beds[2].id": "oval",
      "beds[0].leafCover": 95,
      "measures[0].mulch.beds": ["gone"],
      "site.latitude": "south",
    }),
  );
  expect(faults.map(({ path }) => path)).toEqual([
    "site.latitude",
    "beds[0].leafCover",
    "beds[2].id",
    "tanks[0].linked[0]",
    "tariff",
    "measures[0].mulch.beds[0]",
  ]);
});

test("a fault's sentence stays on one line and holds nothing that a terminal would act on", () => {
  const nasty = '"\u001b\n\u009b\u202e\u2028';
  const said = sentencesOf(
    edited({
      [`beds[2].${nasty}`]: 1,
      "beds[2].name": nasty,
      "beds[1].watering.tank": nasty,
      "site.timeZone": nasty,
    }),
  );
  expect(said.length).toBeGreaterThanOrEqual(4);
  for (const sentence of said) expect(sentence).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
});

test("at most 200 faults are listed, the last counting the rest", () => {
  const faults = faultsOf(edited({ readings: Array(1_000).fill({ meter: "nobody" }) }));
  expect(faults).toHaveLength(200);
  expect(faults[199]).toEqual({ path: "survey", code: "more-faults", facts: { count: 1_801 } });
  expect(faultSentence(faults[199]!)).toBe("survey: 1,801 more faults are not listed here.");
});
