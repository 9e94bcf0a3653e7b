import { css } from "lit";
import { headLook } from "../frame/head-look.ts";

/** The frame of every page: a running head ruled off from the sheet, and the foot. */
export const frame = css`
  ${headLook}
  :host {
    display: block;
    max-width: 72rem;
    margin-inline: auto;
    padding: 0 clamp(1rem, 4vw, 3.25rem) 4rem;
  }
  h1:focus {
    outline: none;
  }
  .invented {
    margin-top: 0.7rem;
    color: var(--grey);
    font-size: 0.92rem;
  }
  main {
    padding-top: clamp(1.8rem, 4.5vw, 3.4rem);
  }
  .headline {
    font-size: clamp(1.95rem, 1.1rem + 2.9vw, 3.15rem);
    font-weight: 340;
    line-height: 1.17;
    color: var(--grey);
  }
  .waiting {
    min-height: 100svh;
  }
  #own {
    margin-top: 4.2rem;
    scroll-margin-top: 1rem;
  }
  #own:focus {
    outline: none;
  }
  h2 {
    padding-top: 0.55rem;
    border-top: 1.5px solid var(--rule);
    font-size: 1rem;
    font-weight: 400;
  }
  .lead {
    max-width: 38rem;
    margin: 1.5rem 0 1.4rem;
    font-size: 1.16rem;
    text-wrap: pretty;
  }
  .file {
    max-width: 43rem;
    padding: 0.9rem 0 1rem;
    border-top: 1px solid var(--hair);
  }
  .put {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.4rem 1rem;
    margin-top: 0.55rem;
  }
  .press {
    position: relative;
  }
  .press input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    opacity: 0;
    cursor: pointer;
  }
  .press input::file-selector-button {
    cursor: pointer;
  }
  .press:focus-within {
    outline: 3px solid var(--tank);
    outline-offset: 3px;
  }
  .faults {
    max-width: 43rem;
    margin-top: 1.3rem;
    padding: 1rem 1.25rem;
    border-inline-start: 3px solid var(--ink);
    background: var(--leaf);
  }
  .faults h3 {
    font-size: 1.16rem;
    font-weight: 650;
    line-height: 1.3;
    overflow-wrap: anywhere;
  }
  .faults ol {
    margin: 0.5rem 0 0.9rem;
    padding-inline-start: 1.6rem;
  }
  .faults li {
    padding: 0.25rem 0;
    overflow-wrap: anywhere;
  }
  code {
    font-family: inherit;
    font-weight: 600;
  }
  code::after {
    content: ":";
  }
  .over {
    position: fixed;
    inset: 0;
    z-index: 3;
    display: grid;
    place-items: center;
    background: color-mix(in srgb, var(--paper) 92%, transparent);
    font-size: 1.9rem;
    font-weight: 340;
    pointer-events: none;
  }
  .over::before {
    position: absolute;
    inset: 1.25rem;
    border: 2px dashed var(--ink);
    content: "";
  }
  @media (pointer: coarse) {
    .invented a {
      display: inline-flex;
      align-items: center;
      min-height: 44px;
    }
  }
  @media print {
    :host {
      max-width: none;
      padding: 0;
    }
    .invented a,
    #own,
    .over {
      display: none;
    }
    main {
      padding-top: 6mm;
    }
  }
`;
