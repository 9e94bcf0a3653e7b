import { html, nothing, type TemplateResult } from "lit";
import type { Working } from "../../../src/explain/working.ts";
import { type Block, briefOf } from "../../../src/report/brief.ts";
import { choicesTable, tableNames } from "../../../src/report/choices-tables.ts";
import { briefWords, type MarkFigure } from "../../../src/words/en/choices.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { unmarked } from "../../../src/words/marked.ts";
import { tableIn } from "../../../src/words/table-units.ts";
import { markBrief } from "../brief-figures.ts";
import { figures } from "../opening.ts";
import type { Screen } from "../screen.ts";
import { takeMarkdown, takeTable } from "../take.ts";

const words = choicesPage.brief;
const dates = new Intl.DateTimeFormat(undefined, { dateStyle: "long" });

export interface BriefOf {
  /** When the survey was saved, in words; null where not known. */
  version: string | null;
  /** Whether the link was copied, or an address to copy by hand; null before. */
  copied: string | true | null;
  copyLink(): void;
  /** What prints behind the brief; null where nobody asked. */
  workings: readonly Working[] | null;
  printWorkings(): void;
}

/** The brief's blocks from the decision as it stands. @param mark marks figures where they open */
export function briefBlocks({ choices, said, survey, say }: Screen, mark?: MarkFigure): Block[] {
  return briefOf(choices, briefWords(choices.currency, say.system, mark), {
    bed: said.bed,
    tank: said.tank,
    bedAt: (place) => survey.beds[place]?.name ?? String(place),
  });
}

/** Two pages, on the screen as they print. */
export function briefPart(screen: Screen, of: BriefOf) {
  const { version, copied, copyLink, workings, printWorkings } = of;
  const blocks = briefBlocks(screen, markBrief(screen.choices));
  return html`<section id="brief" tabindex="-1" aria-labelledby="brief-name">
    <div class="screen-only">
      <h2 id="brief-name">${choicesPage.parts.brief}</h2>
      <p class="lead">${words.lead}</p>
      <p class="row">
        <button class="press" @click=${() => print()}>${words.print}</button>
        <button class="press" @click=${printWorkings}>${words.printWorkings}</button>
        <button class="press" @click=${() => takeMarkdown(briefBlocks(screen), screen.choices.survey)}>${words.markdown}</button>
        <button class="press" @click=${copyLink}>${words.link}</button>
      </p>
      <p role="status" class="quiet">${copied === true ? words.copied : copied === null ? "" : words.notCopied(copied)}</p>
      <details>
        <summary>${words.tables}</summary>
        <p class="row">${tableNames(screen.choices).map(
          (name) =>
            html`<button class="plain" @click=${() => take(screen, name)}>${words.csv(name)}</button>`,
        )}</p>
      </details>
    </div>
    <article class="paper">
      ${blocks.map((block) => blockOf(block, screen))}
      <p class="made">${words.state(version, dates.format(new Date()))}</p>
    </article>
    ${workings ? workingsSheet(workings) : nothing}
  </section>`;
}

function take({ choices, say }: Screen, name: string): Promise<void> {
  return takeTable(tableIn(choicesTable(choices, name), say.system));
}

/** Behind the two pages: how each figure came about. */
function workingsSheet(workings: readonly Working[]) {
  return html`<article class="paper workings">
    <h3 class="title">${words.workings}</h3>
    ${workings.map(
      ({ title, steps, given, sources }) => html`<div class="one">
        <h4>${title}</h4>
        <ol>${steps.map(
          ({ formula, withNumbers, result }) =>
            html`<li><i>${formula}</i>${withNumbers ? html` = ${withNumbers}` : nothing} = <b>${result}</b></li>`,
        )}</ol>
        <p class="given">${given.map(({ name, text, source }) => html`<span>${words.given(name, text, source ?? null)}</span> `)}</p>
        <p class="given">${sources.join("; ")}</p>
      </div>`,
    )}
  </article>`;
}

/** In sentences and lists figures open; those of tables do in the tables above. */
function blockOf(block: Block, screen: Screen): TemplateResult {
  switch (block.kind) {
    case "title":
      return html`<h3 class="title">${block.text}</h3>`;
    case "question":
      return html`<p class="asked">${block.text}</p>`;
    case "heading":
      return html`<h4>${block.text}</h4>`;
    case "paragraph":
      return html`<p>${figures(block.text, screen)}</p>`;
    case "list":
      return html`<ul>${block.items.map((item) => html`<li>${figures(item, screen)}</li>`)}</ul>`;
    case "steps":
      return html`<ol>${block.items.map((item) => html`<li>${figures(item, screen)}</li>`)}</ol>`;
    case "table":
      return html`<div class="scroll" tabindex="0" role="region" aria-label=${block.caption}>
        <table>
          <caption>${block.caption}</caption>
          <thead><tr>${block.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
          <tbody>${block.rows.map(
            ([first, ...cells]) =>
              html`<tr><th scope="row">${first}</th>${cells.map((cell) => html`<td>${unmarked(cell)}</td>`)}</tr>`,
          )}</tbody>
        </table>
      </div>`;
  }
}
