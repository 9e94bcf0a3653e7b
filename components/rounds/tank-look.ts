import { css } from "lit";

/** Tanks, the order of who goes first, rules. */
export const tankLook = css`
  .tank {
    display: grid;
    grid-template-columns: 78px minmax(0, 1fr);
    gap: 0 1.5rem;
    margin-top: 1.3rem;
  }
  .tank-words > svg {
    margin-top: 0.4rem;
  }
  .tank-sentence {
    max-width: 36rem;
    font-size: 1.1rem;
    line-height: 1.4;
    text-wrap: pretty;
  }
  .days-span {
    stroke: var(--tank);
    stroke-width: 6;
  }
  .small-head {
    margin: 0.7rem 0 0.2rem;
    color: var(--grey);
    font-size: 0.92rem;
    font-weight: 400;
  }
  .rations,
  .order {
    padding: 0;
    list-style: none;
  }
  .rations li {
    display: grid;
    grid-template-columns: minmax(0, 12rem) 180px minmax(0, 1fr);
    gap: 0.1rem 1rem;
    align-items: center;
    padding: 0.25rem 0;
    line-height: 1.3;
  }
  .rations gwb-figure {
    --figure-wrap: normal;
  }
  .rations li:has(gwb-figure[open]) > .quiet {
    grid-column: 1 / -1;
  }
  .order {
    counter-reset: place;
    margin-top: 0.5rem;
  }
  .order li {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    gap: 0 1.5rem;
    padding: 0.3rem 0;
    border-bottom: 1px solid var(--hair);
    counter-increment: place;
  }
  .order li > span:first-child::before {
    display: inline-block;
    width: 1.6rem;
    content: counter(place);
  }
  .moves {
    display: inline-flex;
    gap: 1.2rem;
  }
  .moves button[disabled] {
    color: var(--grey);
    text-decoration: none;
    cursor: default;
  }
  .rule-list {
    margin-top: 0.3rem;
    padding: 0;
    list-style: none;
  }
  .rule-list li {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 1rem;
    padding: 0.3rem 0;
    border-bottom: 1px solid var(--hair);
  }
  details.adding {
    margin-top: 0.6rem;
  }
  details.adding summary {
    cursor: pointer;
    text-decoration: underline;
    text-underline-offset: 0.22em;
    list-style: none;
  }
  @media (pointer: coarse) {
    details.adding summary {
      padding: 0.6rem 0;
    }
  }
  @media (max-width: 48rem) {
    .rations li {
      grid-template-columns: minmax(0, 1fr);
    }
    .tank {
      grid-template-columns: minmax(0, 1fr);
      gap: 0.6rem;
    }
  }
`;
