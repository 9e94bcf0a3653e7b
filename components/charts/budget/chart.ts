import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import type { Chart } from "../chart.ts";
import { drawBudget } from "./draw.ts";
import { type BudgetSteps, type BudgetWords, budgetFinding, budgetReadings, budgetTable } from "./prepare.ts";

export function budgetChart(steps: BudgetSteps, words: BudgetWords): Chart {
  return {
    id: "best-set-for-each-budget",
    finding: budgetFinding(steps, words.say),
    about: choicesPlates.budget.about,
    readings: budgetReadings(steps, words),
    start: Math.max(
      0,
      steps.steps.findIndex(({ isBest }) => isBest),
    ),
    table: budgetTable(steps, words),
    draw: (svg, width) => drawBudget(svg, steps, width, words),
  };
}
