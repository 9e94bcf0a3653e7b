import { css } from "lit";
import { radioWords } from "../look/radio-words.ts";

/** The running head of a page, and its foot. */
export const headLook = css`
  ${radioWords(".units")}
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
    .skip,
    .ways,
    .head p a,
    footer {
      display: none;
    }
    .head {
      padding-top: 0;
    }
  }
`;
