import { css } from "lit";

/** Blanks of a way: a label over its line, readings beside each other, numbers large enough to read in the sun. */
export const formStyles = css`
  :host {
    display: block;
  }
  fieldset {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .blank {
    margin-top: 1rem;
  }
  .cells {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0.2rem 1rem;
  }
  .cell {
    display: inline-flex;
    align-items: baseline;
    gap: 0.3rem;
  }
  .cell input {
    width: 5.4rem;
  }
  .flow {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(5.2rem, 1fr));
    gap: 0.3rem 0.9rem;
  }
  .row {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(5.4rem, 1fr));
    align-items: end;
    gap: 0.3rem 0.9rem;
    margin-top: 0.7rem;
    padding-bottom: 0.5rem;
    border-bottom: 1px solid var(--hair);
  }
  .row.of-four {
    grid-template-columns: repeat(2, minmax(0, 1fr));
  }
  @media (min-width: 34rem) {
    .row.of-four {
      grid-template-columns: repeat(4, minmax(0, 1fr));
    }
  }
  .part {
    display: grid;
    gap: 0.1rem;
  }
  .part .hint {
    align-self: end;
    line-height: 1.2;
  }
  .part .hint::first-letter {
    text-transform: uppercase;
  }
  .row .cell,
  .flow .cell {
    display: flex;
    min-width: 0;
  }
  .row input,
  .flow input {
    flex: 1;
    width: 3rem;
  }
  .more {
    color: var(--grey);
    font-size: 0.95rem;
  }
  .side {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    margin-top: 0.35rem;
  }
  .press[aria-pressed="true"] {
    background: var(--ink);
    color: var(--on-ink);
  }
  input[aria-invalid="true"] {
    border-bottom: 5px double var(--ink);
  }
`;
