import { css } from "lit";

/** The sheet of the rounds: entries beside the round where there is room, before it where there is not. */
export const sheetLook = css`
  :host {
    display: block;
  }
  nav.parts {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.6rem;
    padding-bottom: 0.2rem;
  }
  nav.parts button {
    min-height: 2.4rem;
    padding: 0.2rem 0;
    border: 0;
    background: none;
  }
  nav.parts button:hover,
  nav.parts button[aria-current] {
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.3em;
  }
  nav.parts button[aria-current] {
    font-weight: 650;
  }
  .sheet-top {
    margin-top: 1.4rem;
  }
  .headline {
    max-width: 44rem;
    font-size: clamp(1.85rem, 1.1rem + 2.5vw, 2.8rem);
    font-weight: 340;
    line-height: 1.17;
    letter-spacing: -0.01em;
    text-wrap: balance;
    overflow-wrap: anywhere;
  }
  .lead {
    max-width: 38rem;
    margin: 0.7rem 0 0.9rem;
    font-size: 1.16rem;
    text-wrap: pretty;
  }
  .spread {
    display: grid;
    grid-template-columns: minmax(0, 17.5rem) minmax(0, 1fr);
    gap: 0 3rem;
    align-items: start;
    margin-top: 1.4rem;
  }
  .part {
    margin-top: 2.4rem;
  }
  .ruled {
    padding-top: 0.5rem;
    border-top: 1.5px solid var(--rule);
    font-size: 1rem;
    font-weight: 400;
  }
  .finding {
    max-width: 36rem;
    margin: 0.7rem 0 0.4rem;
    font-size: 1.3rem;
    font-weight: 400;
    line-height: 1.25;
    text-wrap: balance;
  }
  .key,
  .rest {
    max-width: 38rem;
    margin-top: 0.9rem;
    color: var(--grey);
    font-size: 0.9rem;
    line-height: 1.45;
    text-wrap: pretty;
  }
  .rest {
    color: var(--ink);
    font-size: 1rem;
  }
  .hint {
    color: var(--grey);
    font-size: 0.9rem;
    font-weight: 400;
    line-height: 1.4;
  }
  .aside {
    max-width: 38rem;
    margin-top: 0.6rem;
    padding-inline-start: 0.9rem;
    border-inline-start: 3px solid var(--ink);
  }
  .faults {
    max-width: 40rem;
    margin-top: 1.5rem;
    padding-inline-start: 1rem;
    border-inline-start: 3px solid var(--ink);
  }
  .faults code {
    font-family: inherit;
    font-weight: 650;
  }
  .plain-list {
    max-width: 40rem;
    margin-top: 0.6rem;
    padding-inline-start: 1.1rem;
  }
  .plain-list li {
    padding: 0.15rem 0;
  }
  .plain-list li::marker {
    content: "– ";
  }
  .pairs > div {
    display: grid;
    grid-template-columns: minmax(0, 13rem) minmax(0, 1fr);
    gap: 0 1.5rem;
    padding: 0.45rem 0;
    border-bottom: 1px solid var(--hair);
  }
  .pairs dt {
    font-weight: 650;
    overflow-wrap: anywhere;
  }
  .pairs dd {
    max-width: 38rem;
  }
  @media (pointer: coarse) {
    nav.parts button {
      min-height: 44px;
    }
  }
  @media (max-width: 62rem) {
    .spread {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media (max-width: 40rem) {
    .pairs > div {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media print {
    .spread {
      display: block;
    }
    .day,
    .tank,
    li {
      break-inside: avoid;
    }
    .ruled,
    h4 {
      break-after: avoid;
    }
  }
`;
