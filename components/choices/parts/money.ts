import { html, nothing } from "lit";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { NBSP } from "../../../src/words/format.ts";
import { sharesChart } from "../../charts/shares/chart.ts";
import { prepareShares } from "../../charts/shares/prepare.ts";
import type { Screen } from "../screen.ts";

/** What each member of the plan brings, and what it would bring first and last. */
export function sharesPart(screen: Screen) {
  const { choices, said } = screen;
  if (choices.shares.length === 0) return nothing;
  const parts = prepareShares(choices.shares, said.measure);
  const words = measuresPage.shares;
  return html`<section id="shares" tabindex="-1" aria-labelledby="shares-name">
    <h2 id="shares-name">${choicesPage.parts.shares}</h2>
    <div class="spread">
      <div class="main">
        <gwb-plate .chart=${screen.chart("shares", waterOf(choices.shares), () => sharesChart(parts, said.say))}></gwb-plate>
      </div>
      <div class="margin">
        <p class="note">${words.what}</p>
        <p class="note"><strong>${words.orders}</strong>
          ${parts.parts.map(
            ({ name, first_kL, last_kL }) =>
              html`<span class="said">${words.order(name, said.water(first_kL), said.water(last_kL))}.</span> `,
          )}</p>
      </div>
    </div>
  </section>`;
}

/** Tells whether the shares of water are others than before: money alone changes nothing in their drawing. */
function waterOf(shares: Screen["choices"]["shares"]): string {
  return shares.map(({ id, share_kL_year }) => `${id} ${share_kL_year}`).join();
}

/** Every measure in money. */
export function moneyPart(screen: Screen) {
  const { choices, said, say } = screen;
  const { outlook, measures, currency } = choices;
  const words = measuresPage.money;
  if (measures.length === 0) return nothing;
  const top = outlook.topPerKL === null ? null : said.money(outlook.topPerKL);
  return html`<section id="money" tabindex="-1" aria-labelledby="money-name">
    <h2 id="money-name">${choicesPage.parts.money}</h2>
    <div class="spread">
      <div class="main">
        <p class="lead">${words.lead(top)}</p>
      </div>
      <div class="margin">
        ${
          currency === null
            ? nothing
            : html`<p class="note"><strong>${words.howHeading}</strong> ${words.outlook(
                percent(outlook.discountShare, screen),
                percent(outlook.riseShare, screen),
                say.number(outlook.horizon_years, 0),
              )} ${words.inPlan}</p>`
        }
      </div>
    </div>
    <div class="scroll" tabindex="0" role="region" aria-label=${words.caption}>
      <table class="ruled money">
        <caption>${words.caption}</caption>
        <thead><tr>${words.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
        <tbody>${measures.map((row) => moneyLine(screen, row))}</tbody>
      </table>
    </div>
  </section>`;
}

function percent(share: number, { say }: Screen): string {
  return `${say.number(share * 100, 1)}${NBSP}%`;
}

function moneyLine({ choices, said, say }: Screen, row: Screen["choices"]["measures"][number]) {
  const words = measuresPage.money;
  const share = choices.shares.find(({ id }) => id === row.id);
  const payback = share?.payback_years ?? null;
  const isBought = row.cost !== null && share !== undefined;
  return html`<tr>
    <th scope="row">${row.name}${share ? nothing : html` <span class="quiet">${words.notChosen}</span>`}</th>
    <td>${said.money(row.cost)}</td>
    <td>${said.water(share?.share_kL_year ?? row.after_kL_year)}</td>
    <td>${said.money(share?.saved_money_year ?? null)}</td>
    <td>${
      isBought && choices.currency !== null
        ? payback === null
          ? words.never
          : words.years(say.number(payback, 1))
        : "–"
    }</td>
    <td>${said.money(share ? share.npv : row.npv)}</td>
    <td>${said.money(share ? share.costPerKL : row.costPerKL)}</td>
    <td>${said.money(share?.breakEvenPerKL ?? null)}</td>
    <td>${said.money(share?.breakEvenCost ?? null)}</td>
  </tr>`;
}
