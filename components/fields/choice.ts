import { html, nothing } from "lit";
import { ifDefined } from "lit/directives/if-defined.js";
import { live } from "lit/directives/live.js";
import { Field } from "./field.ts";
import { lineStyles } from "./styles.ts";

/** An answer to choose. */
export interface Option {
  /** Undefined: the field is left out. */
  value: string | boolean | undefined;
  words: string;
  /** One line on what it means. */
  about?: string;
}

/** More answers than these are a list to open. */
const mostLines = 7;

/**
 * One of several answers, as lines of a notebook; many of them as a list to open.
 *
 * @property options the answers, leaving it out among them where it may be
 * @property value the one chosen; one that is no answer is marked on none
 * @property isShort whether the answers stand side by side
 * @property isOpen whether many answers stand as lines all the same
 * @fires change `{ value }`
 */
export class ChoiceField extends Field {
  static override properties = {
    ...Field.properties,
    options: { attribute: false },
    value: { attribute: false },
    isShort: { attribute: false },
    isOpen: { attribute: false },
  };

  declare options: readonly Option[];
  declare value: unknown;
  declare isShort: boolean;
  declare isOpen: boolean;

  static override styles = [...Field.styles, lineStyles];

  constructor() {
    super();
    this.options = [];
    this.value = undefined;
    this.isShort = false;
    this.isOpen = false;
  }

  protected override render() {
    return this.options.length > mostLines && !this.isOpen ? this.list() : this.asLines();
  }

  private asLines() {
    const look = this.isShort ? "side" : `lines${this.options.length > mostLines ? " many" : ""}`;
    return html`<fieldset class=${this.state} aria-describedby=${ifDefined(this.describedBy || undefined)}>
      <legend class="label">${this.label}</legend>
      ${this.hintLine()}
      <div class=${look}>
        ${this.options.map(
          ({ value, words, about }, at) => html`<label class="line">
            <input
              type="radio"
              name="answer"
              aria-label=${words}
              aria-describedby=${ifDefined(about ? `about-${at}` : undefined)}
              .checked=${live(value === this.value)}
              @change=${(event: Event) => this.choose(event, value)}
            />
            <span class="mark"></span>
            <span class="words"><strong><bdi>${words}</bdi></strong>${
              about ? html`<span class="about" id="about-${at}">${about}</span>` : nothing
            }</span>
          </label>`,
        )}
      </div>
      ${this.below()}
    </fieldset>`;
  }

  private list() {
    const at = this.options.findIndex(({ value }) => value === this.value);
    const about = this.options[at]?.about;
    return html`<div class=${this.state}>
      <label class="label" for="input">${this.label}</label>
      ${this.hintLine()}
      <div class="row">
        <select
          id="input"
          aria-describedby=${ifDefined([about ? "about" : "", this.describedBy].filter(Boolean).join(" ") || undefined)}
          @change=${(event: Event) =>
            this.choose(event, this.options[Number((event.target as HTMLSelectElement).value)]?.value)}
        >
          ${at === -1 ? html`<option value="-1" selected></option>` : nothing}
          ${this.options.map(
            ({ words }, place) =>
              html`<option value=${place} .selected=${live(place === at)}>${words}</option>`,
          )}
        </select>
      </div>
      ${about ? html`<p class="hint" id="about">${about}</p>` : nothing}
      ${this.below()}
    </div>`;
  }

  private choose(event: Event, value: Option["value"]): void {
    event.stopPropagation();
    this.value = value;
    this.tell({ value });
  }
}

customElements.define("gwb-choice", ChoiceField);
