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
  .row {
    flex-wrap: nowrap;
  }
  .row .cell {
    flex: 0 1 5.4rem;
    min-width: 0;
  }
  .row .cell input {
    width: 100%;
  }
  .number {
    flex: 0 0 1.4rem;
    color: var(--grey);
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
