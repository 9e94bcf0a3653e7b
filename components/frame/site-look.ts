import { css } from "lit";

/** What stands in a site's head and about its sheet. */
export const siteLook = css`
  .standing {
    color: var(--grey);
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
    .asides {
      display: none;
    }
  }
`;
