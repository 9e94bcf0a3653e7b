import { css } from "lit";

/** Curves of tank water against size: the middle, the dry and the wet year, and the edges of a band. */
export const curves = css`
  .curve {
    fill: none;
    stroke: var(--tank);
    stroke-width: 1;
  }
  .curve.middle {
    stroke-width: 2.5;
  }
  .curve.thin {
    stroke-width: 1.25;
  }
  .curve.dashed {
    stroke-width: 1.5;
    stroke-dasharray: 5 4;
  }
  .curve.edge {
    stroke-width: 0.6;
  }
`;
