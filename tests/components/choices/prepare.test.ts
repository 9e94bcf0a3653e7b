import { beforeAll, expect, test } from "vitest";
import { budgetReadings, prepareBudget } from "../../../components/charts/budget/prepare.ts";
import { prepareShares, sharesFinding } from "../../../components/charts/shares/prepare.ts";
import {
  bandOf,
  prepareSizes,
  sizesFinding,
  sizesTable,
} from "../../../components/charts/size-curve/prepare.ts";
import { markBrief } from "../../../components/choices/brief-figures.ts";
import { saidOf } from "../../../components/choices/screen.ts";
import * as spoken from "../../../components/choices/verdict.ts";
import { briefOf } from "../../../src/report/brief.ts";
import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { briefWords } from "../../../src/words/en/choices.ts";
import { formatter } from "../../../src/words/format.ts";
import { figuresIn, unmarked } from "../../../src/words/marked.ts";
import { decisionOf } from "../../helpers/decision.ts";
import { recordAt, surveyOf, textOf } from "../../helpers/worked.ts";

const survey = surveyOf(textOf("demo/school.survey.json"));
const say = formatter("metric", "en");
const said = saidOf(survey, "USD", say);
/** Sentences as they read, without the addresses of their figures. */
const verdict = (...of: Parameters<typeof spoken.verdict>) => unmarked(spoken.verdict(...of));
const underSentence = (...of: Parameters<typeof spoken.underSentence>) => {
  const text = spoken.underSentence(...of);
  return text === null ? null : unmarked(text);
};
const widthSentences = (...of: Parameters<typeof spoken.widthSentences>) =>
  spoken.widthSentences(...of).map(unmarked);
let choices: GroundsChoices;

beforeAll(() => {
  choices = decisionOf(survey, recordAt("demo/seattle.csv"), { draws: 12 });
});

const with_ = (change: Partial<GroundsChoices>): GroundsChoices => ({ ...choices, ...change });
const tankWorth = (worth: GroundsChoices["measures"][number]["worth"]) =>
  choices.measures.map((row) => (row.change === "resizeTank" ? { ...row, worth } : row));

test("tanks that do not pay are said not to be worth it, before anything else", () => {
  expect(choices.measures.filter(({ change }) => change === "resizeTank").map(({ worth }) => worth)).toEqual([
    "does-not-pay",
    "does-not-pay",
  ]);
  expect(verdict(with_({ spread: undefined }), survey, said)).toMatch(
    /^No: .*none is worth its money\. Watering to need gives up/,
  );
});

test("a tank that pays and is in the best set is said to pay, with what it saves and costs", () => {
  const [, , , tank] = choices.measures;
  const paying = with_({
    spread: undefined,
    measures: tankWorth("pays"),
    best: { ...choices.best, measures: [...choices.best.measures, tank!.id] },
  });
  expect(verdict(paying, survey, said)).toMatch(
    /^Yes, .*“A yard tank of 10,000 L” saves [\d.]+\u00a0kL a year for \$4,300 and pays/,
  );
});

test("without a quote nobody can say", () => {
  const unpriced = with_({ spread: undefined, measures: tankWorth("not-priced") });
  expect(verdict(unpriced, survey, said)).toMatch(/^Nobody can say yet/);
});

test("sets that the draws cannot tell apart are a draw, whatever the middle says", () => {
  const spread = choices.spread!;
  const [first, second] = spread.rivals;
  const drawn = with_({
    spread: {
      ...spread,
      isDraw: true,
      rivals: [first!, { ...second!, measures: ["bigger-yard-tank", "water-to-need"] }],
      chance: [
        [0.5, 0.55],
        [0.45, 0.5],
      ],
    },
  });
  expect(verdict(drawn, survey, said)).toMatch(/^It is a draw: .* in 55 of 100 draws/);
});

test("no tank is put forward where none was quoted", () => {
  const none = with_({ measures: choices.measures.filter(({ change }) => change === "mendLeak") });
  expect(verdict(none, survey, said)).toMatch(/^No tank is quoted here, and none is needed to begin\./);
});

test("where nobody knows how beds are watered today, no saving is claimed from watering to need", () => {
  const unknown = with_({
    mains: { ...choices.mains, todayUnknown: survey.beds.map(({ id }) => id) },
    measures: choices.measures.filter(({ change }) => change === "mendLeak"),
  });
  expect(verdict(unknown, survey, said)).toMatch(/is not known, so no saving is claimed from it/);
  expect(verdict(unknown, survey, said)).not.toContain("Watering to need gives up");
});

