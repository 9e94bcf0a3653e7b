import { css } from "lit";

/** The six entries as a sheet of a notebook: numbered, ruled, side by side where there is room. */
export const firstLook = css`
  .answer {
    min-height: 9.6rem;
  }
  .answer .first {
    margin-bottom: 0.5rem;
    font-size: 1.3rem;
    line-height: 1.4;
  }
  .answer .headline {
    min-height: 2.36em;
    font-size: clamp(1.7rem, 1.1rem + 1.9vw, 2.45rem);
  }
  .answer .lead {
    max-width: 46rem;
    margin-top: 0.5rem;
    font-size: 1.08rem;
  }
  .figure {
    text-decoration: underline dashed max(1.5px, 0.055em);
    text-underline-offset: 0.2em;
    text-decoration-skip-ink: none;
    white-space: nowrap;
  }
  .is-old .figure {
    color: var(--grey);
  }
  .entries {
    display: grid;
    grid-template-columns: repeat(6, minmax(0, 1fr));
    gap: 0 1.6rem;
    counter-reset: entry;
  }
  .entry {
    position: relative;
    grid-column: span 2;
    min-width: 0;
    padding-inline-start: 1.45rem;
    border-top: 1px solid var(--hair);
  }
  .entry::before {
    position: absolute;
    inset-inline-start: 0;
    top: 0.72rem;
    color: var(--grey);
    font-size: 1.16rem;
    font-weight: 340;
    counter-increment: entry;
    content: counter(entry);
  }
  .half {
    grid-column: span 3;
  }
  .whole {
    grid-column: span 6;
  }
  .narrow p {
    margin-top: 0.25rem;
  }
  .keep {
    max-width: 43rem;
  }
  .keep .row {
    align-items: end;
  }
  .primary {
    background: var(--ink);
    color: var(--on-ink);
  }
  .primary:hover {
    background: transparent;
    color: var(--ink);
  }
  .echo {
    position: sticky;
    z-index: 2;
    bottom: 0;
    margin: 1rem calc(-1 * clamp(1rem, 4vw, 3.25rem)) 0;
    padding: 0.55rem clamp(1rem, 4vw, 3.25rem);
    border-top: 1.5px solid var(--rule);
    background: var(--paper);
    font-weight: 650;
    line-height: 1.3;
    /* what lies below it is still pressed */
    pointer-events: none;
  }
  .echo.unseen-while-above {
    visibility: hidden;
  }
  @media (max-width: 40rem) {
    /* the longest it gets, so that what is below does not move while it is being pressed */
    .answer {
      min-height: 19rem;
    }
    .entry,
    .half {
      grid-column: span 6;
    }
  }
  @media print {
    .keep,
    .echo {
      display: none !important;
    }
  }
`;
