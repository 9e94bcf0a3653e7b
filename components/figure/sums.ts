import { html, nothing, type TemplateResult } from "lit";
import type { Given, Step, Working } from "../../src/explain/working.ts";
import { figureWords as words } from "../../src/words/en/page.ts";

/** What the margin of sums can be asked for. */
export interface SumsHost {
  /** Opens the working of a number that went in; undefined where nothing further can be had. */
  follow: ((address: string) => void) | undefined;
  /** Goes back to the working before; undefined on the first. */
  back: (() => void) | undefined;
  /** Title of the working that `back` leads to. */
  before: string | undefined;
  /** Path of a page of its own; undefined where there is none. */
  page: string | undefined;
}

/** A working written out: its steps, what went in, where it is published, and how to read the underlines. */
export function sums(working: Working, host: SumsHost): TemplateResult {
  return html`${trail(host)}
    <p class="title">${working.title}</p>
    <ol class="steps">
      ${working.steps.map(stepLine)}
    </ol>
    ${
      working.given.length > 0
        ? html`<p class="heading">${words.given}</p>
          <ul class="given">${working.given.map((given) => givenLine(given, host))}</ul>`
        : nothing
    }
    ${
      working.sources.length > 0
        ? html`<p class="heading">${words.sources}</p>
          <ul>${working.sources.map((source) => html`<li>${source}</li>`)}</ul>`
        : nothing
    }
    ${host.page ? html`<p class="own-page"><a href=${host.page}>${words.ownPage}</a></p>` : nothing}
    <p class="key">
      ${Object.entries(words.key).map(([kind, key]) => html`<span class=${kind}>${key}</span>`)}
    </p>`;
}

function trail({ back, before }: SumsHost) {
  if (!back) return nothing;
  return html`<p class="trail"><button class="back" @click=${back}>${words.back(before ?? "")}</button></p>`;
}

function stepLine(step: Step) {
  return html`<li>
    <span>
      <span class="formula">${step.formula}</span>
      ${step.words ? html`<br /><span class="words">${step.words}</span>` : nothing}
    </span>
    <span
      >${step.withNumbers && step.withNumbers !== step.result ? `${step.withNumbers} = ` : ""}<span class="result">${step.result}</span>${
        step.source ? html`<br /><span class="words">${step.source}</span>` : nothing
      }</span
    >
  </li>`;
}

function givenLine(given: Given, { follow }: SumsHost) {
  const { at } = given;
  const figure =
    at && follow
      ? html`<button class="opens ${given.provenance}" aria-description=${words.open} @click=${() => follow(at)}>${given.text}</button>`
      : html`<span class=${given.provenance}>${given.text}</span>`;
  return html`<li>
    ${given.name}: ${figure}${given.source ? html`<span class="quiet">, ${given.source}</span>` : nothing}
  </li>`;
}
