import { type CSSResult, css, unsafeCSS } from "lit";

/** Radio buttons as words side by side, the chosen one underlined. @param where selector that they stand in */
export function radioWords(where: string): CSSResult {
  const at = unsafeCSS(where);
  return css`
    ${at} label {
      position: relative;
      display: inline-flex;
      align-items: center;
      cursor: pointer;
    }
    ${at} input {
      position: absolute;
      inset: 0;
      width: 100%;
      height: 100%;
      margin: 0;
      opacity: 0;
      cursor: pointer;
    }
    ${at} span {
      padding: 0.3rem 0;
      color: var(--grey);
    }
    ${at} :checked + span {
      color: var(--ink);
      font-weight: 650;
      text-decoration: underline;
      text-decoration-thickness: 2px;
      text-underline-offset: 0.3em;
    }
    ${at} :focus-visible + span {
      outline: 3px solid var(--tank);
      outline-offset: 3px;
    }
  `;
}
