import { css, html, nothing, svg } from "lit";
import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import { drawingWords as words } from "../../../src/words/en/walk-more.ts";
import { textWidth } from "../../charts/measure.ts";
import { drawingFile } from "../drawings/drawing-file.ts";
import { barLength_m, type SitePlan, sitePlan } from "../drawings/site-plan.ts";
import { setField } from "../keep.ts";
import { saveText } from "../save.ts";
import { Screen } from "../screen.ts";

const margin = 26;

/** Everything to scale; tanks and taps are placed here; saved as SVG with its own inks. */
export class DrawingScreen extends Screen {
  static override properties = {
    ...Screen.properties,
    placing: { state: true },
    cross: { state: true },
    wide_px: { state: true },
  };

  /** Path of the tank or tap that is being placed: `tanks[0]`. */
  declare placing: string;
  declare cross: Corner | null;
  /** Width of the sheet, px: it is drawn anew for it, not shrunk. */
  declare wide_px: number;

  private readonly watch = new ResizeObserver(([entry]) => {
    this.wide_px = Math.max(280, Math.round(entry!.contentRect.width));
  });

  static override styles = [
    ...Screen.styles,
    css`
      .sheet {
        margin-top: 1rem;
        border: 1.5px solid var(--ink);
      }
      .sheet svg {
        width: 100%;
        height: auto;
      }
      .key {
        margin-top: 0.6rem;
        padding-inline-start: 1.8rem;
        columns: 11rem;
        column-gap: 1.5rem;
        font-size: 0.95rem;
      }
      .key li {
        break-inside: avoid;
      }
      .placing {
        cursor: crosshair;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0.3rem 1rem;
        margin-top: 0.8rem;
      }
      .bed {
        fill: color-mix(in srgb, var(--ink) 9%, var(--paper));
        stroke: var(--ink);
        stroke-width: 1.4;
      }
      .roof {
        fill: url(#roof);
        stroke: var(--ink);
        stroke-width: 1.4;
      }
      .loose {
        stroke-dasharray: 4 3;
      }
      .tank {
        fill: var(--tank);
        stroke: var(--ink);
      }
      .tap {
        fill: var(--paper);
        stroke: var(--ink);
        stroke-width: 2;
      }
      svg text.on {
        font-size: 13px;
        paint-order: stroke;
        stroke: var(--paper);
        stroke-width: 4px;
        stroke-linejoin: round;
      }
    `,
  ];

  constructor() {
    super();
    this.placing = "";
    this.cross = null;
    this.wide_px = 640;
  }

  protected override firstUpdated(): void {
    this.watch.observe(this.renderRoot.querySelector(".sheet")!);
  }

  override disconnectedCallback(): void {
    this.watch.disconnect();
    super.disconnectedCallback();
  }

  protected override render() {
    const { survey, show } = this.walk;
    const plan = sitePlan(survey);
    const things = [
      ...survey.tanks.map(({ name }, i) => ({ path: `tanks[${i}]`, name })),
      ...(survey.taps ?? []).map(({ name }, i) => ({ path: `taps[${i}]`, name })),
    ];
    const isLoose =
      plan.areas.some(({ isPlaced }) => !isPlaced) || plan.points.some(({ isPlaced }) => !isPlaced);
    return html`<section class="screen" aria-labelledby="head">
      ${this.top()}
      <h2 id="head" tabindex="-1">${words.heading}</h2>
      ${plan.areas.length + plan.points.length === 0 ? html`<p class="lead">${words.empty}</p>` : nothing}
      <div
        class="sheet ${this.placing ? "placing" : ""}"
        tabindex=${this.placing ? 0 : -1}
        role=${this.placing ? "application" : "img"}
        aria-label=${this.placing ? words.place : words.about(survey.beds.length, survey.roofs.length, survey.tanks.length, survey.taps?.length ?? 0)}
        @click=${this.tap}
        @keydown=${this.key}
      >${this.sheet(plan)}</div>
      <ol class="key">
        ${[...plan.areas, ...plan.points].map(({ name }) => html`<li><bdi>${name}</bdi></li>`)}
      </ol>
      <p class="note">${words.caption(show(barLength_m(plan.east - plan.west), "m"))} ${isLoose ? `${capital(words.notPlaced)}.` : nothing}</p>
      ${
        things.length > 0
          ? html`<div class="row">
              <label for="placing">${words.place}</label>
              <select id="placing" @change=${this.choose}>
                <option value="">${words.choose}</option>
                ${things.map(({ path, name }) => html`<option value=${path} .selected=${path === this.placing}>${name}</option>`)}
              </select>
            </div>
            ${this.placing ? html`<p class="hint">${words.placeHint}</p>` : nothing}`
          : nothing
      }
      <div class="grow"></div>
      <div class="foot"><button class="main" @click=${this.save}>${words.save}</button></div>
    </section>`;
  }

