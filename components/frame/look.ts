import { css } from "lit";
import { headLook } from "./head-look.ts";

/** The running head, the sheet below it and the foot: the same on every screen. */
export const frameLook = css`
  ${headLook}
  :host {
    display: block;
  }
  .page {
    max-width: 72rem;
    margin-inline: auto;
    padding: 0 clamp(1rem, 4vw, 3.25rem) 4rem;
  }
  .demo-line {
    max-width: 72rem;
    margin-inline: auto;
    padding: 0.9rem clamp(1rem, 4vw, 3.25rem) 0;
    font-size: 0.92rem;
  }
  main {
    display: block;
    min-height: calc(100svh - 7rem);
    padding-top: clamp(1.6rem, 4vw, 3rem);
  }
  main:focus {
    outline: none;
  }
  @media print {
    .page {
      max-width: none;
      padding: 0;
    }
    .demo-line {
      display: none;
    }
    main {
      min-height: 0;
      padding-top: 6mm;
    }
  }
`;
