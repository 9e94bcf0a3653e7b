import { css, html, nothing, svg } from "lit";
import { ifDefined } from "lit/directives/if-defined.js";
import { afterPress } from "./after-press.ts";
import { Field } from "./field.ts";

/**
 * Twelve figures, one a month, with their bars above them.
 *
 * @property texts what stands in each month
 * @property heights the bars, 0–1 of the height there is; none where a month has no figure
 * @property names the months in full and short
 * @property blank the answer that leaving them all out is; none where they must be said
 * @property isOut whether they are left out
 * @property marked months with something wrong, 0 to 11
 * @fires change `{ month, text }`, or `{ texts: null }` where they are left out
 */
export class TwelveField extends Field {
  static override properties = {
    ...Field.properties,
    texts: { attribute: false },
    heights: { attribute: false },
    names: { attribute: false },
    unit: { attribute: false },
    blank: { attribute: false },
    isOut: { attribute: false },
    marked: { attribute: false },
  };

  declare texts: readonly string[];
  declare heights: readonly (number | null)[];
  declare names: readonly { long: string; short: string }[];
  declare unit: string;
  declare blank: string;
  declare isOut: boolean;
  declare marked: readonly number[];

  static override styles = [
    ...Field.styles,
    css`
      .months {
        display: grid;
        grid-template-columns: repeat(12, minmax(0, 1fr));
        gap: 0.3rem 0.45rem;
        max-width: 43rem;
        margin-top: 0.4rem;
      }
      .month {
        min-width: 0;
        text-align: center;
      }
      .month label {
        display: block;
        color: var(--grey);
        font-size: 0.85rem;
        line-height: 1.3;
      }
      svg {
        display: block;
        width: 100%;
        height: 3.6rem;
        overflow: visible;
      }
      .floor {
        stroke: var(--ink);
        stroke-width: 1;
        vector-effect: non-scaling-stroke;
      }
      .bar {
        fill: var(--ink);
        fill-opacity: 0.72;
      }
      .month input[type="text"] {
        width: 100%;
        padding-inline: 0;
        font-size: 1rem;
        text-align: center;
      }
      .month.marked input[type="text"] {
        border-bottom: 5px double var(--ink);
      }
      .assumed .bar {
        fill-opacity: 0.25;
      }
      @media (max-width: 40rem) {
        .months {
          grid-template-columns: repeat(6, minmax(0, 1fr));
          row-gap: 0.8rem;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.texts = [];
    this.heights = [];
    this.names = [];
    this.unit = "";
    this.blank = "";
    this.isOut = false;
    this.marked = [];
  }

  override commit(): void {
    for (const [month, input] of [...this.renderRoot.querySelectorAll("input")].entries())
      if (input.value !== (this.texts[month] ?? "")) this.write(month, input.value);
  }

  protected override render() {
    return html`<fieldset class=${this.state} aria-describedby=${ifDefined(this.describedBy || undefined)}>
      <legend class="label">${this.label}${
        this.unit ? html` <span class="unit">${this.unit}</span>` : nothing
      }</legend>
      ${this.hintLine()}
      <div class="months">${this.names.map((name, month) => this.month(name, month))}</div>
      ${
        this.blank
          ? html`<div class="row">
              <button type="button" class="blank" aria-pressed=${this.isOut} @click=${this.leaveOut}>
                ${this.blank}
              </button>
            </div>`
          : nothing
      }
      ${this.below()}
    </fieldset>`;
  }

  private month({ long, short }: { long: string; short: string }, month: number) {
    const height = this.heights[month] ?? null;
    const isMarked = this.marked.includes(month);
    return html`<div class="month ${isMarked ? "marked" : ""}">
      <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        ${height === null ? nothing : svg`<rect class="bar" x="12" width="76" y=${100 - 100 * height} height=${100 * height} />`}
        <line class="floor" x1="0" x2="100" y1="100" y2="100" />
      </svg>
      <label for="month-${month}"><span aria-hidden="true">${short}</span><span class="unseen">${long}</span></label>
      <input
        id="month-${month}"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        .value=${this.texts[month] ?? ""}
        aria-invalid=${isMarked ? "true" : "false"}
        aria-describedby=${ifDefined(isMarked ? "error" : undefined)}
        @change=${(event: Event) => {
          event.stopPropagation();
          afterPress(() => this.commit());
        }}
      />
    </div>`;
  }

  private write(month: number, text: string): void {
    this.texts = Array.from({ length: 12 }, (_, at) => (at === month ? text : (this.texts[at] ?? "")));
    this.tell({ month, text });
  }

  private readonly leaveOut = (): void => {
    this.tell({ texts: null });
  };
}

customElements.define("gwb-twelve", TwelveField);
