import { html, LitElement, nothing, type PropertyValues } from "lit";
import { page } from "../../src/words/en/page.ts";
import { plate } from "../../src/words/en/plates.ts";
import { base, pressable } from "../look/base.ts";
import type { Chart, Drawn } from "./chart.ts";
import { curves } from "./curve-styles.ts";
import { frame } from "./plate-styles.ts";
import { drawing } from "./styles.ts";
import { tableOf, takeCsv } from "./table.ts";
import { scratchDrawing, takeOver } from "./take-over.ts";

/** The width of a sheet of A4 or letter between its margins. */
const PAPER_PX = 680;
const SVG = "http://www.w3.org/2000/svg";

/**
 * A figure as a good handbook has it: the finding as its heading, the drawing, a ruler along it that reads
 * it value by value (keys, touch or pointer), and the numbers one click away.
 *
 * @property chart what is drawn; a new one is drawn anew
 * @slot controls what chooses the drawing (a year, a bed)
 */
export class Plate extends LitElement {
  static override properties = {
    chart: { attribute: false },
    at: { state: true },
    drawn: { state: true },
    reading: { state: true },
    open: { state: true },
  };

  declare chart: Chart | undefined;
  declare at: number;
  declare drawn: Drawn | undefined;
  /** Whether somebody reads along the ruler just now. */
  declare reading: boolean;
  declare open: boolean;

  private width_px = 0;
  private readonly scratch = scratchDrawing();
  private readonly watch = new ResizeObserver(([entry]) => this.resized(entry!.contentRect.width));

  static override styles = [base, pressable, drawing, curves, frame];

  constructor() {
    super();
    this.at = 0;
    this.reading = false;
    this.open = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.fonts.addEventListener("loadingdone", this.fontsCame);
    addEventListener("beforeprint", this.toPaper);
    addEventListener("afterprint", this.fontsCame);
  }

  override disconnectedCallback(): void {
    this.watch.disconnect();
    document.fonts.removeEventListener("loadingdone", this.fontsCame);
    removeEventListener("beforeprint", this.toPaper);
    removeEventListener("afterprint", this.fontsCame);
    super.disconnectedCallback();
  }

  protected override firstUpdated(): void {
    this.watch.observe(this.renderRoot.querySelector(".sheet")!);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("chart") && this.chart) {
      const before = changed.get("chart");
      const same = before?.id === this.chart.id && before.readings.length === this.chart.readings.length;
      if (!same) this.at = this.chart.start;
    }
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("chart")) this.draw();
    else if (changed.has("at") || changed.has("reading")) this.follow();
  }

  private readonly fontsCame = (): void => this.draw();

  private readonly toPaper = (): void => this.draw(PAPER_PX);

  private resized(width_px: number): void {
    if (Math.abs(width_px - this.width_px) < 1) return;
    this.width_px = width_px;
    this.draw();
  }

  private draw(width_px = this.width_px): void {
    const svg = this.renderRoot.querySelector("svg");
    if (!svg || !this.chart || width_px < 40) return;
    const width = Math.floor(width_px);
    const drawn = this.chart.draw(this.scratch, width);
    takeOver(svg, this.scratch, drawn.keepsParts ?? false);
    svg.setAttribute("width", String(width));
    svg.setAttribute("height", String(drawn.height));
    svg.setAttribute("viewBox", `0 0 ${width} ${drawn.height}`);
    const reading = svg.querySelector(".reading-line");
    if (this.chart.readings.length === 0) reading?.remove();
    else if (!reading) {
      const line = document.createElementNS(SVG, "line");
      line.setAttribute("class", "reading-line");
      svg.append(line);
    }
    this.drawn = drawn;
    this.follow();
  }

  private follow(): void {
    const { drawn } = this;
    const line = this.renderRoot.querySelector(".reading-line");
    if (!drawn || !line) return;
    const x = String(drawn.at(this.at));
    line.setAttribute("x1", x);
    line.setAttribute("x2", x);
    line.setAttribute("y1", String(drawn.line.top));
    line.setAttribute("y2", String(drawn.line.bottom));
    drawn.follow?.(this.at, this.reading);
    const ruler = this.renderRoot.querySelector<HTMLInputElement>(".ruler");
    if (!ruler) return;
    const { left, right } = drawn.isUneven
      ? { left: drawn.at(this.at), right: drawn.at(this.at) }
      : drawn.ruler;
    ruler.style.left = `${left - 7}px`;
    ruler.style.width = `${right - left + 14}px`;
    ruler.style.pointerEvents = drawn.isUneven ? "none" : "";
    ruler.style.top = `${drawn.ruler.y}px`;
  }

  private readonly point = (event: PointerEvent): void => {
    if (!this.drawn || !this.chart?.readings.length) return;
    if ((event.target as Element).classList.contains("ruler")) return;
    const box = this.renderRoot.querySelector("svg")!.getBoundingClientRect();
    const x = event.clientX - box.left;
    if (x < this.drawn.ruler.left - 12 || x > this.drawn.ruler.right + 12) return;
    this.reading = true;
    this.at = this.drawn.nearest(x);
  };

  private readonly slide = (event: Event): void => {
    this.reading = true;
    this.at = Number((event.target as HTMLInputElement).value);
  };

  protected override render() {
    const { chart } = this;
    if (!chart) return nothing;
    const text = chart.readings.at(this.at) ?? "";
    return html`
      <figure aria-labelledby="finding">
        <figcaption><h3 id="finding">${chart.finding}</h3></figcaption>
        <div class="controls"><slot name="controls"></slot></div>
        <div class="sheet ${this.reading ? "live" : ""}" @pointermove=${this.point} @pointerdown=${this.point}>
          <svg role="img" aria-label=${chart.about}></svg>
          ${
            chart.readings.length > 0
              ? html`<input class="ruler" type="range" min="0" max=${chart.readings.length - 1} step="1"
                  .value=${String(this.at)} aria-label=${page.ruler(chart.about)} aria-valuetext=${text}
                  @input=${this.slide} @focus=${this.slide}
                  @keydown=${this.jump} />`
              : nothing
          }
        </div>
        ${
          chart.readings.length > 0
            ? html`<p class="read ${this.reading ? "live" : ""}" aria-hidden="true">${this.reading ? (chart.shown?.[this.at] ?? text) : plate.readHint}</p>`
            : nothing
        }
        <details @toggle=${this.toggled}>
          <summary>${plate.numbers}</summary>
          ${this.open ? tableOf(chart) : nothing}
          ${this.open ? html`<button class="plain" @click=${() => takeCsv(chart)}>${plate.csv}</button>` : nothing}
        </details>
      </figure>
    `;
  }

  private readonly toggled = (event: Event): void => {
    this.open = (event.target as HTMLDetailsElement).open;
  };

  /** Page Up and Page Down go a month on a drawing by days, a quarter on one by months. */
  private readonly jump = (event: KeyboardEvent): void => {
    const step = { PageUp: 1, PageDown: -1 }[event.key];
    const last = (this.chart?.readings.length ?? 1) - 1;
    if (step === undefined) return;
    event.preventDefault();
    const stride = last > 40 ? 30 : 3;
    this.reading = true;
    this.at = Math.min(last, Math.max(0, this.at + step * stride));
  };
}

customElements.define("gwb-plate", Plate);
