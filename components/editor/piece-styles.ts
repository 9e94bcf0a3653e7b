import { css } from "lit";

/** What stands on the sheet beside its fields: groups, faults, handles. */
export const pieces = css`
  .group {
    padding: 0.9rem 0 0.3rem;
  }
  .rows > .group + .group,
  .reading {
    border-top: 1px solid var(--hair);
  }
  .abreast {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 12rem), 1fr));
    gap: 0 2rem;
  }
  .rows:focus {
    outline: none;
  }
  h4 {
    margin: 0;
    font-size: 1.16rem;
    font-weight: 400;
    font-style: italic;
  }
  .group > .group,
  .reading .group,
  .group .rows {
    padding-inline-start: 1.1rem;
    border-inline-start: 1px solid var(--hair);
  }
  .more > .group {
    padding-inline-start: 1.1rem;
    border-inline-start: 1px solid var(--hair);
  }
  .more {
    padding: 0.8rem 0;
  }
  .more > summary,
  .reading > summary {
    display: inline-block;
    padding: 0.35rem 0;
    cursor: pointer;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.22em;
    list-style: none;
    overflow-wrap: anywhere;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  .hint {
    color: var(--grey);
    font-size: 0.92rem;
  }
  .fault,
  .wanted {
    max-width: 36rem;
    margin: 0.6rem 0;
    padding-inline-start: 0.7rem;
    border-inline-start: 3px solid var(--ink);
    font-weight: 600;
  }
  .wanted {
    border-inline-start: 1px solid var(--grey);
    color: var(--grey);
    font-weight: 400;
  }
  .faults > summary {
    cursor: pointer;
    list-style: none;
  }
  .faults h3 {
    display: inline;
    font-size: 0.95rem;
    font-weight: 650;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.25em;
  }
  .faults[open] {
    flex-basis: 100%;
    padding: 0.5rem 1.25rem 0.9rem;
    border-inline-start: 3px solid var(--ink);
    background: var(--leaf);
  }
  .faults li {
    max-width: 46rem;
    padding: 0.15rem 0;
    overflow-wrap: anywhere;
  }
  .faults ul + ul {
    margin-top: 0.5rem;
    padding-top: 0.5rem;
    border-top: 1px solid var(--hair);
  }
  .faults .quiet {
    margin-top: 0.5rem;
    font-size: 0.92rem;
  }
  .arranging > li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 1rem;
    background: var(--paper);
  }
  .arranging .entry-name {
    flex: 1 1 8rem;
  }
  .dragged {
    position: relative;
    z-index: 1;
    outline: 1.5px solid var(--ink);
  }
  .handle {
    flex: none;
    min-width: 2.75rem;
    min-height: 2.75rem;
    padding: 0;
    border: 0;
    border-inline-end: 1px solid var(--hair);
    background: none;
    color: var(--grey);
    padding-inline-end: 1rem;
    cursor: grab;
    touch-action: none;
  }
  .steps {
    display: flex;
    gap: 1rem;
  }
  .steps button {
    min-width: 2.75rem;
    min-height: 2.75rem;
  }
  .steps button[disabled] {
    color: var(--grey);
    text-decoration: none;
    cursor: default;
  }
  @media (pointer: coarse) {
    .more > summary,
    .reading > summary {
      min-height: 44px;
      line-height: 1.9rem;
    }
    .faults > summary {
      min-height: 44px;
      line-height: 44px;
    }
    .faults a {
      display: inline-block;
      padding: 0.5rem 0;
    }
  }
  @media print {
    .faults {
      display: none;
    }
  }
`;
