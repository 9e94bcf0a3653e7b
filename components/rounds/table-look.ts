import { css } from "lit";

/** Tables of the months, and what is printed. */
export const tableLook = css`
  .month-pick {
    display: inline-block;
    margin-top: 0.9rem;
  }
  .rows {
    width: 100%;
    margin-top: 0.8rem;
    border-collapse: collapse;
  }
  .rows th,
  .rows td {
    padding: 0.4rem 1rem 0.4rem 0;
    border-bottom: 1px solid var(--hair);
    line-height: 1.3;
    text-align: start;
    vertical-align: top;
  }
  .rows thead th {
    border-bottom: 1.5px solid var(--rule);
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
  .wide tbody tr:has(+ .second) > * {
    padding-bottom: 0.1rem;
    border-bottom: 0;
  }
  .wide .second > * {
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
    .wide thead {
      display: none;
    }
    .wide tr,
    .wide th,
    .wide td {
      display: block;
      padding: 0.1rem 0;
      border: 0;
    }
    .wide tr {
      padding: 0.6rem 0;
      border-bottom: 1px solid var(--hair);
    }
    .wide tbody tr:has(+ .second) {
      padding-bottom: 0;
      border-bottom: 0;
    }
    .wide .empty {
      display: none;
    }
    .wide .in-row {
      display: inline-block;
      width: 8.5rem;
      color: var(--grey);
      font-size: 0.9rem;
    }
  }
`;
