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
    .part,
    .day {
      break-inside: avoid;
    }
  }
`;

/** Lines to write on. */
export const entryLook = css`
  .monday {
    padding-top: 0.5rem;
    border-top: 1.5px solid var(--rule);
  }
  .monday h3 {
    font-size: 1rem;
    font-weight: 400;
  }
  .entry {
    margin-top: 0.9rem;
    padding-top: 0.1rem;
  }
  .cells {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1.4rem;
    margin-top: 0.3rem;
  }
  .line-entry {
    margin-top: 0.45rem;
  }
  .line-entry > label,
  .choices legend {
    padding: 0;
    font-weight: 650;
    line-height: 1.3;
  }
  .on-line {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 0.45rem;
  }
  .on-line input {
    width: 6.4rem;
  }
  input[type="text"],
  input[type="date"],
  select {
    min-width: 0;
    max-width: 100%;
    min-height: 2.3rem;
    padding: 0.1rem;
    border: 0;
    border-bottom: 2px dashed var(--ink);
    border-radius: 0;
    background: transparent;
    font-size: 1.16rem;
  }
  select option {
    background: var(--leaf);
    color: var(--ink);
  }
  .wrong input[type="text"] {
    border-bottom: 5px double var(--ink);
  }
  .unit {
    color: var(--grey);
  }
  .error {
    margin-top: 0.3rem;
    padding-inline-start: 0.7rem;
    border-inline-start: 3px solid var(--ink);
    font-size: 0.92rem;
    font-weight: 600;
    line-height: 1.4;
  }
  .pick span {
    display: block;
    font-weight: 650;
    line-height: 1.3;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2rem;
    min-width: 0;
    margin: 1.2rem 0 0;
    padding: 0;
    border: 0;
  }
  .choices label {
    position: relative;
    display: inline-flex;
    align-items: center;
    min-height: 2.2rem;
    cursor: pointer;
  }
  .choices input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }
  .choices label span {
    color: var(--grey);
  }
  .choices label:hover span {
    color: var(--ink);
  }
  .choices :checked + span {
    color: var(--ink);
    font-weight: 650;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.3em;
  }
  .choices :focus-visible + span {
    outline: 3px solid var(--tank);
    outline-offset: 3px;
  }
  .after {
    margin-top: 0.9rem;
  }
  @media (pointer: coarse) {
    input[type="text"],
    input[type="date"],
    select,
    .choices label {
      min-height: 44px;
    }
  }
`;

/** The week on foot and the soil. */
export const weekLook = css`
  .day {
    margin-top: 1.6rem;
  }
  .day h4 {
    margin: 0 0 0.5rem;
    font-size: 1.3rem;
    font-weight: 400;
    line-height: 1.25;
  }
  .day h4 .quiet {
    font-size: 0.9rem;
    font-weight: 400;
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
  .what {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 0.9rem;
  }
  .how-long {
    font-size: 1.08rem;
  }
  .why {
    display: block;
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
  .soil-name {
    line-height: 1.25;
    overflow-wrap: anywhere;
  }
  .dry-back {
    fill: var(--paper);
  }
  .bears {
    fill: none;
    stroke: var(--paper);
    stroke-width: 1.5;
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
