import { css, html, type TemplateResult } from "lit";
import { radioWords } from "./radio-words.ts";

/** Choices that stand in a line of text: words side by side, the chosen one underlined; and a choice by its list. */
export const chooseStyles = css`
  ${radioWords(".choices fieldset")}
  .choices {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 1.6rem;
  }
  .choices fieldset {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 0.9rem;
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .choices legend {
    float: left;
    padding: 0;
    color: var(--grey);
  }
  .steps {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 0.9rem;
  }
  .steps button {
    white-space: nowrap;
  }
  .which {
    margin-bottom: 0.9rem;
  }
  .which label {
    display: flex;
    align-items: center;
    min-width: 0;
    max-width: 100%;
  }
  .which select {
    flex: 0 1 auto;
    min-width: 0;
  }
  @media (pointer: coarse) {
    .choices fieldset span {
      display: inline-flex;
      align-items: center;
      min-height: 44px;
    }
  }
  @media print {
    .choices {
      display: none;
    }
  }
`;

export interface Choice<T extends string> {
  value: T;
  text: string;
}

/** One of a few, each a word. */
export function oneOf<T extends string>(
  name: string,
  legend: string,
  choices: readonly Choice<T>[],
  chosen: T,
  choose: (value: T) => void,
): TemplateResult {
  return html`<fieldset>
    <legend>${legend}</legend>
    ${choices.map(
      ({ value, text }) => html`<label><input type="radio" name=${name} .checked=${value === chosen}
          @change=${() => choose(value)} /><span>${text}</span></label>`,
    )}
  </fieldset>`;
}

/** One of many, from a list. */
export function fromList(
  label: string,
  choices: readonly Choice<string>[],
  chosen: string,
  choose: (value: string) => void,
): TemplateResult {
  return html`<label>${label}<select @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
      ${choices.map(({ value, text }) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`)}
    </select></label>`;
}
