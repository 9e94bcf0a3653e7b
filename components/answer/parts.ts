import { css, html, nothing, type TemplateResult } from "lit";
import type { AnswerView } from "../../src/report/view.ts";
import { plate } from "../../src/words/en/plates.ts";
import { ruledMargin } from "../look/ruled-margin.ts";

/** The sheet: text and figures, and beside them a ruled margin that takes its place in the text where it is narrow. */
export const sheet = css`
  ${ruledMargin}
  :host {
    display: block;
  }
  section {
    scroll-margin-top: 1rem;
  }
  section:focus {
    outline: none;
  }
  .first {
    display: flow-root;
    max-width: 46rem;
    margin-bottom: 1.1rem;
    font-size: 1.3rem;
    line-height: 1.4;
  }
  .headline {
    display: flow-root;
    max-width: 60rem;
    font-size: clamp(1.95rem, 1.1rem + 2.9vw, 3.15rem);
    font-weight: 340;
    line-height: 1.17;
    letter-spacing: -0.012em;
  }
  .lead {
    display: flow-root;
    max-width: 38rem;
    margin-bottom: 1.9rem;
    font-size: 1.16rem;
    line-height: 1.5;
  }
  section > .spread ~ .spread {
    margin-top: 3.4rem;
  }
  .said + .said {
    display: block;
    margin-top: 0.4rem;
  }
  h2 {
    margin-top: 4.2rem;
    padding-top: 0.55rem;
    border-top: 1.5px solid var(--rule);
    font-size: 1rem;
    font-weight: 400;
  }
  h2 + .spread {
    margin-top: 1.7rem;
  }
  label {
    color: var(--grey);
  }
  select {
    max-width: 100%;
    min-height: 2.1rem;
    margin-inline-start: 0.35rem;
    padding: 0.1rem 0.2rem;
    border: 0;
    border-bottom: 1.5px dashed var(--ink);
    border-radius: 0;
    background: transparent;
    text-overflow: ellipsis;
  }
  select option {
    background: var(--leaf);
    color: var(--ink);
  }
  .years {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 0.9rem;
  }
  summary {
    display: inline-block;
    cursor: pointer;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.22em;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  .assumed {
    max-height: 18rem;
    margin-top: 0.4rem;
    padding: 0;
    overflow: auto;
    list-style: none;
    font-size: 0.95em;
  }
  .assumed li + li {
    margin-top: 0.45rem;
  }
  .where {
    color: var(--ink);
    overflow-wrap: anywhere;
  }
  @media (max-width: 62rem) {
    .spread {
      grid-template-columns: minmax(0, 1fr);
    }
    .margin {
      max-width: 38rem;
      margin-top: 1.3rem;
      padding-inline-start: 1rem;
    }
    section > .spread ~ .spread {
      margin-top: 2.6rem;
    }
    h2 {
      margin-top: 3rem;
    }
  }
  @media (pointer: coarse) {
    select,
    summary {
      min-height: 44px;
      line-height: 44px;
    }
  }
  @media print {
    .spread {
      display: block;
      margin-top: 4mm;
    }
    .lead {
      max-width: none;
      margin-bottom: 4mm;
    }
    .margin {
      display: block;
      max-width: none;
      margin-top: 3mm;
      padding: 2mm 0 0;
      border: 0;
      border-top: 0.25mm solid var(--hair);
      columns: 2;
      column-gap: 7mm;
    }
    .note {
      margin-bottom: 2mm;
      font-size: 8.5pt;
    }
    .said {
      display: inline !important;
    }
    .headline {
      font-size: 22pt;
    }
    h2 {
      margin-top: 8mm;
      break-after: avoid;
    }
    section > .spread ~ .spread {
      margin-top: 7mm;
    }
  }
`;

/** An aside of the margin, its first words set bold. */
export function note(head: string, words: string | TemplateResult): TemplateResult {
  return html`<div class="note" role="note"><strong>${head}</strong> ${words}</div>`;
}

/** Chooses whose months are drawn. */
export function chooser(view: AnswerView, bed: string | null, choose: (id: string | null) => void) {
  if (view.beds.length < 2) return nothing;
  const change = (event: Event) => choose((event.target as HTMLSelectElement).value || null);
  return html`<div slot="controls">
    <label>${plate.show}<select @change=${change}>
        <option value="" ?selected=${bed === null}>${plate.allBeds}</option>
        ${view.beds.map((b) => html`<option value=${b.id} ?selected=${b.id === bed}>${b.name}</option>`)}
      </select></label>
  </div>`;
}

/** Chooses the year that the tanks are shown in, or steps through them. */
export function yearChooser(view: AnswerView, year: number | null, choose: (year: number) => void) {
  const { years } = view;
  if (years.length < 2 || year === null) return nothing;
  const at = years.indexOf(year);
  const kind = (y: number) =>
    y === view.mains.dry?.year
      ? `, ${plate.bar.dry}`
      : y === view.mains.wet?.year
        ? `, ${plate.bar.wet}`
        : "";
  return html`<div slot="controls" class="years">
    <label>${plate.year}<select
        @change=${(event: Event) => choose(Number((event.target as HTMLSelectElement).value))}
      >
        ${years.map((y) => html`<option value=${y} ?selected=${y === year}>${y}${kind(y)}</option>`)}
      </select></label>
    <button class="plain" ?disabled=${at <= 0} @click=${() => choose(years[at - 1]!)}>${plate.earlier}</button>
    <button class="plain" ?disabled=${at >= years.length - 1} @click=${() => choose(years[at + 1]!)}>
      ${plate.later}
    </button>
  </div>`;
}
