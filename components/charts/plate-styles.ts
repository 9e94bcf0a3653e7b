import { css } from "lit";

/** The frame of a plate: heading, controls, ruler, reading, and the table behind. */
export const frame = css`
  :host {
    display: block;
    break-inside: avoid;
  }
  h3 {
    max-width: 38rem;
    font-size: 1.3rem;
    font-weight: 600;
    line-height: 1.25;
    letter-spacing: -0.005em;
    text-wrap: balance;
  }
  .controls {
    margin-top: 0.35rem;
  }
  .sheet {
    position: relative;
    margin-top: 0.9rem;
    touch-action: pan-y;
  }
  .ruler {
    position: absolute;
    height: 26px;
    margin: 0;
    padding: 0;
    background: transparent;
    appearance: none;
    -webkit-appearance: none;
    cursor: ew-resize;
  }
  .ruler::-webkit-slider-runnable-track {
    height: 100%;
    background: transparent;
  }
  .ruler::-moz-range-track {
    height: 100%;
    background: transparent;
  }
  @media (pointer: coarse) {
    .ruler {
      height: 44px;
    }
  }
  .ruler::-webkit-slider-thumb {
    appearance: none;
    -webkit-appearance: none;
    width: 14px;
    height: 11px;
    margin-top: 0;
    background: var(--ink);
    clip-path: polygon(50% 0, 100% 100%, 0 100%);
    border: 0;
    border-radius: 0;
  }
  .ruler::-moz-range-thumb {
    width: 14px;
    height: 11px;
    background: var(--ink);
    clip-path: polygon(50% 0, 100% 100%, 0 100%);
    border: 0;
    border-radius: 0;
  }
  .sheet:not(.live) .reading-line {
    opacity: 0;
  }
  .read {
    min-height: 1.55em;
    margin-top: 0.35rem;
    color: var(--grey);
    font-size: 0.92rem;
  }
  .read.live {
    color: var(--ink);
  }
  @media (max-width: 40rem) {
    .read {
      min-height: 3.1em;
    }
  }
  details {
    margin-top: 0.2rem;
    font-size: 0.92rem;
  }
  summary {
    display: inline-block;
    cursor: pointer;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.22em;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  summary:hover {
    text-decoration-thickness: 2px;
  }
  .scroll {
    max-height: 26rem;
    margin: 0.6rem 0;
    overflow: auto;
    border-block: 1px solid var(--ink);
  }
  table {
    border-collapse: collapse;
    min-width: 100%;
  }
  th {
    font-weight: 500;
    text-align: start;
    vertical-align: bottom;
  }
  thead th {
    position: sticky;
    top: 0;
    background: var(--paper);
    color: var(--grey);
    box-shadow: inset 0 -1px var(--ink);
  }
  th,
  td {
    padding: 0.35rem 1.1rem 0.35rem 0;
  }
  th.number,
  td.number {
    text-align: end;
    white-space: nowrap;
  }
  tbody th {
    min-width: 7.5rem;
  }
  tbody tr + tr > * {
    border-top: 1px solid var(--hair);
  }
  @media (pointer: coarse) {
    summary {
      padding: 0.6rem 0;
    }
  }
  @media print {
    .ruler,
    .read,
    details,
    .controls {
      display: none;
    }
  }
`;
