import { css } from "lit";

/** The week on foot and the soil. */
export const weekLook = css`
  .day {
    margin-top: 1.6rem;
  }
  .day h4 {
    margin: 0;
    font-size: 1.3rem;
    font-weight: 400;
    line-height: 1.25;
  }
  .day > .quiet {
    margin-bottom: 0.5rem;
    font-size: 0.95rem;
  }
  .stop {
    font-size: 15px;
    font-weight: 600;
  }
  .steps {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.5;
    stroke-dasharray: 5 4;
    stroke-linecap: round;
  }
  .soak {
    stroke: var(--grey);
    stroke-width: 1;
  }
  .sun {
    stroke: var(--ink);
    stroke-width: 1;
    stroke-dasharray: 1 3;
  }
  .stops {
    margin-top: 0.4rem;
    padding: 0;
    list-style: none;
  }
  .stops li {
    padding: 0.45rem 0;
    border-top: 1px solid var(--hair);
  }
  .what > * {
    margin-inline-end: 0.9rem;
  }
  .how-long {
    font-size: 1.08rem;
  }
  .why {
    max-width: 38rem;
    color: var(--grey);
    font-size: 0.95rem;
    line-height: 1.4;
    text-wrap: pretty;
  }
  .soils {
    padding: 0;
    list-style: none;
  }
  .soils li {
    display: grid;
    grid-template-columns: 13rem auto 10rem;
    gap: 0 1.25rem;
    align-items: center;
    padding: 0.22rem 0;
  }
  .soils li:has(gwb-figure[open]) .quiet {
    grid-column: 1 / -1;
  }
  .soil-name {
    line-height: 1.25;
    overflow-wrap: anywhere;
  }
  .bears {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2.5;
  }
  @media (max-width: 40rem) {
    .soils li {
      grid-template-columns: minmax(0, 1fr);
      padding: 0.45rem 0;
    }
  }
`;
