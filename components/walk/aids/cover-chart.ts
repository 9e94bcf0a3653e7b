import { css, html, LitElement, nothing, svg } from "lit";
import { randomStream } from "../../../src/engine/weather/rng.ts";
import {
  type CoverPicture,
  chartSteps,
  coverPicture,
  leafPath,
} from "../../../src/survey/measuring/cover-chart.ts";
import { coverAidWords } from "../../../src/words/en/walk-aids.ts";
import { base, pressable } from "../../look/base.ts";

const side = 100;

/** The pictures, the same on every machine. */
const pictures: readonly CoverPicture[] = chartSteps.map((cover, i) =>
  coverPicture(cover, randomStream(7, i)),
);

export function coverDrawing({ shows, shapes }: CoverPicture) {
  const leaves = shapes.map((leaf) => leafPath(leaf, side)).join("");
  return svg`<svg viewBox="0 0 ${side} ${side}" aria-hidden="true">
    <rect class=${shows === "leaves" ? "bare" : "leaves"} width=${side} height=${side} />
    <path class=${shows === "leaves" ? "leaves" : "bare"} d=${leaves} />
  </svg>`;
}

/**
 * Ten drawn pictures, each with exactly the cover that it says. The nearest one is pressed, at several spots.
 *
 * @property chosen shares chosen so far, as text
 * @property stands what is compared
 * @fires choose `{ chosen }`
 */
export class CoverChart extends LitElement {
  static override properties = { chosen: { attribute: false }, stands: { attribute: false } };

  declare chosen: readonly string[];
  declare stands: string;

  static override styles = [
    base,
    pressable,
    css`
      :host {
        display: block;
        margin-top: 0.8rem;
      }
      .chart {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(8.6rem, 1fr));
        gap: 0.7rem;
        margin-top: 0.6rem;
      }
      .chart button {
        padding: 0;
        border: 1.5px solid var(--ink);
        border-radius: 0;
        background: none;
        text-align: start;
      }
      .chart svg {
        display: block;
        width: 100%;
        height: auto;
      }
      .chart span {
        display: block;
        padding: 0.3rem 0.5rem;
        border-top: 1px solid var(--ink);
        font-weight: 600;
      }
      .chart [aria-pressed="true"] {
        outline: 4px solid var(--ink);
      }
      /* dark on light by night too: cover is judged by what is dark */
      .leaves {
        fill: #22302f;
      }
      .bare {
        fill: #f7f3ea;
      }
      .spots {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0.4rem 1rem;
        min-height: 48px;
        margin-top: 0.6rem;
      }
    `,
  ];

  constructor() {
    super();
    this.chosen = [];
    this.stands = "";
  }

  protected override render() {
    return html`<p>${this.stands}</p>
      <div class="chart">
        ${pictures.map(
          (picture) => html`<button
            aria-label=${coverAidWords.picture(picture.cover)}
            aria-pressed=${this.chosen.at(-1) === this.textOf(picture)}
            @click=${() => this.tell([...this.chosen, this.textOf(picture)])}
          >${coverDrawing(picture)}<span>${coverAidWords.percent(picture.cover)}</span></button>`,
        )}
      </div>
      <div class="spots" role="status">
        <span>${coverAidWords.spots(this.chosen)}</span>
        ${
          this.chosen.length > 0
            ? html`<button class="plain" @click=${() => this.tell(this.chosen.slice(0, -1))}>${coverAidWords.undo}</button>`
            : nothing
        }
      </div>`;
  }

  private textOf({ cover }: CoverPicture): string {
    return coverAidWords.percent(cover);
  }

  private tell(chosen: readonly string[]): void {
    this.dispatchEvent(new CustomEvent("choose", { detail: { chosen } }));
  }
}

customElements.define("gwb-cover-chart", CoverChart);
