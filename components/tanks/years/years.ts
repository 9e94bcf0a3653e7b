import { html, LitElement, nothing, svg } from "lit";
import type { Trial } from "../../../src/report/tank-trial.ts";
import type { TankStory } from "../../../src/report/tanks-view.ts";
import { plate } from "../../../src/words/en/plates.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../../charts/chart.ts";
import { frame } from "../../charts/plate-styles.ts";
import { tableOf, takeCsv } from "../../charts/table.ts";
import { base, pressable } from "../../look/base.ts";
import { outlineOf, type SmallYear, shortText, smallYears, yearsFinding, yearsTable } from "./prepare.ts";
import { yearsStyles } from "./styles.ts";

const words = tanks.years;
const SIZE = { width: 100, height: 44 };

/**
 * Every year of a tank as a small picture, on one scale; one of them is the year shown large.
 *
 * @property tank the tank as it is
 * @property trial the same as it is tried; null as it is
 * @property year the year shown large
 * @property marked the dry and the wet year
 * @property say how numbers are written
 * @fires gwb-year with the year chosen
 */
export class TankYears extends LitElement {
  static override properties = {
    tank: { attribute: false },
    trial: { attribute: false },
    year: { attribute: false },
    marked: { attribute: false },
    say: { attribute: false },
    open: { state: true },
  };

  declare tank: TankStory;
  declare trial: Trial | null;
  declare year: number | null;
  declare marked: { dry: number | null; wet: number | null };
  declare say: Formatter;
  declare open: boolean;

  static override styles = [base, pressable, frame, yearsStyles];

  constructor() {
    super();
    this.trial = null;
    this.year = null;
    this.marked = { dry: null, wet: null };
    this.open = false;
  }

  protected override render() {
    const { tank, trial, say } = this;
    const years = smallYears(tank, trial);
    if (years.length === 0) return nothing;
    const finding = yearsFinding(tank, years, say);
    const capacity_L = trial?.capacity_L ?? tank.capacity_L;
    const chart: Pick<Chart, "id" | "finding" | "table"> = {
      id: `years-of-${tank.id}`,
      finding,
      table: yearsTable(tank, say),
    };
    return html`<figure aria-labelledby="finding">
      <figcaption><h3 id="finding">${finding}</h3></figcaption>
      <fieldset>
        <legend class="unseen">${words.legend}</legend>
        ${years.map((each) => this.small(each, capacity_L))}
      </fieldset>
      <details @toggle=${this.toggled}>
        <summary>${plate.numbers}</summary>
        ${this.open ? tableOf(chart) : nothing}
        ${this.open ? html`<button class="plain" @click=${() => takeCsv(chart)}>${plate.csv}</button>` : nothing}
      </details>
    </figure>`;
  }

  private small({ year, level_L, shortDays }: SmallYear, capacity_L: number) {
    const { width, height } = SIZE;
    const kind = year === this.marked.dry ? words.dry : year === this.marked.wet ? words.wet : "";
    return html`<label>
      <input type="radio" name="year" .checked=${year === this.year} @change=${() => this.choose(year)} />
      <span class="picture">
        <svg viewBox="0 0 ${width} ${height}" preserveAspectRatio="none" aria-hidden="true">
          ${svg`<path class="water" d=${outlineOf(level_L, capacity_L, width, height)}></path>`}
        </svg>
        <span class="name">${year}${kind ? html`<span class="kind">, ${kind}</span>` : nothing}</span>
        <span class="days">${shortText(shortDays, this.say)}</span>
      </span>
    </label>`;
  }

  private choose(year: number): void {
    this.dispatchEvent(new CustomEvent("gwb-year", { detail: year, bubbles: true }));
  }

  private readonly toggled = (event: Event): void => {
    this.open = (event.target as HTMLDetailsElement).open;
  };
}

customElements.define("gwb-tank-years", TankYears);
