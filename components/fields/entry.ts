import { html, nothing } from "lit";
import { ifDefined } from "lit/directives/if-defined.js";
import { setStyle } from "../look/set-style.ts";
import { afterPress } from "./after-press.ts";
import { Field } from "./field.ts";

/**
 * A line, or a few, to write on. What it means is for whoever listens: it tells the text when it is left.
 *
 * @property text what stands on it
 * @property unit stands behind it
 * @property inputMode decimal where numbers are written
 * @property width characters it is wide
 * @property lines lines it is high
 * @property blank the answer that a blank field is: not known, no limit; none where it must be filled
 * @property choices texts offered while typing
 * @fires change `{ text }`
 */
export class Entry extends Field {
  static override properties = {
    ...Field.properties,
    text: { attribute: false },
    unit: { attribute: false },
    keys: { attribute: false },
    width: { attribute: false },
    lines: { attribute: false },
    blank: { attribute: false },
    choices: { attribute: false },
  };

  declare text: string;
  declare unit: string;
  declare keys: "decimal" | "text";
  declare width: number;
  declare lines: number;
  declare blank: string;
  declare choices: readonly string[];

  constructor() {
    super();
    this.text = "";
    this.unit = "";
    this.keys = "text";
    this.width = 28;
    this.lines = 1;
    this.blank = "";
    this.choices = [];
  }

  override commit(): void {
    const input = this.renderRoot.querySelector<HTMLInputElement | HTMLTextAreaElement>("input, textarea");
    if (input && input.value !== this.text) this.write(input.value);
  }

  protected override render() {
    // a unit typed with the figure takes the place of the field's
    const ownUnit = /\p{L}|%|°/u.test(this.text);
    return html`<div class=${this.state}>
      <label class="label" for="input">${this.label}</label>
      ${this.hintLine()}
      <div class="row">
        <span class="on-line">
          ${this.lines > 1 ? this.area() : this.line()}
          ${this.unit && !ownUnit ? html`<span class="unit" id="unit">${this.unit}</span>` : nothing}
        </span>
        ${
          this.blank
            ? html`<button type="button" class="blank" aria-pressed=${this.text === ""} @click=${this.leaveOut}>
                ${this.blank}
              </button>`
            : nothing
        }
      </div>
      ${this.below()}
    </div>`;
  }

  private get describing(): string | undefined {
    return [this.unit ? "unit" : "", this.describedBy].filter(Boolean).join(" ") || undefined;
  }

  // bound plainly: a line is set when its text changes, never because something else was drawn while somebody types
  private line() {
    return html`<input
        id="input"
        type="text"
        dir="auto"
        inputmode=${this.keys}
        autocomplete="off"
        autocapitalize=${this.keys === "decimal" ? "off" : "sentences"}
        spellcheck="false"
        list=${ifDefined(this.choices.length > 0 ? "choices" : undefined)}
        ${setStyle({ width: `${this.width + 1}ch` })}
        .value=${this.text}
        aria-invalid=${this.error ? "true" : "false"}
        aria-describedby=${ifDefined(this.describing)}
        @change=${this.changed}
      />${
        this.choices.length > 0
          ? html`<datalist id="choices">${this.choices.map((choice) => html`<option value=${choice}></option>`)}</datalist>`
          : nothing
      }`;
  }

  private area() {
    return html`<textarea
      id="input"
      dir="auto"
      rows=${Math.max(this.lines, this.text.split("\n").length)}
      cols=${this.width}
      spellcheck="false"
      .value=${this.text}
      aria-invalid=${this.error ? "true" : "false"}
      aria-describedby=${ifDefined(this.describing)}
      @change=${this.changed}
    ></textarea>`;
  }

  private readonly changed = (event: Event): void => {
    event.stopPropagation();
    afterPress(() => this.commit());
  };

  private write(text: string): void {
    this.text = text;
    this.tell({ text });
  }

  private readonly leaveOut = (): void => {
    if (this.text === "") this.renderRoot.querySelector<HTMLElement>("#input")?.focus();
    else this.write("");
  };
}

customElements.define("gwb-entry", Entry);
