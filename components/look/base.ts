import { css } from "lit";

/** What every element here shares: box, links, buttons, the ring that shows where the keyboard is. */
export const base = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  [hidden] {
    display: none !important;
  }
  h1,
  h2,
  h3,
  p,
  figure,
  dl,
  dd,
  ol,
  ul {
    margin: 0;
  }
  a {
    color: inherit;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.22em;
  }
  a:hover {
    text-decoration-thickness: 2px;
  }
  button,
  select,
  input {
    font: inherit;
    color: inherit;
    letter-spacing: inherit;
  }
  button {
    cursor: pointer;
  }
  :focus-visible {
    outline: 3px solid var(--tank);
    outline-offset: 3px;
  }
  .quiet {
    color: var(--grey);
  }
  .with-mark {
    white-space: nowrap;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  @media print {
    .screen-only {
      display: none !important;
    }
  }
`;

/** A button that looks like what it is on paper: a word in a hand-ruled box. */
export const pressable = css`
  .press {
    display: inline-flex;
    align-items: center;
    min-height: 2.4rem;
    padding: 0.3rem 0.9rem;
    border: 1.5px solid var(--ink);
    border-radius: 2px;
    background: transparent;
    text-decoration: none;
  }
  .press:hover {
    background: var(--ink);
    color: var(--on-ink);
  }
  .plain {
    padding: 0.25rem 0;
    border: 0;
    background: none;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.22em;
  }
  .plain:hover {
    text-decoration-thickness: 2px;
  }
  @media (pointer: coarse) {
    .press,
    .plain {
      min-height: 44px;
    }
  }
`;
