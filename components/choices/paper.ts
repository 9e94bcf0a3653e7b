import { css } from "lit";

/** The brief as a sheet, and alone on paper: two pages of A4 or letter. */
export const paper = css`
  .paper {
    max-width: 46rem;
    margin-top: 2rem;
    padding: clamp(1.2rem, 4vw, 3rem);
    background: var(--leaf);
    outline: 1px solid var(--hair);
    font-size: 0.95rem;
    line-height: 1.42;
  }
  .paper .title {
    margin: 0;
    font-size: 1.7rem;
    font-weight: 400;
    line-height: 1.2;
    letter-spacing: -0.01em;
  }
  .paper .asked {
    margin: 0.3rem 0 0;
    font-size: 1.1rem;
    font-style: italic;
  }
  .paper h4 {
    margin: 1.1rem 0 0.25rem;
    padding-top: 0.3rem;
    border-top: 1.5px solid var(--rule);
    font-size: 1rem;
    font-weight: 650;
    break-after: avoid;
  }
  .paper p + p {
    margin-top: 0.35rem;
  }
  .paper .asked + h4 + p {
    font-size: 1.05em;
  }
  .paper ul,
  .paper ol {
    margin: 0;
    padding-inline-start: 1.2rem;
  }
  .paper li + li {
    margin-top: 0.15rem;
  }
  .paper .scroll {
    margin-top: 1.1rem;
  }
  .paper table {
    width: 100%;
    border-collapse: collapse;
    font-size: 0.9em;
    line-height: 1.3;
  }
  .paper caption {
    padding: 0.3rem 0 0.25rem;
    border-top: 1.5px solid var(--rule);
    font-size: 1rem;
    font-weight: 650;
  }
  .paper th,
  .paper td {
    padding: 0.2rem 0 0.2rem 0.8rem;
    border-bottom: 1px solid var(--hair);
    text-align: end;
    vertical-align: top;
    font-weight: 400;
  }
  .paper th:first-child {
    padding-inline-start: 0;
    text-align: start;
  }
  .paper td:last-child {
    white-space: nowrap;
  }
  .paper thead th {
    border-bottom-color: var(--ink);
    color: var(--grey);
    vertical-align: bottom;
  }
  .workings .one {
    break-inside: avoid;
  }
  .workings ol {
    padding: 0;
    list-style: none;
  }
  .workings .given {
    color: var(--grey);
    font-size: 0.9em;
  }
  .made {
    color: var(--grey);
  }
  @media print {
    .quotes-change section {
      content-visibility: visible;
    }
    section:not(#brief),
    .contents {
      display: none;
    }
    .paper {
      max-width: none;
      margin: 0;
      padding: 0;
      outline: 0;
      font-size: 9pt;
      line-height: 1.32;
    }
    .paper.workings {
      break-before: page;
      font-size: 8.5pt;
    }
    .paper .title {
      font-size: 17pt;
    }
    .paper .asked {
      font-size: 11pt;
    }
    .paper h4,
    .paper caption {
      margin-top: 7pt;
      font-size: 10pt;
    }
    .paper .scroll {
      margin-top: 7pt;
      overflow: visible;
      break-inside: avoid;
    }
    .paper tr,
    .paper li {
      break-inside: avoid;
    }
    .paper p,
    .paper li {
      orphans: 3;
      widows: 3;
    }
    .paper th,
    .paper td {
      padding-block: 1.5pt;
    }
    .workings .given {
      color: inherit;
    }
  }
`;
