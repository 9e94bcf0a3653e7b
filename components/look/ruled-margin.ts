import { css } from "lit";

/** Text and figures, and beside them a ruled margin of notes. */
export const ruledMargin = css`
  .spread {
    display: grid;
    grid-template-columns: minmax(0, 43rem) minmax(0, 16.5rem);
    gap: 0 3.25rem;
    justify-content: space-between;
    margin-top: 1.6rem;
  }
  .margin {
    display: flex;
    flex-direction: column;
    gap: 1.1rem;
    padding-inline-start: 1.5rem;
    border-inline-start: 1px solid var(--hair);
  }
  .note {
    color: var(--grey);
    font-size: 0.9rem;
    line-height: 1.45;
    text-wrap: pretty;
  }
  .note strong {
    color: var(--ink);
    font-weight: 650;
  }
`;
