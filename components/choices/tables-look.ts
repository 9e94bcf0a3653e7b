import { css } from "lit";

/** Ruled tables, their figures that open, and the working below a row. */
export const tablesLook = css`
  .scroll {
    max-width: 100%;
    margin-top: 1.8rem;
    overflow-x: auto;
    container-type: inline-size;
  }
  .ruled {
    width: 100%;
    border-collapse: collapse;
    font-size: 0.92rem;
    line-height: 1.35;
  }
  .ruled.small {
    max-width: 36rem;
    margin-top: 1.8rem;
  }
  caption {
    padding-bottom: 0.35rem;
    font-size: 1.15rem;
    font-weight: 600;
    text-align: start;
  }
  .ruled th,
  .ruled td {
    padding: 0.35rem 0 0.35rem 1.1rem;
    border-top: 1px solid var(--hair);
    text-align: end;
    vertical-align: top;
  }
  .ruled th:first-child,
  .ruled td:first-child {
    padding-inline-start: 0;
    text-align: start;
  }
  .ruled .text {
    text-align: start;
  }
  .ruled thead th {
    border-top: 0;
    border-bottom: 1px solid var(--ink);
    color: var(--grey);
    font-weight: 500;
    vertical-align: bottom;
  }
  .ruled tbody th {
    min-width: 8rem;
    font-weight: 500;
  }
  .opens {
    display: inline;
    margin: -0.15rem 0;
    padding: 0.15rem 0;
    border: 0;
    background: none;
    color: inherit;
    font: inherit;
    text-align: inherit;
    cursor: pointer;
  }
  /* two lines of figures in one cell keep a thumb's or a pointer's room between them */
  .ruled td br + .quiet .opens {
    display: inline-block;
    margin: 0.3rem 0 0;
  }
  .opens:hover,
  .opens[aria-expanded="true"] {
    background: color-mix(in srgb, var(--ink) 9%, transparent);
  }
  .scroll caption {
    position: sticky;
    left: 0;
    max-width: 100cqi;
  }
  .ruled td {
    white-space: nowrap;
  }
  .ruled .text,
  .ruled.ban td,
  .ruled .opened td {
    white-space: normal;
  }
  .ruled td.text {
    min-width: 11rem;
  }
  .ruled .opened td {
    border-top: 0;
    padding: 0;
  }
  .opened gwb-opened {
    position: sticky;
    left: 0;
    max-width: 100cqi;
  }
  .ruled.money {
    min-width: 58rem;
  }
  .ruled.ban td {
    min-width: 8.2rem;
  }
  section > .scroll {
    margin-top: 2.4rem;
  }
  @media (max-width: 40rem) {
    .scroll .ruled tr > th:first-child {
      position: sticky;
      left: 0;
      z-index: 1;
      max-width: 8.5rem;
      padding-inline-end: 0.5rem;
      background: var(--paper);
    }
  }
  @media (pointer: coarse) {
    .opens {
      min-height: 44px;
    }
  }
`;
