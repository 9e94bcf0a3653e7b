import { html, nothing } from "lit";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { budgetChart } from "../../charts/budget/chart.ts";
import { type BudgetStep, prepareBudget } from "../../charts/budget/prepare.ts";
import { withBudget, withBudgetPerYear } from "../edits.ts";
import { entry, wantAmount } from "../entry.ts";
import { figures } from "../opening.ts";
import type { Screen } from "../screen.ts";
import { setKeyOf } from "../verdict.ts";

const words = measuresPage.budget;

/** The best set for every budget, and the order over years. */
export function budgetPart(screen: Screen) {
  const { choices, said, acts, survey } = screen;
  const { frontier, budget } = choices;
  const steps = prepareBudget(choices, said);
  const worth = prepareBudget({ ...choices, frontier: choices.frontierByWorth }, said);
  return html`<section id="budget" tabindex="-1" aria-labelledby="budget-name">
    <h2 id="budget-name">${choicesPage.parts.budget}</h2>
    <div class="spread">
      <div class="main">
        <div class="entries">
          ${entry(screen, {
            ...wantAmount,
            field: "budget-in-all",
            label: words.field,
            hint: words.hint,
            isOptional: true,
            value: budget,
            take: (value, isDone) => acts.money((now) => withBudget(now, value), isDone),
          })}
          ${entry(screen, {
            ...wantAmount,
            field: "budget-per-year",
            label: words.perYear,
            hint: words.perYearHint,
            isOptional: true,
            value: survey.money?.budgetPerYear ?? null,
            take: (value, isDone) => acts.money((now) => withBudgetPerYear(now, value), isDone),
          })}
        </div>
        <gwb-plate .chart=${screen.chart("budget", frontier, () => budgetChart(steps, said))}></gwb-plate>
        ${
          choices.frontierByWorth.length > 0
            ? html`<h3>${words.worthHeading}</h3>
              <ol class="steps">${worth.steps.map((step, k) => stepLine(screen, step, choices.frontierByWorth[k]!, true))}</ol>`
            : nothing
        }
        <details>
          <summary>${words.stepsHeading}</summary>
          <ol class="steps">${steps.steps.map((step, k) => stepLine(screen, step, frontier[k]!, false))}</ol>
        </details>
        ${order(screen)}
      </div>
      <div class="margin">
        <p class="note">${choices.proven ? words.proven : words.notProven}</p>
        ${choices.leftOut.length > 0 ? html`<p class="note">${words.leftOut(said.list(said.names(choices.leftOut)))}</p>` : nothing}
        ${dearer(screen)}
      </div>
    </div>
  </section>`;
}

/** A step of a frontier; its figures open to why no other set does better for the money. */
function stepLine(
  screen: Screen,
  { cost, words: what, saved_kL, npv }: BudgetStep,
  { measures }: Screen["choices"]["frontier"][number],
  isByWorth: boolean,
) {
  const { said } = screen;
  const key = setKeyOf(measures);
  const spent = said.opens(said.money(cost), `choices/cost/set/${key}`);
  const saved = said.opens(
    said.water(saved_kL),
    isByWorth ? `choices/set/${key}/saved` : `choices/best/${key}/water`,
  );
  const worth = said.opens(said.money(npv), `choices/best/${key}/money`);
  const line = isByWorth ? words.worth(spent, what, saved, worth) : words.step(spent, what, saved);
  return html`<li>${figures(line, screen)}</li>`;
}

function order(screen: Screen) {
  const { choices, said, say } = screen;
  const rows = choices.order?.steps ?? null;
  const body =
    rows === null
      ? html`<p class="quiet">${words.noOrder}</p>`
      : rows.length === 0
        ? html`<p class="quiet">${words.orderEmpty}</p>`
        : html`<ol class="steps">${rows.map(({ year, measures, spent, saved_kL_year }, k) => {
            const key = setKeyOf(rows.slice(0, k + 1).flatMap((row) => row.measures));
            const line = words.order(
              said.opens(say.number(year, 0), `choices/order/${k}`),
              said.list(said.names(measures)),
              said.opens(said.money(spent), `choices/cost/set/${key}`),
              said.opens(said.water(saved_kL_year), `choices/set/${key}/saved`),
            );
            return html`<li>${figures(line, screen)}</li>`;
          })}</ol>`;
  return html`<h3>${words.orderHeading}</h3>${body}`;
}

/** What would change the choice: a quote a fifth dearer. */
function dearer({ choices, said }: Screen) {
  const rows = choices.wouldChange.filter(({ what }) => what === "quote-dearer");
  if (rows.length === 0) return nothing;
  return html`<p class="note"><strong>${choicesPage.weather.dearerHeading}</strong>
    ${rows.map(({ of, measures, isChange }) => {
      const names = said.names(measures);
      const set = names.length === 0 ? choicesPage.needAlone : said.list(names);
      return html`<span class="said">${choicesPage.weather.dearer(said.measure(of), set, isChange)}</span> `;
    })}</p>`;
}
