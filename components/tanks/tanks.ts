import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { Working } from "../../src/explain/working.ts";
import type { TanksView } from "../../src/report/tanks-view.ts";
import { aside } from "../../src/words/en/page.ts";
import { tanks as words } from "../../src/words/en/tanks.ts";
import type { Formatter } from "../../src/words/format.ts";
import { speakTanks } from "../../src/words/tanks-spoken.ts";
import { note, sheet } from "../answer/parts.ts";
import type { Chart } from "../charts/chart.ts";
import "../charts/plate.ts";
import type { Explain } from "../figure/figure.ts";
import { sentence, sentences } from "../figure/sentence.ts";
import { type Ask, inTurn } from "../look/ask.ts";
import { base, pressable } from "../look/base.ts";
import { roofsChart } from "./roofs/chart.ts";
import "./tank.ts";
import { tanksWorkings } from "./workings.ts";

/** Where each caution stands: at the roofs, or at the tank, its pump and its taps. */
const aboutRoofs: ReadonlySet<string> = new Set(["roof-work"]);
const aboutTanks: ReadonlySet<string> = new Set([
  "tank-not-for-drinking",
  "no-cross-connection",
  "tank-work",
  "standing-water",
  "tank-spray",
]);

/**
 * What roofs and tanks bring: rain by roof, then each tank with its level, its years, those who ask it, and its limit.
 *
 * @property view what the calculation gave
 * @property say how numbers are written
 * @property ask answers what is run on demand
 * @property explain hands out workings by address
 * @property year the year shown large; undefined for the page's own choice
 * @fires gwb-choose with { year } when somebody chooses one
 */
export class TanksPage extends LitElement {
  static override properties = {
    view: { attribute: false },
    say: { attribute: false },
    ask: { attribute: false },
    explain: { attribute: false },
    year: { attribute: false },
  };

  declare view: TanksView;
  declare say: Formatter;
  declare ask: Ask | undefined;
  declare explain: Explain | undefined;
  declare year: number | undefined;

  /** One question at a time, of all tanks. */
  private asking: Ask | undefined;
  private workings: ReadonlyMap<string, Working> = new Map();
  private roofs: Chart | null = null;

  static override styles = [base, pressable, sheet];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("ask")) this.asking = this.ask && inTurn(this.ask);
    if (!changed.has("view") && !changed.has("say")) return;
    this.workings = tanksWorkings(this.view, this.say);
    this.roofs = this.view.roofs.length > 0 ? roofsChart(this.view.roofs, this.say) : null;
  }

  private get yearShown(): number | null {
    const { years, dryYear } = this.view;
    return this.year !== undefined && years.includes(this.year)
      ? this.year
      : (dryYear ?? years.at(-1) ?? null);
  }

  protected override render() {
    const { view, say, explain } = this;
    const spoken = speakTanks(view, say);
    const openings = { workings: this.workings, explain };
    const after = spoken.after.filter((each) => each.length > 0);
    return html`
      <section id="tanks" aria-labelledby="tanks-name" tabindex="-1">
        <h2 id="tanks-name" class="unseen">${words.page}</h2>
        <p class="headline">${sentence(spoken.headline, openings)}</p>
        ${
          after.length > 0
            ? html`<div class="spread">
                <div class="main"><p class="lead">${sentences(after, openings)}</p></div>
                <div class="margin">${note(words.aside.flush, words.aside.flushWords(say.depth(1)))}</div>
              </div>`
            : nothing
        }
      </section>
      ${
        this.roofs
          ? html`<section id="roofs" aria-labelledby="roofs-name" tabindex="-1">
              <h2 id="roofs-name">${words.roofs}</h2>
              <div class="spread">
                <div class="main"><gwb-plate .chart=${this.roofs}></gwb-plate></div>
                <div class="margin">
                  ${note(words.aside.roofs, words.aside.roofsWords)} ${this.cautions(aboutRoofs)}
                </div>
              </div>
            </section>`
          : nothing
      }
      ${view.tanks.map(
        (tank, i) => html`<section id="tank-${tank.id}" aria-labelledby="name-${tank.id}" tabindex="-1">
          <h2 id="name-${tank.id}">${tank.name}</h2>
          <gwb-tank
            .tank=${tank}
            .roofs=${view.roofs}
            .year=${this.yearShown}
            .marked=${{ dry: view.dryYear, wet: view.wetYear }}
            .say=${say}
            .ask=${this.asking}
            .explain=${explain}
            .isFirst=${i === 0}
            @gwb-year=${(event: CustomEvent<number>) => this.choose(event.detail)}
            >${i === 0 ? this.cautions(aboutTanks) : nothing}</gwb-tank
          >
        </section>`,
      )}
    `;
  }

  private choose(year: number): void {
    this.year = year;
    this.dispatchEvent(new CustomEvent("gwb-choose", { detail: { year }, bubbles: true, composed: true }));
  }

  private cautions(codes: ReadonlySet<string>) {
    const said = this.view.cautions.filter(({ code }) => codes.has(code)).map((each) => each.sentence);
    return said.length > 0
      ? note(aside.cautions, html`${said.map((each) => html`<span class="said">${each}</span> `)}`)
      : nothing;
  }
}

customElements.define("gwb-tanks", TanksPage);
