import { css } from "lit";

/**
 * A field as a line of a notebook: its name, a hint, what is written on the line, and below it what stands in or what
 * is wrong. The line says where the figure comes from, as figures do: solid measured, dashed entered, dotted left out.
 */
export const fieldStyles = css`
  :host {
    display: block;
    min-width: 0;
    padding: 0.85rem 0 0.95rem;
  }
  fieldset {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
  }
  .label {
    display: block;
    font-weight: 650;
    line-height: 1.3;
    overflow-wrap: anywhere;
  }
  .hint {
    max-width: 36rem;
    margin-top: 0.1rem;
    color: var(--grey);
    font-size: 0.92rem;
    line-height: 1.4;
    text-wrap: pretty;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0.15rem 1.3rem;
    margin-top: 0.15rem;
  }
  .on-line {
    display: flex;
    align-items: baseline;
    gap: 0.45rem;
    min-width: 0;
    max-width: 100%;
  }
  input[type="text"],
  textarea,
  select {
    min-width: 0;
    max-width: 100%;
    min-height: 2.4rem;
    padding: 0.2rem 0.1rem;
    border: 0;
    border-bottom: 2px dashed var(--ink);
    border-radius: 0;
    background: transparent;
    color: inherit;
    font: inherit;
    font-size: 1.16rem;
    text-overflow: ellipsis;
  }
  textarea {
    display: block;
    line-height: 1.5;
    resize: vertical;
  }
  select option {
    background: var(--leaf);
    color: var(--ink);
  }
  .measured input[type="text"] {
    border-bottom-style: solid;
  }
  .assumed input[type="text"],
  .assumed textarea,
  .assumed select {
    border-bottom-style: dotted;
  }
  .wrong input[type="text"],
  .wrong textarea,
  .wrong select {
    border-bottom: 5px double var(--ink);
  }
  .unit {
    color: var(--grey);
    white-space: nowrap;
  }
  .blank {
    min-height: 2.4rem;
    padding: 0.2rem 0;
    border: 0;
    background: none;
    color: var(--grey);
    text-align: start;
  }
  .blank:hover {
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.3em;
  }
  .blank[aria-pressed="true"] {
    color: var(--ink);
    font-weight: 650;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.3em;
  }
  .standing,
  .error {
    max-width: 36rem;
    margin-top: 0.35rem;
    font-size: 0.92rem;
    line-height: 1.4;
    overflow-wrap: anywhere;
  }
  .standing {
    color: var(--grey);
  }
  .error {
    padding-inline-start: 0.7rem;
    border-inline-start: 3px solid var(--ink);
    font-weight: 600;
  }
  .error + .standing {
    padding-inline-start: calc(0.7rem + 3px);
  }
  details {
    display: inline;
  }
  summary {
    display: inline;
    cursor: pointer;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.22em;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  details p {
    margin-top: 0.2rem;
  }
  @media (pointer: coarse) {
    input[type="text"],
    select,
    .blank {
      min-height: 44px;
    }
    summary {
      padding: 0.75rem 0;
    }
  }
`;

/** Answers one under another, ruled off from each other; the one chosen stands out by a mark and by weight. */
export const lineStyles = css`
  .lines {
    max-width: 36rem;
    margin-top: 0.5rem;
    border-top: 1px solid var(--hair);
  }
  .lines.many {
    max-width: none;
    columns: 16rem;
    column-gap: 2rem;
  }
  .line {
    position: relative;
    display: grid;
    grid-template-columns: 1.5rem minmax(0, 1fr);
    align-items: baseline;
    padding: 0.5rem 0;
    border-bottom: 1px solid var(--hair);
    cursor: pointer;
    break-inside: avoid;
  }
  .line:hover {
    background: color-mix(in srgb, var(--ink) 5%, transparent);
  }
  .line input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }
  .mark {
    align-self: center;
    width: 0.85rem;
    height: 0.85rem;
    border: 1.5px solid var(--ink);
    border-radius: 50%;
  }
  .ticks .mark {
    border-radius: 1px;
  }
  .line :checked + .mark {
    background: radial-gradient(circle, var(--ink) 48%, transparent 52%);
  }
  .ticks .line :checked + .mark {
    background: linear-gradient(var(--ink), var(--ink)) center / 60% 60% no-repeat;
  }
  .line :checked ~ .words strong {
    font-weight: 650;
  }
  .words strong {
    display: block;
    font-weight: 400;
    line-height: 1.35;
    overflow-wrap: anywhere;
  }
  .about {
    display: block;
    color: var(--grey);
    font-size: 0.9rem;
    line-height: 1.35;
  }
  .line :focus-visible {
    outline: none;
  }
  .line:has(:focus-visible) {
    outline: 3px solid var(--tank);
    outline-offset: 2px;
  }
  .wrong .lines {
    border-top: 5px double var(--ink);
  }
  .side {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.6rem;
    margin-top: 0.15rem;
  }
  .side .line {
    display: inline-grid;
    grid-template-columns: 1.4rem auto;
    border-bottom: 0;
  }
  @media (forced-colors: active) {
    .line :checked + .mark {
      background: CanvasText;
      forced-color-adjust: none;
    }
  }
  @media (pointer: coarse) {
    .line {
      min-height: 44px;
      align-content: center;
    }
  }
`;
