import { css } from "lit";

/** Tables of the months, and what is printed. */
export const tableLook = css`
  .month-pick {
    display: inline-block;
    margin-top: 0.9rem;
  }
  .rows,
  .rows thead,
  .rows tbody {
    display: block;
    width: 100%;
  }
  .rows {
    margin-top: 0.8rem;
  }
  .rows tr {
    display: grid;
    grid-template-columns: minmax(0, 2fr) repeat(3, minmax(0, 1fr));
    gap: 0 1rem;
    padding: 0.4rem 0;
    border-bottom: 1px solid var(--hair);
  }
  .wide tr {
    grid-template-columns: minmax(0, 1.4fr) minmax(0, 1.15fr) minmax(0, 1.55fr) minmax(0, 1.5fr) minmax(0, 1fr) minmax(0, 0.65fr) minmax(0, 0.85fr);
  }
  .rows th,
  .rows td {
    grid-row: 1;
    padding: 0;
    line-height: 1.3;
    text-align: start;
  }
  .rows td gwb-figure {
    --figure-wrap: normal;
  }
  .rows td:nth-child(2) {
    grid-column: 2;
  }
  .rows td:nth-child(3) {
    grid-column: 3;
  }
  .rows td:nth-child(4) {
    grid-column: 4;
  }
  .rows td:nth-child(5) {
    grid-column: 5;
  }
  .rows td:nth-child(6) {
    grid-column: 6;
  }
  .rows td:nth-child(7) {
    grid-column: 7;
  }
  /* A figure that is open goes below its row, with what it is, and its working takes the whole width. */
  .rows td:has(gwb-figure[open]) {
    grid-row: auto;
    grid-column: 1 / -1;
    padding-top: 0.4rem;
    color: var(--ink);
  }
  .rows td:has(gwb-figure[open]) .in-row {
    display: inline-block;
    margin-inline-end: 0.6rem;
    color: var(--grey);
  }
  .rows thead tr {
    padding-bottom: 0.3rem;
    border-bottom: 1.5px solid var(--rule);
  }
  .rows thead th {
    color: var(--grey);
    font-size: 0.88rem;
    font-weight: 400;
  }
  .rows tbody th {
    font-weight: 650;
  }
  .rows .below {
    display: block;
    color: var(--grey);
    font-size: 0.88rem;
    font-weight: 400;
  }
  .wide tbody tr:has(+ .second) {
    padding-bottom: 0.1rem;
    border-bottom: 0;
  }
  .wide .second {
    padding-top: 0.1rem;
    color: var(--grey);
    font-size: 0.92rem;
  }
  .wide .second th {
    font-weight: 400;
    font-style: italic;
  }
  .in-row {
    display: none;
  }
  .percents li:has(gwb-figure[open]) {
    grid-column: 1 / -1;
  }
  .percents {
    display: grid;
    grid-template-columns: repeat(12, 1fr);
    padding: 0;
    list-style: none;
    font-size: 1.1rem;
  }
  .percents span {
    display: block;
    color: var(--grey);
    font-size: 0.85rem;
  }
  .to-print {
    max-width: 44rem;
    margin-top: 1.2rem;
    padding: 0;
    border-top: 1.5px solid var(--rule);
    list-style: none;
  }
  .to-print li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 0.3rem 1.5rem;
    padding: 0.6rem 0;
    border-bottom: 1px solid var(--hair);
  }
  .press-row {
    display: flex;
    flex-wrap: wrap;
    gap: 0.7rem;
    margin-top: 0.9rem;
  }
  .long {
    width: min(20rem, 100%);
  }
  @media (max-width: 48rem) {
    .percents {
      grid-template-columns: repeat(6, 1fr);
      row-gap: 0.6rem;
    }
    .rows thead {
      display: none;
    }
    .rows tr,
    .rows th {
      display: block;
    }
    .rows th,
    .rows td {
      padding: 0.1rem 0;
    }
    .rows tr {
      padding: 0.6rem 0;
    }
    .wide tbody tr:has(+ .second) {
      padding-bottom: 0;
    }
    .wide .empty {
      display: none;
    }
    .rows td:not(.empty) {
      display: grid;
      grid-template-columns: 9.6rem minmax(0, 1fr);
    }
    .rows td:has(gwb-figure[open]):not(.empty) {
      display: flow-root;
    }
    .rows .in-row {
      display: inline;
      color: var(--grey);
      font-size: 0.9rem;
    }
  }
`;
