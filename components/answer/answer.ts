import { css, html, LitElement, nothing, type TemplateResult } from "lit";
import type { Working } from "../../src/explain/working.ts";
import { aside, page, type Sentence } from "../../src/words/en/page.ts";
import { plate } from "../../src/words/en/plates.ts";
import { answerBarChart } from "../charts/answer-bar/chart.ts";
import type { Chart } from "../charts/chart.ts";
import { monthsChart } from "../charts/months/chart.ts";
import { firstShown } from "../charts/months/prepare.ts";
import "../charts/plate.ts";
import { stavesChart } from "../charts/staves/chart.ts";
import { tankYearChart } from "../charts/tank-year/chart.ts";
import type { Explain } from "../figure/figure.ts";
import "../figure/figure.ts";
import type { AnswerView } from "../../src/report/view.ts";
import type { Formatter } from "../../src/words/format.ts";
import { speak } from "../../src/words/spoken.ts";
import type { AnswerWidth } from "../frame/work/messages.ts";
import { base, pressable } from "../look/base.ts";
import { addressOf } from "./addresses.ts";
import { howSure } from "./how-sure.ts";
import { chooser, note, sheet, yearChooser } from "./parts.ts";
import { workingsOf } from "./workings.ts";

/** Which cautions stand where, by their code; what is about neither beds nor tanks stands by the answer. */
const aboutGrounds: ReadonlySet<string> = new Set(["local-rules-first", "survey-safety"]);
const aboutTanks: ReadonlySet<string> = new Set([
  "tank-not-for-drinking",
  "no-cross-connection",
  "tank-work",
  "roof-work",
  "standing-water",
  "tank-spray",
]);

/** "today-unknown" has its own words in the margin. */
const elsewhere: ReadonlySet<string> = new Set([...aboutGrounds, ...aboutTanks, "today-unknown"]);

/**
 * The answer on one page: the sentence, then the figures that bear it, with the margin's asides in their place.
 *
 * @property view what the calculation gave
 * @property say how numbers are written
 */
export class Answer extends LitElement {
  static override properties = {
    view: { attribute: false },
    say: { attribute: false },
    explain: { attribute: false },
    places: { attribute: false },
    width: { attribute: false },
    bed: { state: true },
    year: { state: true },
    listOpen: { state: true },
  };

  declare view: AnswerView;
  declare say: Formatter;
  /** Hands out workings by address, down to a day; without it the page's own open, and no further. */
  declare explain: Explain | undefined;
  /** How far the answer may be out, once it is drawn; without it only the years tell. */
  declare width: AnswerWidth | null;
  /** Path of a place of the same site, where there is one to lead to. */
  declare places: ((place: string) => string) | undefined;
  /** Bed whose months are shown; null for all together. */
  declare bed: string | null;
  declare year: number | null;
  declare listOpen: boolean;

  private workings: ReadonlyMap<string, Working> = new Map();
  private charts = new Map<string, Chart>();

