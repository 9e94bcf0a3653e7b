import { css, html, LitElement, nothing } from "lit";
import type { Given, Working } from "../../src/explain/working.ts";
import { figureWords } from "../../src/words/en/page.ts";
import { base } from "../look/base.ts";
import { provenanceLines } from "../look/provenance.ts";

/**
 * A figure in a sentence. Its underline says where it came from; it opens its working below the line that
 * it stands in, like a margin of sums. The same figure or Escape closes it.
 *
 * @property text the figure as shown
 * @property working what opens; without one the figure is plain text
 */
export class Figure extends LitElement {
  static override properties = {
    text: { attribute: false },
    working: { attribute: false },
    open: { type: Boolean, reflect: true },
  };

  declare text: string;
  declare working: Working | undefined;
  declare open: boolean;

  static override styles = [
    base,
    provenanceLines,
    css`
      :host {
        display: inline;
      }
      button {
        position: relative;
        display: inline;
        margin: 0;
        padding: 0;
        border: 0;
        background: none;
        font-weight: inherit;
        line-height: inherit;
        white-space: nowrap;
      }
      button::after {
        position: absolute;
        inset: -0.25em -0.15em;
        content: "";
      }
      button:hover,
      :host([open]) button {
        background: color-mix(in srgb, var(--ink) 9%, transparent);
      }
      /* A float as wide as the paragraph goes below the line it is met in, and the rest of the text below it. */
      .sums {
        float: left;
        width: 100%;
        margin: 0.55rem 0 0.9rem;
        padding: 1rem 1.25rem 1.05rem;
        border-inline-start: 3px solid var(--ink);
        background: var(--leaf);
        color: var(--ink);
        font-size: 0.95rem;
        font-weight: 400;
        letter-spacing: 0;
        line-height: 1.45;
        text-wrap: wrap;
      }
      .title {
        font-weight: 650;
      }
      .steps > li {
        display: grid;
        grid-template-columns: minmax(0, 1fr) minmax(0, 1.15fr);
        gap: 0.1rem 1.5rem;
        padding: 0.45rem 0;
        border-bottom: 1px solid var(--hair);
      }
      ol,
      ul {
        padding: 0;
        list-style: none;
      }
      .formula {
        font-style: italic;
      }
      .result {
        font-weight: 600;
        white-space: nowrap;
      }
      .heading {
        margin-top: 0.75rem;
        color: var(--grey);
      }
      .given {
        columns: 2;
        column-gap: 1.5rem;
      }
      .given li {
        padding: 0.12rem 0;
        break-inside: avoid;
      }
      .key {
        display: flex;
        flex-wrap: wrap;
        gap: 0.2rem 1.25rem;
        margin-top: 0.8rem;
        color: var(--grey);
        font-size: 0.88rem;
      }
      @media (max-width: 40rem) {
        .sums {
          padding: 0.85rem 0.9rem;
        }
        .steps > li {
          grid-template-columns: 1fr;
        }
        .given {
          columns: 1;
        }
      }
      @media print {
        .sums {
          display: none;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.text = "";
    this.open = false;
  }

  protected override render() {
    if (!this.working) return html`${this.text}`;
    return html`<button
        class=${this.working.provenance}
        aria-expanded=${this.open}
        aria-controls="sums"
        aria-description=${figureWords.open}
        @click=${this.toggle}
        @keydown=${this.escape}
      >${this.text}</button>${this.open ? this.sums(this.working) : nothing}`;
  }

  private sums(working: Working) {
    return html`<div id="sums" class="sums" role="group" aria-label=${working.title} @keydown=${this.escape}>
      <p class="title">${working.title}</p>
      <ol class="steps">
        ${working.steps.map(
          (step) => html`<li>
            <span class="formula">${step.formula}</span>
            <span>${step.withNumbers}${step.withNumbers ? " = " : ""}<span class="result">${step.result}</span></span>
          </li>`,
        )}
      </ol>
      ${
        working.given.length > 0
          ? html`<p class="heading">${figureWords.given}</p>
              <ul class="given">${working.given.map(givenLine)}</ul>`
          : nothing
      }
      ${
        working.sources.length > 0
          ? html`<p class="heading">${figureWords.sources}</p>
              <ul>${working.sources.map((s) => html`<li>${s}</li>`)}</ul>`
          : nothing
      }
      <p class="key">
        ${Object.entries(figureWords.key).map(([kind, words]) => html`<span class=${kind}>${words}</span>`)}
      </p>
    </div>`;
  }

  private readonly toggle = (): void => {
    this.open = !this.open;
  };

  private readonly escape = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || !this.open) return;
    event.stopPropagation();
    this.open = false;
    this.renderRoot.querySelector("button")?.focus();
  };
}

function givenLine(given: Given) {
  return html`<li>
    ${given.name}: <span class=${given.provenance}>${given.text}</span>${
      given.source ? html`<span class="quiet">, ${given.source}</span>` : nothing
    }
  </li>`;
}

customElements.define("gwb-figure", Figure);
