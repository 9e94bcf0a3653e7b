import { css } from "lit";

/** Strips of paper in a list, each with a grip. */
export const guessStyles = css`
  :host {
    display: block;
  }
  h3 {
    max-width: 38rem;
    font-size: 1.3rem;
    font-weight: 600;
    line-height: 1.25;
  }
  h3:focus {
    outline: none;
  }
  .lead {
    max-width: 38rem;
    margin-top: 0.4rem;
  }
  .end {
    max-width: 30rem;
    margin: 0.9rem 0 0.3rem 3rem;
    color: var(--grey);
    font-size: 0.9rem;
  }
  ol + .end {
    margin-top: 0.3rem;
  }
  ol {
    max-width: 30rem;
    padding: 0;
    list-style: none;
  }
  li {
    display: flex;
    align-items: center;
    gap: 0.75rem;
    min-height: 2.75rem;
    border-top: 1px solid var(--hair);
    background: var(--paper);
  }
  li:last-child {
    border-bottom: 1px solid var(--hair);
  }
  li.held {
    background: var(--leaf);
    box-shadow: inset 0 0 0 1.5px var(--ink);
  }
  .name {
    flex: 1;
    min-width: 0;
    font-weight: 500;
    overflow-wrap: anywhere;
  }
  .grip {
    flex: none;
    width: 2.25rem;
    min-height: 2.75rem;
    padding: 0;
    border: 0;
    background: none;
    cursor: grab;
    touch-action: none;
  }
  .held .grip {
    cursor: grabbing;
  }
  .grip span {
    display: block;
    width: 1.1rem;
    height: 0.7rem;
    margin: auto;
    border-block: 1.5px solid var(--ink);
  }
  .grip span::before {
    display: block;
    height: calc(50% + 1px);
    border-bottom: 1.5px solid var(--ink);
    content: "";
  }
  select {
    flex: none;
    min-width: 3.2rem;
    min-height: 2.2rem;
    padding: 0.1rem 0.2rem;
    border: 0;
    border-bottom: 1.5px dashed var(--ink);
    border-radius: 0;
    background: transparent;
  }
  select option {
    background: var(--leaf);
    color: var(--ink);
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5rem 1.2rem;
    margin-top: 1.1rem;
  }
  @media (pointer: coarse) {
    select,
    .grip {
      min-height: 44px;
    }
    .grip {
      width: 44px;
    }
  }
  @media print {
    .ways,
    .grip {
      display: none;
    }
  }
`;
