import { html, nothing } from "lit";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { NBSP } from "../../../src/words/format.ts";
import { sharesChart } from "../../charts/shares/chart.ts";
import { prepareShares } from "../../charts/shares/prepare.ts";
import { cell, cellFigure, figures, openedBelow } from "../opening.ts";
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
        <p>${figures(
          words.shares(
            parts.parts.map(({ id, name, share_kL, standardError_kL }) =>
              words.shareOf(
                name,
                said.opens(said.water(share_kL), `choices/share/${id}/water`),
                standardError_kL === null
                  ? null
                  : said.opens(said.water(standardError_kL), `choices/share/${id}/error`),
              ),
            ),
          ),
          screen,
        )}</p>
      </div>
      <div class="margin">
        <p class="note">${words.what}</p>
        <p class="note"><strong>${words.orders}</strong>
          ${parts.parts.map(
            ({ id, name, first_kL, last_kL }) =>
              html`<span class="said">${figures(
                words.order(
                  name,
                  said.opens(said.water(first_kL), `choices/share/${id}/first`),
                  said.opens(said.water(last_kL), `choices/share/${id}/last`),
                ),
                screen,
              )}.</span> `,
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
  const top =
    outlook.topPerKL === null ? null : said.opens(said.price(outlook.topPerKL), "choices/top-price");
  return html`<section id="money" tabindex="-1" aria-labelledby="money-name">
    <h2 id="money-name">${choicesPage.parts.money}</h2>
    <div class="spread">
      <div class="main">
        <p class="lead">${figures(words.lead(top, said.volume), screen)}</p>
      </div>
      <div class="margin">
        ${
          currency === null
            ? nothing
            : html`<p class="note"><strong>${words.howHeading}</strong> ${figures(
                words.outlook(
                  said.opens(percent(outlook.discountShare, screen), "choices/outlook/discount"),
                  said.opens(percent(outlook.riseShare, screen), "choices/outlook/rise"),
                  said.opens(say.number(outlook.horizon_years, 0), "choices/outlook/years"),
                ),
                screen,
              )} ${words.inPlan}</p>`
        }
      </div>
    </div>
    <div class="scroll" tabindex="0" role="region" aria-label=${words.caption}>
      <table class="ruled money">
        <caption>${words.caption}</caption>
        <thead><tr>${words.columns(said.volume).map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
        <tbody>${measures.map((row) => moneyLine(screen, row))}</tbody>
      </table>
    </div>
  </section>`;
}

function percent(share: number, { say }: Screen): string {
  return `${say.number(share * 100, 1)}${NBSP}%`;
}

/** Measures of the plan by their share, others by what they would save after the others. */
function moneyLine(screen: Screen, row: Screen["choices"]["measures"][number]) {
  const { choices, said } = screen;
  const words = measuresPage.money;
  const share = choices.shares.find(({ id }) => id === row.id);
  const key = `money-${row.id}`;
  const at = (what: string) => `choices/purse/${share ? "share" : "offer"}/${row.id}/${what}`;
  const figure = (value: number | null, text: string, where: string) =>
    cell(screen, key, text, value === null ? null : where);
  const { id, cost } = row;
  const saved_kL = share?.share_kL_year ?? row.after_kL_year;
  const off = share?.saved_money_year ?? null;
  const npv = share ? share.npv : row.npv;
  const perKL = share ? share.costPerKL : row.costPerKL;
  const from = share?.breakEvenPerKL ?? null;
  const upTo = share?.breakEvenCost ?? null;
  return html`<tr>
      <th scope="row">${row.name}${share ? nothing : html` <span class="quiet">${words.notChosen}</span>`}</th>
      ${figure(cost, said.money(cost), `choices/cost/${id}`)}
      ${figure(saved_kL, said.water(saved_kL), share ? `choices/share/${id}/water` : `choices/measure/${id}/after`)}
      ${figure(off, said.money(off), `choices/share/${id}/money`)} ${paybackCell(screen, row, share, at)}
      ${figure(npv, said.money(npv), share ? at("npv") : `choices/worth/${id}`)}
      ${figure(perKL, said.price(perKL), at("cost-per-kl"))}
      ${figure(from, said.price(from), at("pays-from"))} ${figure(upTo, said.money(upTo), at("pays-up-to"))}
    </tr>
    ${openedBelow(screen, key, words.columns("").length)}`;
}

function paybackCell(
  screen: Screen,
  row: Screen["choices"]["measures"][number],
  share: Screen["choices"]["shares"][number] | undefined,
  at: (what: string) => string,
) {
  const { choices, say } = screen;
  const words = measuresPage.money;
  const key = `money-${row.id}`;
  if (row.cost === null || !share || choices.currency === null) return cell(screen, key, "–", null);
  const { payback_years: simple, discountedPayback_years: discounted } = share;
  if (simple === null) return cell(screen, key, words.never, null);
  const text = (years: number) => words.years(say.number(years, 1));
  const opens = (years: number, what: string) =>
    cellFigure(screen, key, text(years), years === 0 ? null : at(what));
  return html`<td>${opens(simple, "payback")}<br /><span class="quiet">${
    discounted === null
      ? words.neverDiscounted
      : html`${opens(discounted, "discounted-payback")} ${words.discounted}`
  }</span></td>`;
}
