import { css, html, LitElement, type nothing, type TemplateResult } from "lit";
import { walkCautions } from "../../../src/words/en/walk-cautions.ts";
import { walkWords } from "../../../src/words/en/walk-screens.ts";
import type { Walk } from "../context.ts";
import { inkStyles } from "../drawings/styles.ts";
import type { Taken } from "../keep.ts";
import type { StopKind } from "../stop-sorts.ts";
import type { Stop } from "../stops.ts";
import { walkStyles } from "../styles.ts";

/** What a panel tells that a group took; paths are the stop's where not said. */
export type TakenAtStop = Omit<Taken, "at" | "also" | "when" | "group"> &
  Partial<Pick<Taken, "at" | "also">> & {
    /** Fields set as chosen, beside what was read. */
    set?: readonly (readonly [at: string, value: unknown])[];
  };

/**
 * What a stop shows where something is to be measured or chosen.
 *
 * @property stop
 * @property walk
 * @fires taken what was read or chosen, to be kept
 * @fires pass the stop is passed over
 */
export abstract class Panel extends LitElement {
  static override properties = { stop: { attribute: false }, walk: { attribute: false } };

  declare stop: Stop;
  declare walk: Walk;

  static override styles = [
    ...walkStyles,
    inkStyles,
    css`
      .cautions {
        margin-top: 1.2rem;
        color: var(--grey);
        font-size: 0.95rem;
      }
      .cautions summary {
        display: inline-flex;
        align-items: center;
      }
      .cautions ul {
        padding-inline-start: 1.1rem;
      }
    `,
  ];

  protected take(taken: TakenAtStop): void {
    this.dispatchEvent(new CustomEvent("taken", { detail: taken, bubbles: true, composed: true }));
  }

  protected pass(): TemplateResult {
    return html`<button
      class="plain"
      @click=${() => this.dispatchEvent(new CustomEvent("pass", { bubbles: true, composed: true }))}
    >${walkWords.skip}</button>`;
  }

  /** The part's cautions, closed: they were read when the part began. */
  protected cautionLine(): TemplateResult | typeof nothing {
    return html`<details class="cautions">
      <summary class="plain">${walkWords.cautions}</summary>
      <ul>
        ${(walkCautions[this.stop.part] ?? []).map((caution) => html`<li>${caution}</li>`)}
      </ul>
    </details>`;
  }
}

type Show = (stop: Stop, walk: Walk) => TemplateResult;

const measure: Show = (stop, walk) => html`<gwb-walk-measure .stop=${stop} .walk=${walk}></gwb-walk-measure>`;

const chosen: Show = (stop, walk) => html`<gwb-walk-choice .stop=${stop} .walk=${walk}></gwb-walk-choice>`;

const own: Partial<Record<StopKind, Show>> = {
  mulch: chosen,
  "roof-material": chosen,
  downpipe: chosen,
  "roof-share": chosen,
  "tank-use": (stop, walk) => html`<gwb-walk-tank-use .stop=${stop} .walk=${walk}></gwb-walk-tank-use>`,
  habit: (stop, walk) => html`<gwb-walk-habit .stop=${stop} .walk=${walk}></gwb-walk-habit>`,
  heads: (stop, walk) => html`<gwb-walk-heads .stop=${stop} .walk=${walk}></gwb-walk-heads>`,
  thirst: (stop, walk) => html`<gwb-walk-thirst .stop=${stop} .walk=${walk}></gwb-walk-thirst>`,
};

/** The panel of a stop. */
export function panelOf(stop: Stop, walk: Walk): TemplateResult {
  return (own[stop.kind] ?? measure)(stop, walk);
}
