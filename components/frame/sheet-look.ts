import { css } from "lit";
import { ruledMargin } from "../look/ruled-margin.ts";

/** A sheet of text with a ruled margin beside it, which takes its place in the text where it is narrow. */
export const sheetLook = css`
  ${ruledMargin}
  :host {
    display: block;
  }
  .headline {
    max-width: 60rem;
    font-size: clamp(1.75rem, 1.05rem + 2.5vw, 2.8rem);
    font-weight: 340;
    line-height: 1.18;
    letter-spacing: -0.012em;
    text-wrap: pretty;
  }
  .lead {
    max-width: 38rem;
    margin-top: 0.9rem;
    font-size: 1.16rem;
    text-wrap: pretty;
  }
  .section {
    margin-top: 3rem;
    padding-top: 0.55rem;
    border-top: 1.5px solid var(--rule);
  }
  .section > h2,
  .section > h3 {
    font-size: 1rem;
    font-weight: 400;
  }
  .hint {
    color: var(--grey);
    font-size: 0.92rem;
    line-height: 1.4;
  }
  .in-the-way {
    max-width: 43rem;
    margin-top: 1.3rem;
    padding: 1rem 1.25rem;
    border-inline-start: 3px solid var(--ink);
    background: var(--leaf);
  }
  .in-the-way h2,
  .in-the-way h3 {
    font-size: 1.16rem;
    font-weight: 650;
    line-height: 1.3;
    overflow-wrap: anywhere;
  }
  .in-the-way ol {
    margin: 0.5rem 0 0.6rem;
    padding-inline-start: 1.6rem;
  }
  .in-the-way li {
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
  .section > .row {
    margin-top: 0.7rem;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5rem 1.4rem;
  }
  .press:disabled {
    border-style: dotted;
    background: none;
    color: var(--grey);
    cursor: default;
  }
  .file {
    position: relative;
  }
  .file input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    opacity: 0;
    cursor: pointer;
  }
  .file input::file-selector-button {
    cursor: pointer;
  }
  .file:focus-within {
    outline: 3px solid var(--tank);
    outline-offset: 3px;
  }
  @media (max-width: 62rem) {
    .spread {
      grid-template-columns: minmax(0, 1fr);
    }
    .margin {
      max-width: 38rem;
      margin-top: 1.3rem;
      padding-inline-start: 1rem;
    }
  }
  @media print {
    .spread {
      display: block;
    }
    .margin {
      margin-top: 4mm;
      border: 0;
      padding: 0;
    }
  }
`;
