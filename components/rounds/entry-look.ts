import { css } from "lit";

/** Lines to write on. */
export const entryLook = css`
  .monday {
    padding-top: 0.5rem;
    border-top: 1.5px solid var(--rule);
  }
  .monday h2 {
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
  .cells > .line-entry,
  .cells > .choices {
    margin-top: 0;
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