  static override styles = [
    base,
    pressable,
    sheet,
    css`
      .onward {
        margin-top: 1.6rem;
      }
      @media print {
        .onward {
          display: none;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.width = null;
    this.bed = null;
    this.year = null;
    this.listOpen = false;
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has("view")) {
      this.bed = firstShown(this.view);
      this.year = this.view.mains.dry?.year ?? this.view.years.at(-1) ?? null;
      this.listOpen = false;
    }
    if (changed.has("view") || changed.has("say")) {
      this.workings = workingsOf(this.view, this.say);
      this.charts.clear();
    }
  }

  /** A chart is made once for what it shows, so that opening a figure elsewhere does not draw it anew. */
  private chart(key: string, make: () => Chart): Chart {
    const kept = this.charts.get(key);
    if (kept) return kept;
    const made = make();
    this.charts.set(key, made);
    return made;
  }

  private sentence(parts: Sentence): (string | TemplateResult)[] {
    return parts.map((part) => {
      if (typeof part === "string") return part;
      const working = this.workings.get(part.at);
      const at = this.explain && addressOf(part.at, this.view);
      return html`<gwb-figure
        .text=${part.text}
        .working=${at ? undefined : working}
        .at=${at}
        .provenance=${working?.provenance ?? "worked-out"}
        .explain=${this.explain}
      ></gwb-figure>`;
    });
  }

  protected override render() {
    const spoken = speak(this.view, this.say);
    const silent = this.view.standing === "no-beds";
    return html`
      <section id="answer" aria-labelledby="answer-name" tabindex="-1">
        <h2 id="answer-name" class="unseen">${page.places.answer}</h2>
        ${spoken.first ? html`<p class="first">${this.sentence(spoken.first)}</p>` : nothing}
        <p class="headline">${this.sentence(spoken.headline)}</p>
        ${silent ? nothing : this.account(spoken.after)}
      </section>
      ${silent ? nothing : html`${this.thirst()} ${this.tanks()}`}
    `;
  }

  private account(after: readonly Sentence[]) {
    const { view, say } = this;
    return html`<div class="spread">
      <div class="main">
        <p class="lead">${after.filter((s) => s.length > 0).map((s) => html`${this.sentence(s)} `)}</p>
        ${
          view.standing === "no-need"
            ? nothing
            : html`<gwb-plate .chart=${this.chart("bar", () => answerBarChart(view, say))}></gwb-plate>`
        }
      </div>
      <div class="margin">
        ${note(aside.howSure, howSure(view, this.width, say))}
        ${view.unknown.length > 0 ? note(aside.notKnown, aside.notKnownBeds(view.unknown.map((b) => b.name))) : nothing}
        ${note(aside.counted, aside.countedWords(view.draws, view.leaks, say.yearly(view.leaks_kL_year)))}
        ${this.cautions((code) => !elsewhere.has(code))}
      </div>
    </div>`;
  }

  private assumed() {
    const { assumed } = this.view;
    if (assumed.length === 0) return nothing;
    const rows = assumed.map(
      ({ where, value, source }) =>
        html`<li><span class="where">${where}</span> ${String(value)}<br /><span class="quiet">${source}</span></li>`,
    );
    return note(
      aside.assumed,
      html`${aside.assumedWords(assumed.length)}
        <details class="screen-only">
          <summary>${aside.assumedList}</summary>
          <ul class="assumed" tabindex="0" aria-label=${aside.assumed}>
            ${rows}
          </ul>
        </details>`,
    );
  }

  private cautions(belong: (code: string) => boolean) {
    const said = this.view.cautions.filter((c) => belong(c.code)).map((c) => c.sentence);
    return said.length > 0
      ? note(aside.cautions, html`${said.map((words) => html`<span class="said">${words}</span> `)}`)
      : nothing;
  }

  private thirst() {
    const { view, say } = this;
    const months = this.chart(`months ${this.bed}`, () => monthsChart(view, this.bed, say));
    const known = view.beds.some((b) => b.today_L_week !== null);
    return html`<section id="thirst" tabindex="-1" aria-labelledby="thirst-name">
      <h2 id="thirst-name">${page.places.thirst}</h2>
      <div class="spread">
        <div class="main">
          <gwb-plate .chart=${months}>
            ${chooser(view, this.bed, (id) => {
              this.bed = id;
            })}
          </gwb-plate>
        </div>
        <div class="margin">
          ${note(aside.readMonths, known ? aside.readMonthsWords : aside.readMonthsNeedOnly)}
          ${this.cautions((code) => aboutGrounds.has(code))}
        </div>
      </div>
      <div class="spread">
        <div class="main">
          <gwb-plate .chart=${this.chart("staves", () => stavesChart(view, say))}></gwb-plate>
        </div>
        <div class="margin">${note(aside.readStaves, aside.readStavesWords)} ${this.assumed()}</div>
      </div>
      ${this.onward("thirst", page.onward.thirst)}
    </section>`;
  }

  private tanks() {
    const { view, say } = this;
    return html`<section id="tanks" tabindex="-1" aria-labelledby="tanks-name">
      <h2 id="tanks-name">${page.places.tanks}</h2>
      ${view.tanks.length === 0 ? html`<p class="lead">${plate.none}</p>` : nothing}
      ${view.tanks.map((tank, i) => {
        const words = plate.tank;
        const litres = (x: number) => say.litres(x);
        return html`<div class="spread">
          <div class="main">
            <gwb-plate .chart=${this.chart(`tank ${tank.id} ${this.year}`, () => tankYearChart(tank, this.year, say))}>
              ${yearChooser(view, this.year, (year) => {
                this.year = year;
              })}
            </gwb-plate>
          </div>
          <div class="margin">
            ${note(
              tank.name,
              `${tank.serves.length > 0 ? words.serves(tank.serves) : ""} ${words.meanYear(litres(tank.inflow_L_year), litres(tank.yield_L_year), litres(tank.spill_L_year))} ${words.term(say.share(tank.volumetricReliability))}`,
            )}
            ${i === 0 ? note(aside.readTank, aside.readTankWords) : nothing}
            ${i === Math.min(1, view.tanks.length - 1) ? this.cautions((code) => aboutTanks.has(code)) : nothing}
          </div>
        </div>`;
      })}
      ${view.tanks.length > 0 ? this.onward("tanks", page.onward.tanks) : nothing}
    </section>`;
  }

  private onward(place: string, words: string) {
    return this.places ? html`<p class="onward"><a href=${this.places(place)}>${words}</a></p>` : nothing;
  }
}

customElements.define("gwb-answer", Answer);
