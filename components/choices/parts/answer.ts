import { html, nothing } from "lit";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { cell, figures, openedBelow } from "../opening.ts";
import type { Screen } from "../screen.ts";
import { setKeyOf, underSentence, verdict, widthSentences } from "../verdict.ts";
import { drawsLine } from "./sure.ts";

/** The question, the answer as a sentence, and its width. */
export function answerPart(screen: Screen) {
  const { choices, survey, said, isStale } = screen;
  const under = underSentence(choices, said);
  return html`<section id="answer" tabindex="-1" aria-labelledby="question">
    ${under ? html`<p class="first">${figures(under, screen)}</p>` : nothing}
    <p class="question" id="question" role="heading" aria-level="2">${choicesPage.question}</p>
    <p class="headline">${figures(verdict(choices, survey, said), screen)}</p>
    <div class="spread">
      <div class="main">
        <p class="lead">${widthSentences(choices, said).map((words) => html`${figures(words, screen)} `)}${
          isStale ? html`<span class="quiet">${choicesPage.stale}</span>` : nothing
        }</p>
        ${drawsLine(screen)} ${sides(screen)}
      </div>
      <div class="margin">
        <p class="note">${choicesPage.reading}</p>
        <p class="note">${choicesPage.draws.what}</p>
      </div>
    </div>
  </section>`;
}

/** A plan that meets the need and one in which no bed gets more than today, where they differ. */
function sides(screen: Screen) {
  const { choices, said } = screen;
  const { toNeed, noMoreThanToday } = choices.plans;
  if (!noMoreThanToday) return nothing;
  const words = choicesPage.sides;
  const plan = setKeyOf(choices.shares.map(({ id }) => id));
  const row = (of: {
    key: string;
    name: string;
    kL: number;
    at: string;
    middle: number | null;
    middleAt: string | null;
  }) => html`<tr>
      <th scope="row">${of.name}</th>
      ${cell(screen, of.key, said.water(of.kL), of.at)}
      ${cell(screen, of.key, of.middle === null ? "" : said.water(of.middle), of.middleAt)}
    </tr>
    ${openedBelow(screen, of.key, 3)}`;
  return html`<table class="ruled small">
    <caption>${words.name}</caption>
    <thead><tr>${words.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>
      ${row({ key: "sides-today", name: words.today, kL: choices.mains.today_kL_year, at: "mains/today", middle: null, middleAt: null })}
      ${row({
        key: "sides-need",
        name: words.need,
        kL: toNeed.plan_kL_year,
        at: `choices/with/${plan}/mains/need`,
        middle: toNeed.giveUp_kL_year.p50,
        middleAt: "mains/give-up",
      })}
      ${row({
        key: "sides-least",
        name: words.least,
        kL: noMoreThanToday.plan_kL_year,
        at: "choices/least",
        middle: noMoreThanToday.giveUp_kL_year.p50,
        middleAt: "choices/least/p50",
      })}
    </tbody>
  </table>
  <p class="under-table">${words.leastNote}</p>`;
}
