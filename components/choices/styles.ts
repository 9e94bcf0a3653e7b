import { css } from "lit";

/** The choices screen: lines of a notebook, ruled tables, and the brief as a sheet of paper. */
export const choicesStyles = css`
  .question {
    margin-bottom: 0.3rem;
    color: var(--grey);
    font-size: 1.16rem;
    font-style: italic;
  }
  .headline {
    font-size: clamp(1.75rem, 1.1rem + 2.2vw, 2.65rem);
    text-wrap: pretty;
  }
  /* while quotes are typed, parts out of sight are neither laid out nor painted, and keep their size */
  section {
    contain-intrinsic-size: auto 900px;
  }
  .quotes-change section {
    content-visibility: auto;
  }
  .contents {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.3rem;
    margin-bottom: 1.6rem;
    font-size: 0.92rem;
  }
  h3 {
    margin: 2.2rem 0 0.5rem;
    font-size: 1.15rem;
    font-weight: 600;
  }
  .main > :first-child,
  .main > h3:first-child {
    margin-top: 0;
  }
  .capital::first-letter {
    text-transform: uppercase;
  }
  .draws {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.2rem 0.9rem;
    margin: -0.9rem 0 1.4rem;
    color: var(--grey);
    font-size: 0.92rem;
  }
  progress {
    appearance: none;
    -webkit-appearance: none;
    width: 9rem;
    height: 7px;
    border: 1px solid var(--ink);
    background: transparent;
  }
  progress::-webkit-progress-bar {
    background: transparent;
  }
  progress::-webkit-progress-value {
    background: var(--ink);
  }
  progress::-moz-progress-bar {
    background: var(--ink);
  }
  .lines,
  .quote-lines {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .lines > li {
    padding: 0.8rem 0;
    border-top: 1px solid var(--hair);
  }
  .lines > li:last-child {
    border-bottom: 1px solid var(--hair);
  }
  .lines p {
    max-width: 38rem;
    text-wrap: pretty;
  }
  .tick-line {
    display: flex;
    align-items: baseline;
    gap: 0.6rem;
    color: var(--ink);
    font-size: 1.1rem;
    font-weight: 600;
    cursor: pointer;
  }
  .tick-line input {
    flex: none;
    width: 1.05rem;
    height: 1.05rem;
    margin: 0;
    accent-color: var(--ink);
    transform: translateY(0.12rem);
  }
  .tick-line ~ * {
    margin-inline-start: 1.65rem;
  }
  .quote {
    margin-top: 0.25rem;
  }
  .quote-lines {
    margin: 0.4rem 0 0;
  }
  .quote-lines li,
  .quote-foot,
  .entries {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0.2rem 1.4rem;
  }
  .quote-lines .what {
    flex: 1 1 11rem;
    min-width: 0;
  }
  .entries {
    margin-bottom: 1.8rem;
  }
  .entry label {
    display: block;
    font-size: 0.88rem;
    line-height: 1.3;
  }
  .entry .on-line {
    display: inline-flex;
    align-items: baseline;
    gap: 0.4rem;
  }
  .entry input {
    width: 7.2rem;
    min-height: 2.1rem;
    padding: 0.1rem;
    border: 0;
    border-bottom: 1.5px dashed var(--ink);
    border-radius: 0;
    background: transparent;
  }
  .entry input[aria-invalid="true"] {
    border-bottom: 3px double var(--ink);
  }
  .hint,
  .fault {
    display: block;
    max-width: 16rem;
    font-size: 0.85rem;
    line-height: 1.35;
  }
  .hint {
    color: var(--grey);
  }
  .fault {
    font-weight: 600;
  }
  .steps,
  .plain-list {
    max-width: 38rem;
    margin: 0.4rem 0 0;
    padding-inline-start: 1.4rem;
  }
  .steps li,
  .plain-list li {
    margin: 0.25rem 0;
    text-wrap: pretty;
  }
  gwb-plate + p {
    margin-top: 1.2rem;
  }
  .under-table {
    margin-top: 0.4rem;
    color: var(--grey);
    font-size: 0.88rem;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1rem;
  }
  /* the years' sentence gives way to the draws' longer one without pushing what stands below */
  #answer .lead {
    min-height: 6em;
  }
  @media (max-width: 40rem) {
    #answer .lead {
      min-height: 9em;
    }
  }
  #brief .lead {
    margin: 1.4rem 0 1rem;
  }
  .busy {
    opacity: 0.62;
  }
  @media (max-width: 40rem) {
    .tick-line ~ * {
      margin-inline-start: 0;
    }
  }
  @media (pointer: coarse) {
    .tick-line,
    .entry input {
      min-height: 44px;
    }
    .tick-line {
      align-items: center;
    }
  }
`;
