import { css } from "lit";

/** The log: lines for a thumb. */
export const logLook = css`
  .planned {
    max-width: 34rem;
    margin-top: 1rem;
    padding: 0;
    border-top: 1.5px solid var(--rule);
    list-style: none;
  }
  .planned li {
    display: flex;
    align-items: center;
    gap: 1rem;
    border-bottom: 1px solid var(--hair);
  }
  .thumb {
    display: grid;
    flex: 1;
    grid-template-columns: 2.4rem minmax(0, 1fr);
    align-items: center;
    min-height: 4rem;
    padding: 0.5rem 0;
    border: 0;
    background: none;
    line-height: 1.25;
    text-align: start;
  }
  button.thumb:hover {
    background: color-mix(in srgb, var(--ink) 5%, transparent);
  }
  .thumb strong,
  .thumb strong + span {
    display: block;
  }
  .thumb strong {
    font-size: 1.1rem;
  }
  .thumb strong + span {
    color: var(--grey);
  }
  .box {
    width: 1.5rem;
    height: 1.5rem;
    border: 1.5px solid var(--ink);
    border-radius: 1px;
  }
  .box.ticked {
    background: linear-gradient(var(--ink), var(--ink)) center / 62% 62% no-repeat;
  }
  .log-lines,
  .done-rows {
    padding: 0;
    list-style: none;
  }
  .log-lines li {
    display: grid;
    grid-template-columns: minmax(0, 14rem) minmax(0, 1fr);
    gap: 0 1rem;
    padding: 0.3rem 0;
    border-bottom: 1px solid var(--hair);
  }
  .done-rows li {
    display: grid;
    grid-template-columns: minmax(0, 14rem) 220px minmax(0, 1fr);
    gap: 0.1rem 1.2rem;
    align-items: center;
    padding: 0.25rem 0;
    line-height: 1.3;
  }
  .done-rows li:has(gwb-figure[open]) > .quiet {
    grid-column: 1 / -1;
  }
  .small-head {
    margin: 1rem 0 0.2rem;
    font-size: 1.05rem;
    font-weight: 650;
  }
  .file {
    max-width: 100%;
  }
  .file::file-selector-button {
    min-height: 2.4rem;
    margin-inline-end: 0.8rem;
    padding: 0.3rem 0.9rem;
    border: 1px solid var(--ink);
    border-radius: 2px;
    background: none;
    color: inherit;
    font: inherit;
  }
  @media (max-width: 48rem) {
    .log-lines li,
    .done-rows li {
      grid-template-columns: minmax(0, 1fr);
    }
  }
`;
