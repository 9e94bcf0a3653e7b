import { css } from "lit";

/** What stands in a site's head and about its sheet. */
export const siteLook = css`
  .standing {
    color: var(--grey);
  }
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
  .conflict {
    margin: 0 0 2rem;
  }
  .asides {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.35rem;
    color: var(--grey);
    font-size: 0.92rem;
  }
  @media print {
    .standing,
    .asides,
    .busy {
      display: none;
    }
  }
`;
