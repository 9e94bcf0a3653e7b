import { css, html, LitElement, nothing } from "lit";
import { tallyWords } from "../../../src/words/en/walk-aids.ts";
import { base, pressable } from "../../look/base.ts";
import { tallyOf } from "../drawings/tally.ts";

/**
 * Counting with the thumb: a large key for each thing counted.
 *
 * @property names what is counted
 * @property counts so many of each
 * @property says the count in words
 * @fires count `{ counts }`
 */
export class WalkTally extends LitElement {
  static override properties = {
    names: { attribute: false },
    counts: { attribute: false },
    says: { attribute: false },
    past: { state: true },
  };

  declare names: readonly string[];
  declare counts: readonly number[];
  declare says: string;
  declare past: readonly number[];

  static override styles = [
    base,
    pressable,
    css`
      :host {
        display: block;
        margin-top: 1rem;
      }
      .keys {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(8rem, 1fr));
        gap: 0.6rem;
      }
      .key {
        display: grid;
        gap: 0.25rem;
        justify-items: center;
        min-height: 92px;
        padding: 0.7rem;
        border: 1.5px solid var(--ink);
        border-radius: 2px;
        background: none;
        font-size: 1.12rem;
        touch-action: manipulation;
      }
      .key:active {
        background: color-mix(in srgb, var(--ink) 14%, transparent);
      }
      .key b {
        font-size: 1.7rem;
        font-weight: 400;
        line-height: 1;
      }
      .ink {
        stroke: var(--ink);
        stroke-width: 1.6;
        stroke-linecap: round;
      }
      .row {
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: 1rem;
        min-height: 48px;
      }
    `,
  ];

  constructor() {
    super();
    this.names = [];
    this.counts = [];
    this.says = "";
    this.past = [];
  }

  protected override render() {
    return html`<div class="keys">
        ${this.names.map(
          (name, i) => html`<button class="key" @click=${() => this.add(i)}>
            <span>${name}</span>
            <b>${this.counts[i] ?? 0}</b>
            ${tallyOf(this.counts[i] ?? 0, Math.min(24, this.counts[i] ?? 0))}
          </button>`,
        )}
      </div>
      <div class="row">
        <span role="status">${this.says}</span>
        ${this.past.length > 0 ? html`<button class="plain" @click=${this.undo}>${tallyWords.undo}</button>` : nothing}
      </div>`;
  }

  private add(which: number): void {
    this.past = [...this.past, which];
    this.tell(this.names.map((_, i) => (this.counts[i] ?? 0) + (i === which ? 1 : 0)));
  }

  private readonly undo = (): void => {
    const last = this.past.at(-1);
    this.past = this.past.slice(0, -1);
    this.tell(this.names.map((_, i) => Math.max(0, (this.counts[i] ?? 0) - (i === last ? 1 : 0))));
  };

  private tell(counts: number[]): void {
    this.dispatchEvent(new CustomEvent("count", { detail: { counts } }));
  }
}

customElements.define("gwb-walk-tally", WalkTally);
