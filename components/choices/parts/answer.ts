import { html, nothing } from "lit";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import type { Screen } from "../screen.ts";
import { underSentence, verdict, widthSentences } from "../verdict.ts";
import { drawsLine } from "./sure.ts";

/** The question, the answer as a sentence, and its width. */
export function answerPart(screen: Screen) {
  const { choices, said, isStale } = screen;
  const under = underSentence(choices, said);
  return html`<section id="answer" tabindex="-1" aria-labelledby="question">
    ${under ? html`<p class="first">${under}</p>` : nothing}
    <p class="question" id="question" role="heading" aria-level="2">${choicesPage.question}</p>
    <p class="headline">${verdict(choices, said)}</p>
    <div class="spread">
      <div class="main">
        <p class="lead">${widthSentences(choices, said).map((words) => html`${words} `)}${
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
function sides({ choices, said }: Screen) {
  const { toNeed, noMoreThanToday } = choices.plans;
  if (!noMoreThanToday) return nothing;
  const words = choicesPage.sides;
  const row = (name: string, kL: number, middle: number | null) => html`<tr>
    <th scope="row">${name}</th><td>${said.water(kL)}</td><td>${middle === null ? "" : said.water(middle)}</td>
  </tr>`;
  return html`<table class="ruled small">
    <caption>${words.name}</caption>
    <thead><tr>${words.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>
      ${row(words.today, choices.mains.today_kL_year, null)}
      ${row(words.need, toNeed.plan_kL_year, toNeed.giveUp_kL_year.p50)}
      ${row(words.least, noMoreThanToday.plan_kL_year, noMoreThanToday.giveUp_kL_year.p50)}
    </tbody>
  </table>
  <p class="under-table">${words.leastNote}</p>`;
}
