import { css, html, nothing } from "lit";
import { ifDefined } from "lit/directives/if-defined.js";
import { live } from "lit/directives/live.js";
import { fieldWords } from "../../src/words/en/editor.ts";
import { setStyle } from "../look/set-style.ts";
import { Field } from "./field.ts";
import { lineStyles } from "./styles.ts";

export interface Tick {
  value: string | number;
  words: string;
  /** Short words for a strip: Mo, Jan. */
  short?: string;
  about?: string;
}

/** Fewer than these need no press that ticks them all. */
const fewest = 4;

/**
 * Any of several, as lines to tick or, with short words, as a ruled strip: the days of a week, the months of a year.
 *
 * @property options what may be ticked, in order
 * @property values what is ticked; undefined where it is left out
 * @property blank the answer that leaving it out is; none where it must be said
 * @property isStrip whether they stand side by side
 * @fires change `{ values }`
 */
export class TicksField extends Field {
  static override properties = {
    ...Field.properties,
    options: { attribute: false },
    values: { attribute: false },
    blank: { attribute: false },
    isStrip: { attribute: false },
  };

  declare options: readonly Tick[];
  declare values: readonly unknown[] | undefined;
  declare blank: string;
  declare isStrip: boolean;

  static override styles = [
    ...Field.styles,
    lineStyles,
    css`
      .strip {
        display: grid;
        grid-template-columns: repeat(var(--across), minmax(0, 1fr));
        max-width: calc(var(--across) * 3.6rem);
        margin-top: 0.5rem;
        border: 1px solid var(--ink);
        border-width: 1px 0 0 1px;
      }
      .box {
        position: relative;
        display: grid;
        place-items: center;
        min-height: 2.5rem;
        border: 1px solid var(--ink);
        border-width: 0 1px 1px 0;
        color: var(--grey);
        font-size: 0.95rem;
        cursor: pointer;
      }
      .box:has(:checked) {
        background: var(--ink);
        color: var(--on-ink);
        font-weight: 650;
      }
      .box input {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
        margin: 0;
        opacity: 0;
        cursor: pointer;
      }
      .box:has(:focus-visible) {
        z-index: 1;
        outline: 3px solid var(--tank);
        outline-offset: 2px;
      }
      .assumed .strip {
        border-style: dotted;
      }
      .assumed .box {
        border-style: dotted;
      }
      @media (max-width: 40rem) {
        .strip.twelve {
          --across: 6 !important;
        }
      }
      @media (pointer: coarse) {
        .box {
          min-height: 44px;
        }
      }
      @media (forced-colors: active) {
        .box:has(:checked) {
          outline: 3px solid CanvasText;
          outline-offset: -4px;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.options = [];
    this.values = undefined;
    this.blank = "";
    this.isStrip = false;
  }

  protected override render() {
    return html`<fieldset class=${this.state} aria-describedby=${ifDefined(this.describedBy || undefined)}>
      <legend class="label">${this.label}</legend>
      ${this.hintLine()}
      ${this.options.length === 0 ? html`<p class="hint">${fieldWords.nothingToTick}</p>` : nothing}
      ${this.isStrip ? this.strip() : this.asLines()}
      <div class="row">${this.shortcuts()}</div>
      ${this.below()}
    </fieldset>`;
  }

  private strip() {
    const across = this.options.length;
    return html`<div class="strip ${across === 12 ? "twelve" : ""}" ${setStyle({ "--across": String(across) })}>
      ${this.options.map(
        (tick) => html`<label class="box">
          ${this.box(tick)}
          <span aria-hidden="true">${tick.short ?? tick.words}</span>
        </label>`,
      )}
    </div>`;
  }

  private asLines() {
    return html`<div class="lines ticks ${this.options.length > 8 ? "many" : ""}">
      ${this.options.map(
        (tick) => html`<label class="line">
          ${this.box(tick)}
          <span class="mark"></span>
          <span class="words"><strong><bdi>${tick.words}</bdi></strong>${
            tick.about ? html`<span class="about">${tick.about}</span>` : nothing
          }</span>
        </label>`,
      )}
    </div>`;
  }

  private box({ value, words }: Tick) {
    return html`<input
      type="checkbox"
      aria-label=${words}
      .checked=${live(this.values?.includes(value) ?? false)}
      @change=${(event: Event) => this.toggle(event, value)}
    />`;
  }

  private shortcuts() {
    const { options, values, blank } = this;
    const all = options.map(({ value }) => value);
    const isAll = all.length > 0 && all.every((value) => values?.includes(value));
    return html`${
      options.length >= fewest && !isAll
        ? html`<button type="button" class="blank" @click=${() => this.put(all)}>${fieldWords.all}</button>`
        : nothing
    }${
      options.length >= fewest && (values?.length ?? 0) > 0
        ? html`<button type="button" class="blank" @click=${() => this.put([])}>${fieldWords.none}</button>`
        : nothing
    }${
      blank
        ? html`<button
            type="button"
            class="blank"
            aria-pressed=${values === undefined}
            @click=${() => this.put(undefined)}
          >
            ${blank}
          </button>`
        : nothing
    }`;
  }

  private toggle(event: Event, value: unknown): void {
    event.stopPropagation();
    const isTicked = (event.target as HTMLInputElement).checked;
    const order = this.options.map((one) => one.value as unknown);
    const left = (this.values ?? []).filter((one) => one !== value);
    const values = isTicked ? [...left, value] : left;
    // in the order shown, behind them what is not shown
    this.put(values.sort((a, b) => place(order, a) - place(order, b)));
  }

  private put(values: readonly unknown[] | undefined): void {
    this.values = values;
    this.tell({ values });
  }
}

function place(order: readonly unknown[], value: unknown): number {
  const at = order.indexOf(value);
  return at === -1 ? order.length : at;
}

customElements.define("gwb-ticks", TicksField);
