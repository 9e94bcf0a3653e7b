import { css } from "lit";

/** Where a figure came from, by its underline: solid measured, dashed chosen or worked out, dotted assumed. */
export const provenanceLines = css`
  .measured,
  .worked-out,
  .assumed {
    text-decoration-line: underline;
    text-decoration-thickness: max(1.5px, 0.055em);
    text-underline-offset: 0.2em;
    text-decoration-skip-ink: none;
  }
  .measured {
    text-decoration-style: solid;
  }
  .worked-out {
    text-decoration-style: dashed;
  }
  .assumed {
    text-decoration-style: dotted;
    text-decoration-thickness: max(2px, 0.065em);
  }
  @media print {
    .measured,
    .worked-out,
    .assumed {
      text-decoration-thickness: 0.6pt;
    }
    .assumed {
      text-decoration-thickness: 0.9pt;
    }
  }
`;
