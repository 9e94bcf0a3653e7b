import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { Working } from "../../src/explain/working.ts";
import type { BedYear } from "../../src/report/bed-year.ts";
import type { WateredAs } from "../../src/report/need-days.ts";
import type { ThirstBed, ThirstView } from "../../src/report/thirst-view.ts";
import type { Without } from "../../src/report/without.ts";
import { thirst as words } from "../../src/words/en/thirst.ts";
import type { Formatter } from "../../src/words/format.ts";
import { speakAll, speakBed, speakThirst } from "../../src/words/thirst-spoken.ts";
import { note, sheet } from "../answer/parts.ts";
import type { Chart } from "../charts/chart.ts";
import { monthsChartOf } from "../charts/months/chart.ts";
import "../charts/plate.ts";
import type { Explain } from "../figure/figure.ts";
import { type Openings, sentence, sentences } from "../figure/sentence.ts";
import { type Ask, inTurn } from "../look/ask.ts";
import { base, pressable } from "../look/base.ts";
import { chooseStyles } from "../look/choose.ts";
import { balanceChart } from "./balance/chart.ts";
import { cautions } from "./cautions.ts";
import { changesChart } from "./changes/chart.ts";
import { bedChooser, orderChooser, yearChooser } from "./choosers.ts";
import "./guess/guess.ts";
import { toGuess } from "./guess/prepare.ts";
import { monthsOf } from "./months.ts";
import { orderChart } from "./order/chart.ts";
import { inOrder, type OrderBy } from "./order/prepare.ts";
import { thirstWorkings } from "./workings.ts";
import { bedYearChart } from "./year/chart.ts";

/** So many beds are shown at first; the rest on demand. */
const FIRST_BEDS = 16;

/**
 * What each bed needs: rain and watering, who is thirstiest, one bed's months, habit and changes, and a year day by day.
 *
 * @property view what the calculation gave
 * @property say how numbers are written
 * @property ask answers what is worked out on demand: a bed's year, a bed without its mulch
 * @property explain hands out workings by address
 * @property bed id of the bed shown; null for all together, undefined for the page's own choice
 * @property year the year shown day by day
 * @fires gwb-choose with { bed, year } when somebody chooses either
 */
export class ThirstPage extends LitElement {
  static override properties = {
    view: { attribute: false },
    say: { attribute: false },
    ask: { attribute: false },
    explain: { attribute: false },
    bed: { attribute: false },
    year: { attribute: false },
    as: { state: true },
    by: { state: true },
    all: { state: true },
    guessing: { state: true },
    bedYear: { state: true },
    without: { state: true },
  };

  declare view: ThirstView;
  declare say: Formatter;
  declare ask: Ask | undefined;
  declare explain: Explain | undefined;
  declare bed: string | null | undefined;
  declare year: number | undefined;
  declare as: WateredAs;
  declare by: OrderBy;
  /** Whether every bed is in the order, or the thirstiest only. */
  declare all: boolean;
  declare guessing: boolean;
  declare bedYear: BedYear | null;
  declare without: { bed: string; of: readonly Without[] } | null;

  private asking: Ask | undefined;
  private workings: ReadonlyMap<string, Working> = new Map();
  private charts = new Map<string, Chart | null>();
  /** What was asked for last of each kind, so that an answer of before is not taken for it. */
  private asked = { year: "", without: "" };

  static override styles = [base, pressable, sheet, chooseStyles];

