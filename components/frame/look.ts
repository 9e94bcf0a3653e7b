import { css } from "lit";

/** The running head, the sheet below it and the foot: the same on every screen. */
export const frameLook = css`
  :host {
    display: block;
  }
  .page {
    max-width: 72rem;
    margin-inline: auto;
    padding: 0 clamp(1rem, 4vw, 3.25rem) 4rem;
  }
  .skip {
    position: absolute;
    inset-inline-start: 1rem;
    top: -6rem;
    z-index: 4;
    padding: 0.6rem 1rem;
    border: 0;
    background: var(--ink);
    color: var(--on-ink);
  }
  .skip:focus {
    top: 0.5rem;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    gap: 0.35rem 2rem;
    padding: 1.5rem 0 0.7rem;
    border-bottom: 1.5px solid var(--rule);
  }
  .name {
    min-width: 0;
    max-width: 34rem;
  }
  h1 {
    font-size: 1.05rem;
    font-weight: 650;
    line-height: 1.3;
    overflow-wrap: anywhere;
  }
  .name p {
    font-size: 0.92rem;
  }
  .demo-line {
    max-width: 72rem;
    margin-inline: auto;
    padding: 0.9rem clamp(1rem, 4vw, 3.25rem) 0;
    font-size: 0.92rem;
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0.2rem 2rem;
    font-size: 0.95rem;
  }
  nav {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.35rem;
  }
  nav a {
    padding: 0.3rem 0;
    text-decoration: none;
  }
  nav a:hover,
  nav a[aria-current] {
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.3em;
  }
  nav a[aria-current] {
    font-weight: 650;
  }
  .units {
    display: flex;
    gap: 1rem;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .units label {
    position: relative;
    display: inline-flex;
    align-items: center;
    cursor: pointer;
  }
  .units input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }
  .units span {
    padding: 0.3rem 0;
    color: var(--grey);
  }
  .units :checked + span {
    color: var(--ink);
    font-weight: 650;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.3em;
  }
  .units :focus-visible + span {
    outline: 3px solid var(--tank);
    outline-offset: 3px;
  }
  main {
    display: block;
    min-height: calc(100svh - 7rem);
    padding-top: clamp(1.6rem, 4vw, 3rem);
  }
  main:focus {
    outline: none;
  }
  footer {
    margin-top: 4rem;
    padding-top: 0.7rem;
    border-top: 1px solid var(--hair);
    color: var(--grey);
    font-size: 0.92rem;
  }
  @media (pointer: coarse) {
    nav a,
    .units span,
    .head p a {
      display: inline-flex;
      align-items: center;
      min-height: 44px;
    }
  }
  @media print {
    .page {
      max-width: none;
      padding: 0;
    }
    .demo-line,
    .skip,
    .ways,
    footer {
      display: none;
    }
    .head {
      padding-top: 0;
    }
    main {
      min-height: 0;
      padding-top: 6mm;
    }
  }
`;
