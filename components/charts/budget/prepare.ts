import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";
import { unitOf, yearlyIn } from "../size-curve/prepare.ts";

type StepRow = GroundsChoices["frontier"][number];

/** How names, money and lists are written. */
export interface BudgetWords {
  say: Formatter;
  money(amount: number | null): string;
  /** Measures of a set as people call them, watering to need left out. */
  names(ids: readonly string[]): string[];
  list(names: readonly string[]): string;
}

export interface BudgetStep {
  cost: number;
  saved_kL: number;
  npv: number | null;
  /** What is done, from the step before. */
  words: string;
  /** All that is done. */
  whole: string;
  isBest: boolean;
}

export interface BudgetSteps {
  steps: readonly BudgetStep[];
  budget: number | null;
}

/** The best set for every budget, each step told from the one before it. */
export function prepareBudget(
  { frontier, best, budget }: Pick<GroundsChoices, "frontier" | "best" | "budget">,
  { names, list }: BudgetWords,
): BudgetSteps {
  return {
    budget,
    steps: frontier.map((step, k) => ({
      cost: step.cost,
      saved_kL: step.saved_kL_year,
      npv: step.npv,
      words: changeOf(step, frontier[k - 1], names, list),
      whole: names(step.measures).length > 0 ? list(names(step.measures)) : choicesPlates.budget.nothing,
      isBest: sameMembers(step.measures, best.measures),
    })),
  };
}

function changeOf(
  step: StepRow,
  before: StepRow | undefined,
  names: BudgetWords["names"],
  list: BudgetWords["list"],
): string {
  const words = choicesPlates.budget;
  const had = before?.measures ?? [];
  const adds = names(step.measures.filter((id) => !had.includes(id)));
  const drops = names(had.filter((id) => !step.measures.includes(id)));
  const said = [
    ...(adds.length > 0 ? [words.adds(list(adds))] : []),
    ...(drops.length > 0 ? [words.drops(list(drops))] : []),
  ];
  return said.length > 0 ? said.join(", ") : words.nothing;
}

function sameMembers(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((id) => other.includes(id));
}

export function budgetFinding({ steps }: BudgetSteps, say: Formatter): string {
  const first = steps[0]?.saved_kL ?? 0;
  const last = steps.at(-1)?.saved_kL ?? 0;
  const { finding, findingMore } = choicesPlates.budget;
  return first < 0
    ? findingMore(say.yearly(-first), say.yearly(last))
    : finding(say.yearly(first), say.yearly(last));
}

export function budgetReadings({ steps }: BudgetSteps, { money, say }: BudgetWords): string[] {
  return steps.map(({ cost, whole, saved_kL, npv }) =>
    choicesPlates.budget.reading(money(cost), whole, say.yearly(saved_kL), npv === null ? null : money(npv)),
  );
}

export function budgetTable({ steps }: BudgetSteps, { money, say }: BudgetWords): ChartTable {
  const [from, what, saved, npv] = choicesPlates.budget.columns;
  return {
    columns: [
      { name: from },
      { name: what },
      { name: `${saved}, ${unitOf(say)}`, show: (value) => say.number(value, say.system === "us" ? 0 : 1) },
      { name: npv, show: money },
    ],
    rows: steps.map((step) => [money(step.cost), step.whole, yearlyIn(step.saved_kL, say), step.npv ?? ""]),
  };
}
