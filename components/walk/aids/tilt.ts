import { css, html, LitElement, nothing } from "lit";
import { skylineWords } from "../../../src/words/en/walk-panels.ts";
import { base, pressable } from "../../look/base.ts";

/** Some phones ask their owner before they tell how they are held. */
type Asks = typeof DeviceOrientationEvent & { requestPermission?: () => Promise<"granted" | "denied"> };

/** Elevation of the phone's long edge over the level, from its turn about its short edge. */
export function edgeElevation_deg(beta_deg: number): number {
  return (Math.asin(Math.sin((beta_deg * Math.PI) / 180)) * 180) / Math.PI;
}

/**
 * The phone's tilt, where it has one and lets the page know. Where not, it says what to do instead.
 *
 * @fires tilt `{ text }` whole degrees to write down
 */
export class WalkTilt extends LitElement {
  static override properties = { state: { state: true }, angle: { state: true } };

  declare state: "idle" | "on" | "denied" | "absent";
  declare angle: number | null;

  private waiting = 0;

  static override styles = [
    base,
    pressable,
    css`
      :host {
        display: block;
        margin-top: 0.8rem;
      }
      .press {
        min-height: 52px;
      }
      .now {
        font-size: 1.9rem;
        font-weight: 340;
      }
    `,
  ];

  constructor() {
    super();
    this.state = typeof DeviceOrientationEvent === "undefined" || !isSecureContext ? "absent" : "idle";
    this.angle = null;
  }

  override disconnectedCallback(): void {
    removeEventListener("deviceorientation", this.hear);
    clearTimeout(this.waiting);
    super.disconnectedCallback();
  }

  protected override render() {
    const { tilt } = skylineWords;
    if (this.state === "absent" || this.state === "denied") return html`<p>${tilt[this.state]}</p>`;
    if (this.state === "idle")
      return html`<button class="press" @click=${this.ask}>${tilt.start}</button>
        <p class="quiet">${tilt.why}</p>`;
    const angle = this.angle === null ? null : Math.max(0, Math.round(this.angle));
    return angle === null
      ? nothing
      : html`<p class="now" aria-live="off">${tilt.now(`${angle}°`)}</p>
          <button class="press" @click=${() => this.use(angle)}>${tilt.use(`${angle}°`)}</button>`;
  }

  private readonly ask = async (): Promise<void> => {
    const asks = DeviceOrientationEvent as Asks;
    const allowed = asks.requestPermission ? await asks.requestPermission().catch(() => "denied") : "granted";
    this.state = allowed === "granted" ? "on" : "denied";
    if (this.state === "denied") return;
    addEventListener("deviceorientation", this.hear);
    // machines without a sensor say nothing, or nothing but blanks
    this.waiting = window.setTimeout(() => {
      if (this.angle === null) this.state = "absent";
    }, 1500);
  };

  private readonly hear = ({ beta }: DeviceOrientationEvent): void => {
    if (beta !== null) this.angle = edgeElevation_deg(beta);
  };

  private use(angle: number): void {
    this.dispatchEvent(new CustomEvent("tilt", { detail: { text: String(angle) } }));
  }
}

customElements.define("gwb-walk-tilt", WalkTilt);
