import { css, html, LitElement } from "lit";
import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import { traceWords } from "../../../src/words/en/walk-trace.ts";
import { base, pressable } from "../../look/base.ts";
import type { Walk } from "../context.ts";
import type { Stop } from "../stops.ts";
import { inPixels, type Traced } from "./state.ts";
import "./trace.ts";

/**
 * Two steps on a plan: a length that is known, then the shape. The known length and the picture stay for the next bed.
 *
 * @property walk
 * @property stop
 * @property corners what is traced of this shape
 * @property metresPerPixel the plan's scale; null until the known length is written
 * @fires trace `{ traced }`
 */
export class PlanPanel extends LitElement {
  static override properties = {
    walk: { attribute: false },
    stop: { attribute: false },
    corners: { attribute: false },
    metresPerPixel: { attribute: false },
    setting: { state: true },
  };

  declare walk: Walk;
  declare stop: Stop;
  declare corners: readonly Corner[];
  declare metresPerPixel: number | null;
  declare setting: "known" | "corners" | null;

  static override styles = [
    base,
    pressable,
    css`
      .steps {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem;
        margin-top: 1rem;
      }
      .press {
        min-height: 48px;
      }
      .press[aria-pressed="true"] {
        background: var(--ink);
        color: var(--on-ink);
      }
    `,
  ];

  constructor() {
    super();
    this.corners = [];
    this.metresPerPixel = null;
    this.setting = null;
  }

  private get key(): string {
    return `${this.walk.site}/plan`;
  }

  /** Both ends of the known length on this site's plan. */
  private get known(): Corner[] {
    const text = this.walk.store.read(`${this.key}/known`);
    return text ? (JSON.parse(text) as Corner[]) : [];
  }

  protected override render() {
    const known = this.known;
    const setting = this.setting ?? (known.length < 2 ? "known" : "corners");
    const step = (one: "known" | "corners", words: string) => html`<button
      class="press"
      aria-pressed=${setting === one}
      @click=${() => {
        this.setting = one;
      }}
    >${words}</button>`;
    return html`<div class="steps">
        ${step("known", traceWords.stepKnown)} ${step("corners", traceWords.stepCorners)}
      </div>
      <gwb-walk-trace
        .store=${this.walk.store}
        .picture=${this.key}
        .setting=${setting}
        .traced=${this.traced(known)}
        .outlines=${this.outlines()}
        @trace=${this.take}
      ></gwb-walk-trace>`;
  }

  /** Shapes traced before on this plan, to snap to. */
  private outlines(): Corner[][] {
    const { survey, store } = this.walk;
    const { list, id } = this.stop;
    const height_px = Number(store.read(`${this.key}/height`) ?? 0);
    const scale = this.metresPerPixel;
    if (scale === null || height_px === 0) return [];
    const beside = { beds: survey.beds, roofs: survey.roofs };
    return (["beds", "roofs"] as const).flatMap((kind) =>
      beside[kind]
        .filter((one) => one.outline_m && !(kind === list && one.id === id))
        .map(({ outline_m }) => inPixels(outline_m!, scale, height_px)),
    );
  }

  private last: { key: string; traced: Traced } | null = null;

  /** The same object while nothing changed, so that the board keeps its steps back. */
  private traced(known: Corner[]): Traced {
    const traced = { known, corners: [...this.corners] };
    const key = JSON.stringify(traced);
    if (this.last?.key !== key) this.last = { key, traced };
    return this.last.traced;
  }

  private readonly take = (event: CustomEvent<{ traced: Traced; height_px: number }>): void => {
    event.stopPropagation();
    const { traced, height_px } = event.detail;
    this.walk.store.write(`${this.key}/known`, JSON.stringify(traced.known));
    this.walk.store.write(`${this.key}/height`, String(height_px));
    const rounded = {
      known: traced.known,
      corners: traced.corners.map(([x, y]): Corner => [Math.round(x * 10) / 10, Math.round(y * 10) / 10]),
    };
    this.last = { key: JSON.stringify(rounded), traced };
    // the walk brings the new corners; an update before would bring the old ones
    this.dispatchEvent(new CustomEvent("trace", { detail: { traced } }));
  };
}

customElements.define("gwb-plan-panel", PlanPanel);
