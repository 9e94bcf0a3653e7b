import { html, LitElement, nothing, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import type { RoofBrings } from "../../src/report/roofs-bring.ts";
import type { TankLimit } from "../../src/report/tank-limit.ts";
import type { Trial } from "../../src/report/tank-trial.ts";
import type { TankStory } from "../../src/report/tanks-view.ts";
import { plate } from "../../src/words/en/plates.ts";
import { tanks as words } from "../../src/words/en/tanks.ts";
import type { Formatter } from "../../src/words/format.ts";
import { speakTank } from "../../src/words/tanks-spoken.ts";
import { note, sheet } from "../answer/parts.ts";
import type { Chart } from "../charts/chart.ts";
import "../charts/plate.ts";
import { tankYearChart } from "../charts/tank-year/chart.ts";
import type { Explain } from "../figure/figure.ts";
import { sentences } from "../figure/sentence.ts";
import type { Ask } from "../look/ask.ts";
import { base, pressable } from "../look/base.ts";
import { chooseStyles, fromList } from "../look/choose.ts";
import { claimsChart } from "./claims/chart.ts";
import { enoughSentence, limitChart } from "./limit/chart.ts";
import { rulerStyles, rulers } from "./rulers.ts";
import { levelOf, type Setting, settingOf, trialFinding, triedSentence, triedView } from "./trying.ts";
import "./years/years.ts";

/** A ruler rests when it has not moved for so long. */
const REST_MS = 150;

/**
 * One tank: what flows through it, its level through a year and through all, tried at other sizes, who asks it for
 * water, and what holds it back.
 *
 * @property tank the tank as it was worked out
 * @property roofs all roofs of the site
 * @property year the year shown large
 * @property years those there are, and the dry and the wet one
 * @property say how numbers are written
 * @property ask answers what is run on demand: the tank at another size, what holds it back
 * @property explain hands out workings by address
 * @property isFirst whether the figures' asides stand here
 * @fires gwb-year with the year chosen
 */
export class Tank extends LitElement {
  static override properties = {
    tank: { attribute: false },
    roofs: { attribute: false },
    year: { attribute: false },
    marked: { attribute: false },
    say: { attribute: false },
    ask: { attribute: false },
    explain: { attribute: false },
    isFirst: { attribute: false },
    wanted: { state: true },
    trial: { state: true },
    settled: { state: true },
    limit: { state: true },
  };

  declare tank: TankStory;
  declare roofs: readonly RoofBrings[];
  declare year: number | null;
  declare marked: { dry: number | null; wet: number | null };
  declare say: Formatter;
  declare ask: Ask | undefined;
  declare explain: Explain | undefined;
  declare isFirst: boolean;
  /** Where the rulers stand; null as it is. */
  declare wanted: Setting | null;
  /** The tank as it was tried last; null as it is. */
  declare trial: Trial | null;
  /** The trial that all years show: the last one once the rulers rest. */
  declare settled: Trial | null;
  declare limit: TankLimit | null;

  /** One trial at a time: the next begins where the rulers stand when it comes back. */
  private running = false;
  private askedLimit = "";

  static override styles = [base, pressable, sheet, chooseStyles, rulerStyles];

  constructor() {
    super();
    this.roofs = [];
    this.marked = { dry: null, wet: null };
    this.isFirst = false;
    this.wanted = null;
    this.trial = null;
    this.settled = null;
    this.limit = null;
  }

  override disconnectedCallback(): void {
    clearTimeout(this.resting);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("tank")) {
      this.wanted = null;
      this.trial = null;
      this.limit = null;
      this.askedLimit = "";
    }
    if (changed.has("year") && this.wanted) void this.run();
    if (changed.has("trial")) this.settle();
  }

  protected override updated(): void {
    void this.askLimit();
  }

  private resting: ReturnType<typeof setTimeout> | undefined;

  /** Thirty small pictures need not follow every step of a ruler. */
  private settle(): void {
    clearTimeout(this.resting);
    if (this.trial === null) this.settled = null;
    else
      this.resting = setTimeout(() => {
        this.settled = this.trial;
      }, REST_MS);
  }

  private async askLimit(): Promise<void> {
    const { ask, tank } = this;
    if (!ask || this.askedLimit === tank.id) return;
    this.askedLimit = tank.id;
    const reply = await ask({ kind: "tank-limit", tank: tank.id });
    if (reply?.kind === "tank-limit" && reply.of?.tank === this.tank.id) this.limit = reply.of;
  }

  private try(wanted: Setting | null): void {
    this.wanted = wanted;
    if (wanted) void this.run();
    else this.trial = null;
  }

  private async run(): Promise<void> {
    if (this.running || !this.ask) return;
    this.running = true;
    for (;;) {
      const { wanted, tank, year } = this;
      if (!wanted) break;
      const reply = await this.ask({ kind: "tank-trial", tank: tank.id, ...wanted, year });
      if (this.wanted === null || this.tank !== tank) break;
      if (reply?.kind === "tank-trial") this.trial = reply.of;
      if (this.wanted === wanted && this.year === year) break;
    }
    this.running = false;
    if (this.wanted === null) this.trial = null;
  }

  protected override render() {
    const { tank, say, explain, isFirst, limit, settled, year, marked } = this;
    // a ruler that moves renders its own part alone
    return html`
      <div class="spread">
        <div class="main">${guard([tank, say, explain], () => this.told())} ${this.large()}</div>
        ${guard([isFirst], () => this.asides())}
      </div>
      ${guard([tank, say, isFirst, limit, settled, year, marked], () => this.rest())}
    `;
  }

  private told() {
    const { tank, say, explain } = this;
    const { trade, rules, inTrade } = words.tank;
    return html`<p class="lead">${sentences(speakTank(tank, say), { workings: new Map(), explain })}</p>
      ${
        tank.asked && tank.inUse
          ? html`<details class="trade">
              <summary>${inTrade}</summary>
              <p>${trade(say.share(tank.reliability), say.share(tank.volumetricReliability))}${rules[tank.rule]}</p>
            </details>`
          : nothing
      }`;
  }

  private asides() {
    return this.isFirst
      ? html`<div class="margin">
          ${note(words.aside.trial, words.aside.trialWords)} ${note(words.aside.needed, words.aside.neededWords)}
          <slot></slot>
        </div>`
      : nothing;
  }

  /** All years, who asks, and what holds it back. */
  private rest() {
    const { tank, say } = this;
    return html`${
      tank.byYear.length > 1
        ? this.beside(
            html`<gwb-tank-years .tank=${tank} .trial=${this.settled} .year=${this.year} .marked=${this.marked} .say=${say}
                @gwb-year=${(event: CustomEvent<number>) => this.chooseYear(event.detail)}></gwb-tank-years>`,
            this.isFirst ? note(words.aside.years, words.aside.yearsWords) : nothing,
          )
        : nothing
    }
      ${
        tank.claims.length > 0
          ? this.beside(
              html`<gwb-plate .chart=${this.chart("claims", [tank, say], () => claimsChart(tank, say))}></gwb-plate>`,
              this.isFirst ? note(words.aside.claims, words.aside.claimsWords) : nothing,
            )
          : nothing
      }
      ${this.limit && tank.inUse && this.limit.most_L_year >= 1 ? this.limits(this.limit) : nothing}
    `;
  }

  private beside(main: unknown, margin: unknown) {
    return html`<div class="spread">
      <div class="main">${main}</div>
      ${margin === nothing ? nothing : html`<div class="margin">${margin}</div>`}
    </div>`;
  }

  private limits(limit: TankLimit) {
    const { tank, say } = this;
    return this.beside(
      html`<gwb-plate .chart=${this.chart("limit", [limit, tank, say], () => limitChart(limit, tank, say))}></gwb-plate>
        <p class="after">${enoughSentence(limit, tank, say)}</p>`,
      this.isFirst ? note(words.aside.limit, words.aside.limitWords) : nothing,
    );
  }

  private large() {
    const { tank, say, year, trial, wanted } = this;
    const canTry = this.ask !== undefined && tank.inUse;
    return html`<gwb-plate .chart=${this.yearChart(trial)}>
        <div slot="controls" class="choices">${this.yearChooser()}</div>
      </gwb-plate>
      ${
        canTry
          ? rulers(tank, this.roofs, wanted ?? settingOf(tank), say, {
              set: (setting) => this.try(setting),
              back: wanted ? () => this.try(null) : null,
              said: trial ? triedSentence(tank, trial, say) : words.trial.asIs,
              name: words.trial.heading(tank.name),
            })
          : nothing
      }
      ${year === null ? nothing : html`<p class="unseen" role="status">${this.settled ? triedSentence(tank, this.settled, say) : ""}</p>`}`;
  }

  /** A chart is made once for what it shows; a move of a ruler draws the tank's year anew and nothing else. */
  private chart(slot: string, of: readonly unknown[], make: () => Chart): Chart {
    const kept = this.charts.get(slot);
    if (kept?.of.every((each, i) => each === of[i])) return kept.chart;
    const chart = make();
    this.charts.set(slot, { of, chart });
    return chart;
  }

  private charts = new Map<string, { of: readonly unknown[]; chart: Chart }>();

  private yearChart(trial: Trial | null): Chart {
    const { tank, year, say } = this;
    return this.chart("year", [tank, year, say, trial], () =>
      trial && trial.year === year
        ? tankYearChart(triedView(tank, trial), year, say, {
            before_L: levelOf(tank, year),
            finding: trialFinding(trial, say),
          })
        : tankYearChart(tank, year, say),
    );
  }

  private yearChooser() {
    const years = this.tank.byYear.map(({ year }) => year);
    const { year, marked } = this;
    if (years.length < 2 || year === null) return nothing;
    const at = years.indexOf(year);
    const kind = (y: number) =>
      y === marked.dry ? `, ${plate.bar.dry}` : y === marked.wet ? `, ${plate.bar.wet}` : "";
    return html`<span class="steps">${fromList(
      plate.year,
      years.map((y) => ({ value: String(y), text: `${y}${kind(y)}` })),
      String(year),
      (chosen) => this.chooseYear(Number(chosen)),
    )}
      <button class="plain" ?disabled=${at <= 0} @click=${() => this.chooseYear(years[at - 1]!)}>${plate.earlier}</button>
      <button class="plain" ?disabled=${at >= years.length - 1} @click=${() => this.chooseYear(years[at + 1]!)}>
        ${plate.later}
      </button></span>`;
  }

  private chooseYear(year: number): void {
    this.dispatchEvent(new CustomEvent("gwb-year", { detail: year, bubbles: true, composed: true }));
  }
}

customElements.define("gwb-tank", Tank);
