import { css } from "lit";

/** The line at the foot of the screen that says the answer is being worked out. */
export const busy = css`
  .busy {
    position: fixed;
    z-index: 3;
    inset-inline: 0;
    bottom: 0;
    padding: 0.6rem 1rem;
    background: var(--ink);
    color: var(--on-ink);
    text-align: center;
  }
  @media print {
    .busy {
      display: none;
    }
  }
`;