test("beds that get too little are named before any saving, and the width is told by its draws", () => {
  expect(underSentence(choices, said)).toContain("Quad lawn under the maples");
  expect(underSentence(with_({ plans: { ...choices.plans, underWatered: [] } }), said)).toBeNull();
  expect(widthSentences(choices, said)[0]).toContain("eight of ten of 12 draws");
  expect(widthSentences(with_({ spread: undefined }), said)[0]).toContain("record’s years alone");
});

test("the steps of the frontier rise, and each tells what it adds to the one before", () => {
  const { steps, budget } = prepareBudget(choices, said);
  expect(budget).toBe(14_000);
  expect(steps[0]).toMatchObject({ cost: 0, words: "watering to need alone" });
  expect(steps[1]!.words).toBe("with “Mend the running cistern”");
  for (const [k, step] of steps.entries())
    if (k > 0) expect(step.saved_kL).toBeGreaterThan(steps[k - 1]!.saved_kL);
  expect(steps.filter(({ isBest }) => isBest)).toHaveLength(1);
  expect(budgetReadings({ steps, budget }, said)).toHaveLength(steps.length);
});

test("the pieces of the bar lie end to end and add up to what the plan saves", () => {
  const { parts, total_kL } = prepareShares(choices.shares, said.measure);
  expect(total_kL).toBeCloseTo(choices.mains.today_kL_year - choices.mains.plan_kL_year, 6);
  for (const [k, part] of parts.entries())
    if (k > 0) expect(part.from_kL).toBeCloseTo(parts[k - 1]!.from_kL + parts[k - 1]!.length_kL, 9);
  expect(sharesFinding({ parts, total_kL }, said.say)).toMatch(
    /^Watering to need brings 383 of the 459\u00a0kL/,
  );
});

test("a plan that saves nothing says so", () => {
  const losing = choices.shares.map((row) => ({ ...row, share_kL_year: -1 }));
  const parts = prepareShares(losing, said.measure);
  expect(parts.parts.every(({ length_kL }) => length_kL === 0)).toBe(true);
  expect(sharesFinding(parts, said.say)).toBe("The plan as chosen saves no mains water");
});

test("sizes run from nothing upward, today's and the quoted ones are marked, and the finding says what of money", () => {
  const curve = prepareSizes(choices, "yard-tank", "Yard tank", ["bigger-yard-tank", "big-yard-tank"]);
  expect(curve.rows[0]!.capacity_L).toBe(0);
  expect(curve.marked.map(({ capacity_L, mark }) => [capacity_L, mark])).toEqual(
    expect.arrayContaining([
      [5000, "today"],
      [10_000, "quoted"],
      [20_000, "quoted"],
    ]),
  );
  expect(sizesFinding(curve, say)).toMatch(
    /^Yard tank: past [\d,]+\u00a0L more tank adds next to nothing; no size quoted is worth its money$/,
  );
  for (const row of curve.rows) {
    const { low, middle, high } = bandOf(row);
    expect(low).toBeLessThanOrEqual(middle);
    expect(middle).toBeLessThanOrEqual(high);
  }
  expect(sizesTable(curve, say).rows).toHaveLength(curve.rows.length);
});

test("where nothing is asked of a tank, no size is praised", () => {
  const asked = with_({ tanks: choices.tanks.map((row) => ({ ...row, limit: "nothing-asked" as const })) });
  expect(sizesFinding(prepareSizes(asked, "yard-tank", "Yard tank", []), say)).toContain(
    "no size of it saves",
  );
});

test("the brief's figures lead to workings of that very number, but for those that the survey or a count has", () => {
  const mark = markBrief(choices);
  const words = briefWords(choices.currency, "metric", mark);
  const blocks = briefOf(choices, words, { bed: said.bed, tank: said.tank, bedAt: String });
  const texts = blocks.flatMap((block) =>
    "text" in block ? [block.text] : "items" in block ? block.items : [],
  );
  const at = texts.flatMap((text) =>
    figuresIn(text).flatMap((part) => (typeof part === "string" ? [] : [part.at])),
  );
  expect(at).toEqual(expect.arrayContaining(["mains/today", "mains/plan", "choices/least", "choices/short"]));
  expect(at.filter((address) => address.startsWith("choices/sure/"))).toHaveLength(2);
  const left = texts.map((text) =>
    figuresIn(text)
      .filter((part) => typeof part === "string")
      .join(""),
  );
  expect(left.filter((text) => /[\d,.]+ kL\b/.test(text))).toEqual([]);
  // without marks it reads as the Markdown does
  const plain = briefOf(choices, briefWords(choices.currency), {
    bed: said.bed,
    tank: said.tank,
    bedAt: String,
  });
  expect(JSON.stringify(blocks, (_, value) => (typeof value === "string" ? unmarked(value) : value))).toBe(
    JSON.stringify(plain),
  );
});
