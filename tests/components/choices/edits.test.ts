import { expect, test } from "vitest";
import {
  linesOf,
  planOf,
  withBudget,
  withChosen,
  withGrant,
  withLines,
  withPlan,
  withUpkeep,
} from "../../../components/choices/edits.ts";
import { linkTo } from "../../../components/choices/link.ts";
import { readAmount } from "../../../components/choices/numbers.ts";
import { noState, questionsOf, readState, writeState } from "../../../components/choices/state.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { surveyOf, textOf } from "../../helpers/worked.ts";

const survey = surveyOf(textOf("demo/school.survey.json"));
const measure = (of: Survey, id: string) => of.measures!.find((each) => each.id === id)!;

test("a changed price of a plain sum stays a plain sum, and the survey given stays as it was", () => {
  const [line] = linesOf(measure(survey, "mend-cistern"));
  const changed = withLines(survey, "mend-cistern", [{ ...line!, cost: 240 }]);
  expect(measure(changed, "mend-cistern")).toMatchObject({ cost: 240, life_years: 8 });
  expect(measure(changed, "mend-cistern").quote).toBeUndefined();
  expect(measure(survey, "mend-cistern").cost).toBe(180);
});

test("a second line makes a quote of a sum, and every edit is a survey in order", () => {
  const lines = linesOf(measure(survey, "bigger-yard-tank"));
  const changed = withLines(survey, "bigger-yard-tank", [...lines, { what: "Base", cost: 900 }]);
  const after = withUpkeep(withGrant(changed, "bigger-yard-tank", 500), "bigger-yard-tank", null);
  const tank = measure(after, "bigger-yard-tank");
  expect(tank.cost).toBeUndefined();
  expect(tank.quote).toEqual({ grant: 500, lines: [...lines, { what: "Base", cost: 900 }] });
  expect(tank.upkeepPerYear).toBeUndefined();
  expect(readSurvey(after)).toHaveProperty("survey");
  expect(readSurvey(withLines(survey, "gym-to-hall", []))).toHaveProperty("survey");
});

test("without lines a measure has no cost any more", () => {
  expect(linesOf(measure(withLines(survey, "gym-to-hall", []), "gym-to-hall"))).toEqual([]);
});

test("of quotes that exclude each other the one chosen last stays", () => {
  expect(planOf(survey)).toContain("bigger-yard-tank");
  const plan = planOf(withChosen(survey, "big-yard-tank", true));
  expect(plan).toContain("big-yard-tank");
  expect(plan).not.toContain("bigger-yard-tank");
  expect(planOf(withChosen(survey, "mulch-front", false))).not.toContain("mulch-front");
});

test("a plan and a budget are put in whole", () => {
  expect(planOf(withPlan(survey, ["hedge-drip"]))).toEqual(["hedge-drip"]);
  expect(withBudget(survey, null).money).not.toHaveProperty("budget");
  expect(withBudget(survey, 250).money).toMatchObject({ budget: 250, budgetPerYear: 600 });
});

test.each([
  ["4300", 4300],
  ["$4,300.50", 4300.5],
  [" 4 300 ", 4300],
  ["", null],
  ["abc", undefined],
  ["12 tanks", undefined],
  ["1e9", undefined],
])("%j is read as %j", (text, amount) => {
  expect(readAmount(text)).toBe(amount);
});

test("a link opens the same state", () => {
  const state = {
    ...noState,
    tank: "yard-tank",
    own: { rain: [0.8, 1, 0.655, 0.9], warmer_c: 1.5, spells: 2 } as const,
  };
  const address = new URL(linkTo(survey, state, "http://127.0.0.1/site/a%20b/choices?units=us"));
  expect(address.pathname).toBe("/site/a%20b/choices");
  expect(readState(address.hash)).toEqual({ ...state, plan: planOf(survey), budget: 14_000 });
  expect(readState(`#${writeState(readState(address.hash))}`)).toEqual(readState(address.hash));
});

test("an address that makes no sense changes nothing", () => {
  expect(readState("#budget=-3&rain=a,b&warmer=99&spells=0.2&other=1")).toEqual(noState);
  expect(writeState(noState)).toBe("");
});

test("own weather asks only what was entered, rain by its season", () => {
  expect(questionsOf(noState.own)).toEqual([]);
  const [rain, ...others] = questionsOf({ rain: [0.5, 1, 2, 1], warmer_c: 0, spells: 1 });
  expect(others).toEqual([]);
  expect(rain!.change).toEqual({ kind: "rain", byMonth: [0.5, 0.5, 1, 1, 1, 2, 2, 2, 1, 1, 1, 0.5] });
});
