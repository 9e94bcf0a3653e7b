import { css } from "lit";
import { base, pressable } from "../look/base.ts";

/** What every screen of the walk shares: one column for a thumb, large words, the next step at the foot. */
const walk = css`
  :host {
    display: block;
    min-width: 0;
  }
  .screen {
    display: flex;
    flex-direction: column;
    max-width: 40rem;
    min-height: min(100svh, 46rem);
  }
  @media (min-width: 60rem) {
    .screen.wide {
      max-width: 62rem;
    }
  }
  .of {
    margin-top: 1.1rem;
    color: var(--grey);
    overflow-wrap: anywhere;
  }
  h2 {
    font-size: clamp(1.65rem, 1.25rem + 1.6vw, 2.15rem);
    font-weight: 360;
    line-height: 1.18;
    letter-spacing: -0.01em;
    text-wrap: balance;
    overflow-wrap: anywhere;
  }
  h2:focus,
  h3:focus {
    outline: none;
  }
  h3 {
    margin-top: 1.6rem;
    font-size: 1.08rem;
    font-weight: 650;
    line-height: 1.3;
  }
  .lead {
    margin-top: 0.7rem;
    font-size: 1.08rem;
    text-wrap: pretty;
  }
  .how {
    margin-top: 0.6rem;
    max-width: 36rem;
    text-wrap: pretty;
  }
  .aside {
    margin-top: 1.2rem;
    padding: 0.75rem 1rem 0.8rem;
    border-inline-start: 3px solid var(--ink);
    background: var(--leaf);
    font-size: 0.98rem;
  }
  .aside h3 {
    margin: 0;
    font-size: 1rem;
  }
  .aside ul {
    margin-top: 0.25rem;
    padding-inline-start: 1.1rem;
  }
  .aside li {
    padding: 0.12rem 0;
  }
  .note,
  .wrong {
    margin-top: 0.5rem;
    max-width: 36rem;
    color: var(--grey);
    text-wrap: pretty;
  }
  .wrong {
    padding-inline-start: 0.7rem;
    border-inline-start: 3px solid var(--ink);
    color: var(--ink);
    font-weight: 600;
  }
  .result {
    margin-top: 1rem;
    padding-top: 0.7rem;
    border-top: 1.5px solid var(--rule);
    font-size: 1.16rem;
  }
  .result:empty {
    padding: 0;
    border: 0;
  }
  .result strong {
    font-size: 1.45em;
    font-weight: 500;
    line-height: 1.25;
    overflow-wrap: break-word;
  }
  input,
  button,
  select {
    scroll-margin-block: 4rem 8rem;
  }
  input[type="text"]:focus-visible {
    outline-offset: 0;
  }
  .grow {
    flex: 1;
    min-height: 1.2rem;
  }
  .foot {
    position: sticky;
    bottom: 0;
    z-index: 1;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.35rem 1.2rem;
    max-width: 40rem;
    margin-top: 1.4rem;
    padding: 0.7rem 0 max(0.8rem, env(safe-area-inset-bottom));
    border-top: 1px solid var(--hair);
    background: var(--paper);
  }
  .press,
  .main {
    min-height: 48px;
  }
  .main {
    flex: 1 1 11rem;
    padding: 0.5rem 1.2rem;
    border: 1.5px solid var(--ink);
    border-radius: 2px;
    background: var(--ink);
    color: var(--on-ink);
    font-size: 1.1rem;
    font-weight: 600;
    text-align: center;
    text-decoration: none;
  }
  .main:hover {
    background: color-mix(in srgb, var(--ink) 86%, var(--paper));
  }
  .main[disabled] {
    border-style: dashed;
    background: none;
    color: var(--grey);
    cursor: default;
  }
  .plain {
    min-height: 48px;
    text-align: start;
  }
  a.plain {
    display: inline-flex;
    align-items: center;
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 1rem;
    color: var(--grey);
    font-size: 0.95rem;
  }
  .top .plain {
    color: var(--ink);
  }
  .top p {
    align-self: center;
    overflow-wrap: anywhere;
  }
  .unit {
    color: var(--grey);
    white-space: nowrap;
  }
  input[type="text"],
  select {
    min-width: 0;
    max-width: 100%;
    min-height: 48px;
    padding: 0.2rem 0.15rem;
    border: 0;
    border-bottom: 2px solid var(--ink);
    border-radius: 0;
    background: transparent;
    font-size: 1.3rem;
  }
  input[type="text"]:focus {
    background: var(--leaf);
  }
  select {
    font-size: 1.05rem;
  }
  select option {
    background: var(--leaf);
    color: var(--ink);
  }
  legend {
    padding: 0;
  }
  .label {
    display: block;
    font-weight: 600;
    line-height: 1.3;
  }
  .hint {
    color: var(--grey);
    font-size: 0.95rem;
  }
  @media (prefers-contrast: more) {
    .note,
    .of,
    .hint {
      color: var(--ink);
    }
  }
  @media (orientation: landscape) and (max-height: 30rem) {
    .screen {
      min-height: 0;
    }
    .foot {
      position: static;
    }
  }
  @media print {
    .foot,
    .top {
      display: none;
    }
  }
`;

/** Answers one under another: a line each, large enough for a thumb, a drawing beside the words where one helps. */
export const answers = css`
  .answers {
    margin-top: 0.9rem;
    padding: 0;
    border-top: 1px solid var(--hair);
    list-style: none;
  }
  .answer {
    display: flex;
    align-items: center;
    gap: 0.9rem;
    width: 100%;
    min-height: 56px;
    padding: 0.5rem 0.2rem;
    border: 0;
    border-bottom: 1px solid var(--hair);
    background: none;
    color: inherit;
    text-align: start;
    text-decoration: none;
    line-height: 1.3;
  }
  @media (hover: hover) {
    .answer:hover {
      background: color-mix(in srgb, var(--ink) 5%, transparent);
    }
  }
  .answer[aria-pressed="true"],
  .answer[aria-current="true"] {
    background: color-mix(in srgb, var(--ink) 8%, transparent);
    box-shadow: inset 4px 0 0 var(--ink);
    padding-inline-start: 0.8rem;
  }
  .answer .words {
    flex: 1;
    min-width: 0;
    overflow-wrap: anywhere;
  }
  .answer strong {
    font-weight: 600;
  }
  .answer .about {
    display: block;
    color: var(--grey);
    font-size: 0.93rem;
  }
  .answer svg {
    flex: none;
  }
  .answer .end {
    color: var(--grey);
    font-size: 0.95rem;
    text-align: end;
  }
  @media (prefers-contrast: more) {
    .answer .about,
    .answer .end {
      color: var(--ink);
    }
  }
`;

export const walkStyles = [base, pressable, walk, answers];