  constructor() {
    super();
    this.as = "need";
    this.by = "area";
    this.all = false;
    this.guessing = false;
    this.bedYear = null;
    this.without = null;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("ask")) this.asking = this.ask && inTurn(this.ask);
    if (changed.has("view")) {
      this.asked = { year: "", without: "" };
      this.without = null;
      if (this.bed === undefined || (this.bed !== null && !this.shown)) this.bed = this.largest?.id ?? null;
    }
    if (changed.has("view") || changed.has("say")) {
      this.workings = thirstWorkings(this.view, this.say);
      this.charts.clear();
    }
    if (changed.has("bed")) this.as = this.asFor(this.inYear);
  }

  protected override updated(): void {
    void this.askYear();
    void this.askWithout();
  }

  private get largest(): ThirstBed | undefined {
    return inOrder(this.view.beds, "all")[0];
  }

  private get shown(): ThirstBed | undefined {
    return this.view.beds.find(({ id }) => id === this.bed);
  }

  /** The bed whose days are drawn: the one shown, the largest where all are. */
  private get inYear(): ThirstBed | undefined {
    return this.shown ?? this.largest;
  }

  private get yearShown(): number | undefined {
    const { years, told } = this.view;
    return this.year !== undefined && years.includes(this.year) ? this.year : (told?.dry ?? years.at(-1));
  }

  /** A bed that is never watered has its days by rain; today's are there where they are known. */
  private asFor(bed: ThirstBed | undefined): WateredAs {
    if (bed?.supply === "none") return "rain";
    return this.as === "today" && !bed?.underHabit ? "need" : this.as;
  }

  private async askYear(): Promise<void> {
    const { asking: ask, inYear: bed, yearShown: year, as } = this;
    const key = `${bed?.id} ${year} ${as}`;
    if (!ask || !bed || year === undefined || this.asked.year === key) return;
    this.asked.year = key;
    const reply = await ask({ kind: "bed-year", bed: bed.id, year, as });
    if (reply?.kind === "bed-year" && this.asked.year === key) this.bedYear = reply.of;
  }

  private async askWithout(): Promise<void> {
    const { asking: ask, shown } = this;
    if (!ask || !shown || this.asked.without === shown.id) return;
    this.asked.without = shown.id;
    const reply = await ask({ kind: "without", bed: shown.id });
    if (reply?.kind === "without" && this.asked.without === reply.bed) this.without = reply;
  }

  /** A chart is made once for what it shows, so that opening a figure elsewhere does not draw it anew. */
  private chart(key: string, make: () => Chart | null): Chart | null {
    const kept = this.charts.get(key);
    if (kept !== undefined) return kept;
    const made = make();
    this.charts.set(key, made);
    return made;
  }

  private choose(chosen: { bed?: string | null; year?: number }): void {
    if (chosen.bed !== undefined) this.bed = chosen.bed;
    if (chosen.year !== undefined) this.year = chosen.year;
    const detail = { bed: this.bed ?? null, year: this.yearShown ?? null };
    this.dispatchEvent(new CustomEvent("gwb-choose", { detail, bubbles: true, composed: true }));
  }

  private get openings(): Openings {
    return { workings: this.workings, explain: this.explain };
  }

  protected override render() {
    const spoken = speakThirst(this.view, this.say);
    const { openings } = this;
    return html`
      <section id="thirst" aria-labelledby="thirst-name" tabindex="-1">
        <h2 id="thirst-name" class="unseen">${words.page}</h2>
        ${spoken.first ? html`<p class="first">${sentence(spoken.first, openings)}</p>` : nothing}
        <p class="headline">${sentence(spoken.headline, openings)}</p>
        ${
          spoken.after.length > 0
            ? html`<div class="spread">
                <div class="main"><p class="lead">${sentences(spoken.after, openings)}</p></div>
                <div class="margin">
                  ${note(words.aside.rainUsed, words.aside.rainUsedWords)}
                  ${note(words.aside.watering, words.aside.wateringWords)}
                </div>
              </div>`
            : nothing
        }
      </section>
      ${this.view.beds.length > 0 ? html`${this.order()} ${this.oneBed()} ${this.days()}` : nothing}
    `;
  }

  private order() {
    const { view, say, by } = this;
    const many = view.beds.length > FIRST_BEDS;
    const most = many && !this.all ? FIRST_BEDS : view.beds.length;
    const canGuess = toGuess(view.beds).length > 2;
    return html`<section id="order" aria-labelledby="order-name" tabindex="-1">
      <h2 id="order-name">${words.order}</h2>
      <div class="spread">
        <div class="main">
          ${
            this.guessing
              ? html`<gwb-thirst-guess .beds=${view.beds} .say=${say} @gwb-leave=${() => {
                  this.guessing = false;
                }}></gwb-thirst-guess>`
              : html`<gwb-plate .chart=${this.chart(`order ${by} ${most}`, () => orderChart(view, by, most, say))}>
                  ${orderChooser(by, say, {
                    choose: (chosen) => {
                      this.by = chosen;
                    },
                    guess: canGuess
                      ? () => {
                          this.guessing = true;
                        }
                      : null,
                  })}
                </gwb-plate>
                ${
                  many
                    ? html`<button class="plain screen-only" @click=${() => {
                        this.all = !this.all;
                      }}>${this.all ? words.orderPlate.fewer : words.orderPlate.more(view.beds.length)}</button>`
                    : nothing
                }`
          }
        </div>
        <div class="margin">${note(words.aside.order, words.aside.orderWords)}</div>
      </div>
    </section>`;
  }

  private oneBed() {
    const { view, say, shown, openings } = this;
    const said = shown ? speakBed(shown, say) : view.all ? speakAll(view.all, say) : [];
    const months = this.chart(`months ${this.bed}`, () =>
      shown || view.all ? monthsChartOf(monthsOf(view, shown ?? null), this.bed ?? "all", say) : null,
    );
    const balance = shown && this.chart(`balance ${shown.id}`, () => balanceChart(shown, say));
    const ready = shown && this.without?.bed === shown.id ? this.without.of : null;
    const hasToday = (shown ?? view.all)?.today_L_week != null;
    return html`<section id="bed" aria-labelledby="bed-name" tabindex="-1">
      <h2 id="bed-name">${words.oneBed}</h2>
      <div class="spread">
        <div class="main">
          ${bedChooser(view, this.bed ?? null, (bed) => this.choose({ bed }))}
          <p class="lead" role="status">${sentences(said, openings)}</p>
          ${months ? html`<gwb-plate .chart=${months}></gwb-plate>` : nothing}
        </div>
        <div class="margin">
          ${note(words.aside.months, words.aside.monthsWords(hasToday))} ${cautions(view)}
        </div>
      </div>
      ${balance ? html`<div class="spread"><div class="main"><gwb-plate .chart=${balance}></gwb-plate></div></div>` : nothing}
      ${
        shown && ready
          ? html`<div class="spread">
              <div class="main">
                <gwb-plate .chart=${this.chart(`changes ${shown.id}`, () => changesChart(shown, ready, say))}></gwb-plate>
              </div>
              <div class="margin">${note(words.aside.changes, words.aside.changesWords)}</div>
            </div>`
          : nothing
      }
    </section>`;
  }

  private days() {
    const { bedYear, inYear: bed, say, view, yearShown } = this;
    if (!bedYear || !bed || bedYear.bed !== bed.id || yearShown === undefined) return nothing;
    const key = `year ${bedYear.bed} ${bedYear.year} ${bedYear.as}`;
    return html`<section id="days" aria-labelledby="days-name" tabindex="-1">
      <h2 id="days-name">${words.years}</h2>
      <div class="spread">
        <div class="main">
          <gwb-plate .chart=${this.chart(key, () => bedYearChart(bedYear, bed, say))}>
            ${yearChooser(view, bed, yearShown, this.as, {
              year: (year) => this.choose({ year }),
              as: (as) => {
                this.as = as;
              },
            })}
          </gwb-plate>
        </div>
        <div class="margin">
          ${note(words.aside.year, words.aside.yearWords)} ${note(words.aside.thirst, words.aside.thirstWords)}
        </div>
      </div>
    </section>`;
  }
}

customElements.define("gwb-thirst", ThirstPage);
