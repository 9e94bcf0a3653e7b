import { css, html } from "lit";
import { live } from "lit/directives/live.js";
import { type Thirst, thirsts } from "../../src/survey/words.ts";
import { gardenEntry, thirstEntry } from "../../src/words/en/first.ts";
import { Field } from "../fields/field.ts";
import { pictures } from "./pictures.ts";

/**
 * How thirsty the plants are, by what such plants look like.
 *
 * @property value the class chosen
 * @property grass whether it is mown grass for the most part
 * @fires change `{ thirst, grass }`
 */
export class ThirstField extends Field {
  static override properties = {
    ...Field.properties,
    value: { attribute: false },
    grass: { attribute: false },
  };

  declare value: Thirst | undefined;
  declare grass: boolean;

  static override styles = [
    ...Field.styles,
    css`
      .four {
        display: grid;
        grid-template-columns: repeat(4, minmax(0, 1fr));
        gap: 0 1.2rem;
        margin-top: 0.5rem;
      }
      .four label {
        position: relative;
        display: block;
        padding-bottom: 0.5rem;
        border-bottom: 2px dotted var(--ink);
        cursor: pointer;
      }
      .four label:has(:checked) {
        border-bottom: 4px solid var(--ink);
        padding-bottom: calc(0.5rem - 2px);
      }
      .four label:has(:focus-visible) {
        outline: 3px solid var(--tank);
        outline-offset: 3px;
      }
      .four input {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
        margin: 0;
        opacity: 0;
        cursor: pointer;
      }
      svg {
        display: block;
        width: 100%;
        max-height: 6.4rem;
      }
      path {
        fill: var(--paper);
        stroke: var(--grey);
        stroke-width: 0.9;
        stroke-linejoin: round;
      }
      .ground {
        stroke: var(--ink);
      }
      label:has(:checked) path,
      label:hover path {
        stroke: var(--ink);
        stroke-width: 1.15;
      }
      strong {
        display: block;
        margin-top: 0.3rem;
        font-weight: 400;
      }
      label:has(:checked) strong {
        font-weight: 650;
      }
      .about {
        display: block;
        color: var(--grey);
        font-size: 0.88rem;
        line-height: 1.3;
      }
      .grass {
        display: inline-flex;
        align-items: center;
        gap: 0.5rem;
        min-height: 2rem;
        margin-top: 0.5rem;
        font-size: 0.95rem;
      }
      .grass input {
        width: 1.05rem;
        height: 1.05rem;
        margin: 0;
        accent-color: var(--ink);
      }
      @media (max-width: 40rem) {
        .four {
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: 0.9rem 1.1rem;
        }
      }
      @media (pointer: coarse) {
        .grass {
          min-height: 44px;
        }
      }
      @media print {
        path {
          stroke: #000;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.grass = false;
    this.label = thirstEntry.label;
    this.hint = thirstEntry.hint;
  }

  protected override render() {
    return html`<fieldset aria-describedby="hint">
      <legend class="label">${this.label}</legend>
      ${this.hintLine()}
      <div class="four">
        ${thirsts.map((thirst) => {
          const { words, about } = thirstEntry.classes[thirst];
          return html`<label>
            <input
              type="radio"
              name="thirst"
              aria-label=${words}
              aria-describedby="about-${thirst}"
              .checked=${live(this.value === thirst)}
              @change=${(event: Event) => this.change(event, { value: thirst })}
            />
            ${pictures[thirst]()}
            <strong>${words}</strong><span class="about" id="about-${thirst}">${about}</span>
          </label>`;
        })}
      </div>
      <label class="grass">
        <input
          type="checkbox"
          .checked=${live(this.grass)}
          @change=${(event: Event) => this.change(event, { grass: (event.target as HTMLInputElement).checked })}
        />
        ${gardenEntry.grass}
      </label>
    </fieldset>`;
  }

  private change(
    event: Event,
    { value = this.value, grass = this.grass }: { value?: Thirst | undefined; grass?: boolean },
  ) {
    event.stopPropagation();
    this.value = value;
    this.grass = grass;
    this.tell({ thirst: value, grass });
  }
}

customElements.define("gwb-thirst-field", ThirstField);
