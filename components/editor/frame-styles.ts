import { css } from "lit";

/** The editor's frame: contents beside the sheet where there is room, one after the other where there is not. */
export const frame = css`
  :host {
    display: block;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    gap: 0.2rem 2rem;
    padding: 0.55rem 0 0.3rem;
    border-top: 1.5px solid var(--rule);
  }
  h2 {
    font-size: 1rem;
    font-weight: 400;
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.35rem;
  }
  .ways button[disabled] {
    color: var(--grey);
    text-decoration: none;
    cursor: default;
  }
  .notes {
    display: flex;
    flex-wrap: wrap-reverse;
    justify-content: space-between;
    gap: 0 2rem;
    min-height: 1.7rem;
  }
  .told {
    flex: 1 1 12rem;
    max-width: 46rem;
    color: var(--grey);
    font-size: 0.92rem;
    overflow-wrap: anywhere;
  }
  .spread {
    display: grid;
    grid-template-columns: minmax(0, 19rem) minmax(0, 43rem);
    gap: 0 3.25rem;
    justify-content: space-between;
    align-items: start;
    margin-top: 0.8rem;
  }
  .contents {
    padding-inline-end: 1.5rem;
    border-inline-end: 1px solid var(--hair);
  }
  .contents ul,
  .entries,
  .faults ul {
    padding: 0;
    list-style: none;
  }
  .group-name {
    margin-top: 1.3rem;
    color: var(--grey);
    font-size: 0.88rem;
    font-weight: 400;
  }
  section:first-child > .group-name {
    margin-top: 0;
  }
  .contents a {
    text-decoration: none;
  }
  .contents a:hover,
  .entry-line:hover .entry-name,
  .onwards a:hover {
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.22em;
  }
  .contents li {
    border-bottom: 1px solid var(--hair);
  }
  .part-line {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    gap: 0 1rem;
    padding: 0.32rem 0;
  }
  .part-line .quiet {
    font-size: 0.92rem;
    overflow-wrap: anywhere;
  }
  .contents [aria-current],
  .contents [aria-current] .part-name {
    font-weight: 650;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.3em;
  }
  .part-line[aria-current] {
    text-decoration: none;
  }
  .sheets {
    padding: 0 0 0.5rem;
    padding-inline-start: 1rem !important;
  }
  .sheets li {
    border: 0;
    overflow-wrap: anywhere;
  }
  .sheets a {
    display: inline-block;
    padding: 0.12rem 0;
  }
  .sheet {
    min-width: 0;
  }
  .of {
    margin-bottom: 0.2rem;
    color: var(--grey);
    font-size: 0.95rem;
    overflow-wrap: anywhere;
  }
  .title {
    font-size: clamp(1.7rem, 1.2rem + 2vw, 2.4rem);
    font-weight: 340;
    line-height: 1.15;
    letter-spacing: -0.01em;
    overflow-wrap: anywhere;
  }
  .title:focus {
    outline: none;
  }
  .lead {
    max-width: 36rem;
    margin-top: 0.5rem;
    font-size: 1.16rem;
    text-wrap: pretty;
    overflow-wrap: anywhere;
  }
  .unknown {
    max-width: 36rem;
    margin-top: 1rem;
    line-height: 1.7;
  }
  .unknown strong {
    font-weight: 650;
  }
  .fields {
    margin-top: 1.1rem;
  }
  .fields > * + * {
    border-top: 1px solid var(--hair);
  }
  .entries {
    margin-top: 1.2rem;
    border-top: 1px solid var(--hair);
  }
  .entries > li {
    border-bottom: 1px solid var(--hair);
  }
  .entry-line {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.2fr);
    gap: 0 1.5rem;
    align-items: baseline;
    padding: 0.6rem 0;
    text-decoration: none;
  }
  .entry-name {
    font-weight: 600;
    overflow-wrap: anywhere;
  }
  .none {
    margin-top: 1.2rem;
    color: var(--grey);
    font-size: 1.16rem;
  }
  .adding {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.4rem 1.5rem;
    padding: 0.9rem 0;
  }
  .fields > .adding {
    border-top: 1px solid var(--hair);
  }
  .apart {
    margin-top: 1.6rem;
  }
  .onwards {
    margin-top: 1.8rem;
    padding-top: 0.7rem;
    border-top: 1.5px solid var(--rule);
    overflow-wrap: anywhere;
  }
  .onwards a {
    display: inline-block;
    padding: 0.3rem 0;
    font-size: 1.16rem;
  }
  @media (max-width: 62rem) {
    .spread {
      grid-template-columns: minmax(0, 1fr);
    }
    .contents {
      padding: 0;
      border: 0;
    }
    .inner .contents {
      display: none;
    }
    .spread:not(.inner) .sheet {
      order: -1;
      margin-bottom: 2rem;
    }
  }
  @media (max-width: 40rem) {
    .entry-line {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media (pointer: coarse) {
    .notes {
      min-height: 44px;
    }
    .part-line,
    .sheets a,
    .onwards a,
    h2 a {
      min-height: 44px;
      align-items: center;
    }
    .sheets a,
    .onwards a,
    h2 a {
      display: inline-flex;
    }
    .entry-line {
      min-height: 44px;
      align-content: center;
    }
  }
  @media print {
    .head,
    .adding,
    .onwards,
    .contents {
      display: none;
    }
  }
`;
