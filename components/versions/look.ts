import { css } from "lit";

/** The list of versions: when, what changed, and the way back to it. */
export const versionsLook = css`
      .versions {
        max-width: 43rem;
        margin-top: 0.5rem;
        padding: 0;
        list-style: none;
      }
      .versions > li {
        display: grid;
        grid-template-columns: 7.5rem minmax(0, 1fr) auto;
        gap: 0.1rem 1.2rem;
        padding: 0.6rem 0;
        border-bottom: 1px solid var(--hair);
      }
      .versions .what {
        overflow-wrap: anywhere;
        white-space: pre-line;
      }
      .now {
        font-weight: 650;
      }
      select {
        min-height: 2.2rem;
        border: 0;
        border-bottom: 2px dashed var(--ink);
        background: transparent;
      }
      option {
        background: var(--leaf);
        color: var(--ink);
      }
      .files {
        padding: 0;
        list-style: none;
      }
      .files li {
        padding: 0.35rem 0;
      }
      @media (max-width: 40rem) {
        .versions > li {
          grid-template-columns: minmax(0, 1fr);
        }
      }
      @media (pointer: coarse) {
        select,
        .files a {
          display: inline-flex;
          align-items: center;
          min-height: 44px;
        }
      }
    `;
