import { css } from "lit";

/** A figure in its line, and the margin of sums below it. */
export const figureStyles = css`
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
    text-align: inherit;
    white-space: var(--figure-wrap, nowrap);
  }
  button::after {
    position: absolute;
    inset: -0.25em -0.15em;
    content: "";
  }
  button:hover,
  :host([open]) .line {
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
  .own-page {
    margin-top: 0.75rem;
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
  /* what stands open is printed: a reader shows its working on paper by opening it */
  @media print {
    .sums {
      padding-block: 0 1mm;
      background: none;
      break-inside: avoid;
    }
    .own-page,
    .trail {
      display: none;
    }
  }
  .opens {
    white-space: normal;
  }
  .words {
    color: var(--grey);
  }
  .trail {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1.25rem;
    margin-bottom: 0.35rem;
  }
  .trail button {
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.2em;
  }
`;
