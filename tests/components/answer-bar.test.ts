import { expect, test } from "vitest";
import { workingsOf } from "../../components/answer/workings.ts";
import { answerFinding, answerTable, prepareAnswerBar } from "../../components/charts/answer-bar/prepare.ts";
import { formatter } from "../../src/words/format.ts";
import { demoSurvey, viewOf } from "./views.ts";

const say = formatter("metric", "en");
const plain = (text: string) => text.replaceAll("\u00A0", " ");

function withoutHabits() {
  const survey = demoSurvey();
  for (const bed of survey.beds) delete bed.watering.habit;
  return survey;
}

test("where today is known for no bed there is no bar for it, and no column", () => {
  const view = viewOf(withoutHabits());
  const bar = prepareAnswerBar(view);
  expect(bar.today).toBeNull();
  expect(plain(answerFinding(bar, say))).toMatch(/^In a mean year the gardens need [\d,]+ kL of mains water/);
  expect(answerTable(view, say).columns.map((c) => c.name)).not.toContain("Today, L");
});

test("the longest bar holds every end, whiskers too", () => {
  const view = viewOf(demoSurvey());
  const bar = prepareAnswerBar(view);
  const ends = [bar.today!, ...bar.bars].map((b) => b.mains_kL + b.tanks_kL);
  expect(bar.most_kL).toBeGreaterThanOrEqual(Math.max(...ends, bar.dry_kL!, bar.wet_kL!));
});

test("without measures there is no bar of a plan", () => {
  const { measures: _, ...survey } = demoSurvey();
  expect(prepareAnswerBar(viewOf(survey)).bars).toHaveLength(1);
  expect(prepareAnswerBar(viewOf(demoSurvey())).bars).toHaveLength(2);
});

test("each row of the table closes: today less the plan is what is given up", () => {
  for (const [, today, , plan, giveUp] of answerTable(viewOf(demoSurvey()), say).rows)
    expect((today as number) - (plan as number)).toBeCloseTo(giveUp as number, 6);
});

test("what tanks give in place of mains closes the account of the need", () => {
  const survey = demoSurvey();
  const view = viewOf(survey);
  const served = view.beds.filter((b) => b.supply === "mains-only" || b.supply === "tank-then-mains");
  const asked_kL = served.reduce((sum, b) => sum + b.gross_L_year, 0) / 1000;
  const { draws_kL, topUp_kL, always_kL } = view.asked.need;
  const met_kL = asked_kL + draws_kL + topUp_kL + always_kL - view.mains.need_kL;
  // what is left of the tanks' yield went to the orchard, which has no other water
  const orchard = view.mains.tanks_kL - met_kL;
  expect(orchard).toBeGreaterThan(0);
  expect(orchard).toBeLessThan(view.beds.find((b) => b.id === "orchard")!.gross_L_year / 1000);
});

test("every figure of the demo's sentences opens to a working, in both systems of units", () => {
  const view = viewOf(demoSurvey());
  for (const system of ["metric", "us"] as const) {
    const workings = workingsOf(view, formatter(system, "en"));
    for (const at of ["give-up", "dry", "wet", "today", "need", "plan", "unknown", "beds-short"])
      expect(workings.get(at)?.steps.length, at).toBeGreaterThan(0);
  }
});