  private frame(plan: SitePlan) {
    const scale = (this.wide_px - 2 * margin) / (plan.east - plan.west);
    return {
      scale,
      height: (plan.north - plan.south) * scale + 2 * margin + 30,
      x: (metres: number) => margin + (metres - plan.west) * scale,
      y: (metres: number) => margin + (plan.north - metres) * scale,
    };
  }

  private sheet(plan: SitePlan) {
    const { scale, height, x, y } = this.frame(plan);
    const bar = barLength_m(plan.east - plan.west);
    const foot = height - 16;
    const path = (corners: readonly Corner[]) =>
      `M${corners.map(([east, north]) => `${x(east).toFixed(1)} ${y(north).toFixed(1)}`).join("L")}Z`;
    const middle = (corners: readonly Corner[]): Corner => {
      const xs = corners.map(([east]) => east);
      const ys = corners.map(([, north]) => north);
      return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
    };
    return html`<svg viewBox="0 0 ${this.wide_px} ${height.toFixed(1)}" aria-hidden="true">
      <defs>
        <pattern id="roof" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="7" stroke="var(--grey)" stroke-width="1" />
        </pattern>
      </defs>
      ${plan.areas.map(({ sort, corners, isPlaced }) => svg`<path class="${sort} ${isPlaced ? "" : "loose"}" d=${path(corners)} />`)}
      ${plan.areas.map(({ name, corners }) => {
        const [east, north] = middle(corners);
        const fits = widthOf(corners) * scale > textWidth(name, 13) + 8;
        return svg`<text class="on" x=${x(east)} y=${y(north) + 5} text-anchor="middle">${fits ? name : numberOf(plan, name)}</text>`;
      })}
      ${plan.points.map(({ sort, name, at, across_m }) => {
        const r = Math.max(6, (across_m * scale) / 2);
        return svg`<circle class=${sort} cx=${x(at[0])} cy=${y(at[1])} r=${sort === "tap" ? 6 : r} />
          <text class="on" x=${x(at[0]) + r + 5} y=${y(at[1]) + 5}>${numberOf(plan, name)}</text>`;
      })}
      <path class="ink" d="M${margin} ${foot}H${margin + bar * scale}M${margin} ${foot - 5}v10M${margin + bar * scale} ${foot - 5}v10" />
      <text class="on" x=${margin + bar * scale + 8} y=${foot + 5}>${this.walk.show(bar, "m")}</text>
      ${this.cross ? svg`<path class="ink strong" d="M${this.cross[0] - 12} ${this.cross[1]}h24M${this.cross[0]} ${this.cross[1] - 12}v24" />` : nothing}
    </svg>`;
  }

  private readonly choose = (event: Event): void => {
    this.placing = (event.target as HTMLSelectElement).value;
    this.cross = null;
    if (this.placing)
      void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>(".sheet")?.focus());
  };

  private readonly tap = (event: MouseEvent): void => {
    if (!this.placing) return;
    const box = this.renderRoot.querySelector(".sheet svg")!.getBoundingClientRect();
    const ratio = this.wide_px / box.width;
    this.put([(event.clientX - box.left) * ratio, (event.clientY - box.top) * ratio]);
  };

  private put([px, py]: Corner): void {
    const plan = sitePlan(this.walk.survey);
    const { scale } = this.frame(plan);
    const round = (value: number) => Math.round(value * 100) / 100;
    const at = [round(plan.west + (px - margin) / scale), round(plan.north - (py - margin) / scale)];
    this.walk.change(setField(this.walk.survey, `${this.placing}.at_m`, at));
    this.placing = "";
    this.cross = null;
  }

  private readonly key = (event: KeyboardEvent): void => {
    if (!this.placing) return;
    const step = event.shiftKey ? 40 : 8;
    const cross = this.cross ?? [this.wide_px / 2, 120];
    const by = ({ ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] } as const)[
      event.key as "ArrowUp"
    ];
    if (by) this.cross = [cross[0] + step * by[0], cross[1] + step * by[1]];
    else if (event.key === "Enter") this.put(cross);
    else if (event.key === "Escape") this.placing = "";
    else return;
    event.preventDefault();
  };

  private readonly save = (): void => {
    const { areas, points } = sitePlan(this.walk.survey);
    const names = [...areas, ...points].map(({ name }) => name);
    const drawing = this.renderRoot.querySelector<SVGSVGElement>(".sheet svg")!;
    saveText("site-drawing.svg", "image/svg+xml", drawingFile(drawing, names));
  };
}

function widthOf(corners: readonly Corner[]): number {
  const xs = corners.map(([east]) => east);
  return Math.max(...xs) - Math.min(...xs);
}

/** The number of a thing in the key below the drawing. */
function numberOf({ areas, points }: SitePlan, name: string): number {
  return [...areas, ...points].findIndex((one) => one.name === name) + 1;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

customElements.define("gwb-walk-drawing", DrawingScreen);
