import { css, html, LitElement, nothing } from "lit";
import { clockWords } from "../../../src/words/en/walk-aids.ts";
import { base, pressable } from "../../look/base.ts";
import type { Walk } from "../context.ts";
import type { Watch } from "../draft.ts";
import { clockText, elapsed_ms, halted, secondsText, started, stopped } from "../watch.ts";

/**
 * A stopwatch, or a timer of so many seconds. It counts by the clock on the wall: a screen that sleeps, or a page
 * that is opened anew, loses nothing.
 *
 * @property walk
 * @property stop the stop's key, whose watch it is
 * @property for_s length of a timer; 0 for a stopwatch
 * @property label what it times
 * @fires read `{ text }` the seconds to write down
 */
export class WalkClock extends LitElement {
  static override properties = {
    walk: { attribute: false },
    stop: { attribute: false },
    for_s: { attribute: false },
    label: { attribute: false },
    now_ms: { state: true },
  };

  declare walk: Walk;
  declare stop: string;
  declare for_s: number;
  declare label: string;
  declare now_ms: number;

  private ticking = 0;

  static override styles = [
    base,
    pressable,
    css`
      :host {
        display: block;
        margin-top: 1rem;
        padding: 0.7rem 0 0.8rem;
        border-block: 1px solid var(--hair);
      }
      .time {
        font-size: 3.1rem;
        font-weight: 340;
        line-height: 1.1;
        font-variant-numeric: tabular-nums;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0.4rem 1rem;
        margin-top: 0.5rem;
      }
      .go {
        min-width: 8.5rem;
        min-height: 60px;
        justify-content: center;
        font-size: 1.2rem;
        font-weight: 600;
      }
      .press {
        min-height: 52px;
      }
      .go.on {
        background: var(--ink);
        color: var(--on-ink);
      }
      .quiet {
        font-size: 0.95rem;
      }
    `,
  ];

  constructor() {
    super();
    this.for_s = 0;
    this.label = clockWords.title;
    this.now_ms = Date.now();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener("visibilitychange", this.tick);
    this.tick();
  }

  override disconnectedCallback(): void {
    cancelAnimationFrame(this.ticking);
    document.removeEventListener("visibilitychange", this.tick);
    super.disconnectedCallback();
  }

  private get watch(): Watch {
    return this.walk?.atStop(this.stop).watch ?? stopped;
  }

  private set watch(watch: Watch) {
    this.walk.keepStop(this.stop, { watch });
    this.tick();
  }

  /** Shows the time; the frames only draw, they do not count. */
  private readonly tick = (): void => {
    cancelAnimationFrame(this.ticking);
    this.now_ms = Date.now();
    if (this.watch.started_ms !== null && !document.hidden) this.ticking = requestAnimationFrame(this.tick);
  };

  protected override render() {
    const { watch } = this;
    const isOn = watch.started_ms !== null;
    const passed = elapsed_ms(watch, this.now_ms);
    const left = this.for_s * 1000 - passed;
    const text = this.for_s > 0 ? clockText(Math.max(0, left)) : clockText(passed);
    return html`<div role="group" aria-label=${this.label}>
      <p class="time" role="timer" aria-live="off">${text}</p>
      <div class="row">
        <button class="press go ${isOn ? "on" : ""}" @click=${() => this.toggle(isOn)}>
          ${isOn ? clockWords.stop : clockWords.start}
        </button>
        ${
          !isOn && passed > 0 && this.for_s === 0
            ? html`<button class="press" @click=${() => this.use(passed)}>${clockWords.use(secondsText(passed))}</button>`
            : nothing
        }
        ${
          !isOn && passed > 0
            ? html`<button
                class="plain"
                @click=${() => {
                  this.watch = stopped;
                }}
              >${clockWords.again}</button>`
            : nothing
        }
      </div>
      <p class="quiet" role="status">${
        this.for_s > 0 && passed > 0 && left <= 0 ? clockWords.over : isOn ? clockWords.running : ""
      }</p>
    </div>`;
  }

  private toggle(isOn: boolean): void {
    const now = Date.now();
    this.watch = isOn ? halted(this.watch, now) : started(this.watch, now);
  }

  private use(passed_ms: number): void {
    this.dispatchEvent(new CustomEvent("read", { detail: { text: secondsText(passed_ms) } }));
    this.watch = stopped;
  }
}

customElements.define("gwb-walk-clock", WalkClock);
