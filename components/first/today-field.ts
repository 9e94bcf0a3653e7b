import { css, html, nothing } from "lit";
import type { FirstToday, Season } from "../../src/survey/first/entries.ts";
import type { UnitSystem } from "../../src/units.ts";
import { todayEntry } from "../../src/words/en/first.ts";
import "../fields/choice.ts";
import "../fields/entry.ts";
import { Field } from "../fields/field.ts";
import { readSize, type SizeName, shownText, sizeUnit } from "./sizes.ts";

type Way = FirstToday["is"];

const ways: readonly Way[] = ["minutes", "bills", "not-watered", "unknown"];
const seasons: readonly Season[] = ["warm-half", "hottest-three", "all-year"];

/**
 * How the garden is watered today: told by the week, by bills, not at all, or not known.
 *
 * @property today what was told; undefined while nothing was, or some of it is still wanted
 * @property typed texts of its fields, by name
 * @property system units shown
 * @fires change `{ today, typed }`
 */
export class TodayField extends Field {
  static override properties = {
    ...Field.properties,
    today: { attribute: false },
    typed: { attribute: false },
    system: { attribute: false },
  };

  declare today: FirstToday | undefined;
  declare typed: Readonly<Record<string, string>>;
  declare system: UnitSystem;

  static override styles = [
    ...Field.styles,
    css`
      :host {
        padding: 0;
      }
      .figures {
        display: flex;
        flex-wrap: wrap;
        gap: 0 2.2rem;
      }
    `,
  ];

  constructor() {
    super();
    this.typed = {};
    this.system = "metric";
  }

  private get way(): Way | undefined {
    return this.today?.is ?? ways.find((way) => way === this.typed.way);
  }

  protected override render() {
    const { way } = this;
    return html`<div>
      <gwb-choice
        .label=${todayEntry.label}
        .hint=${todayEntry.hint}
        .options=${ways.map((value) => ({ value, words: todayEntry.ways[value] }))}
        .value=${way}
        .isShort=${true}
        @change=${(event: CustomEvent<{ value: string }>) => this.put(event, { way: event.detail.value })}
      ></gwb-choice>
      ${way === "minutes" ? this.minutes() : way === "bills" ? this.bills() : nothing}
      ${way === "unknown" ? html`<p class="hint">${todayEntry.unknownSaid}</p>` : nothing}
    </div>`;
  }

  private minutes() {
    return html`<div class="figures">
      ${this.figure("minutes")}
      <gwb-choice
        .label=${todayEntry.season}
        .options=${seasons.map((value) => ({ value, words: todayEntry.seasons[value] }))}
        .value=${this.typed.season ?? "warm-half"}
        .isShort=${true}
        @change=${(event: CustomEvent<{ value: string }>) => this.put(event, { season: event.detail.value })}
      ></gwb-choice>
    </div>`;
  }

  private bills() {
    return html`<div class="figures">
        ${this.figure("summer")} ${this.figure("winter")} ${this.figure("months")}
      </div>
      <p class="hint">${todayEntry.billsHint}</p>`;
  }

  private figure(name: SizeName) {
    const text = shownText(name, this.typed, this.system) || (name === "months" ? "3" : "");
    const read = readSize(name, text, this.system);
    return html`<gwb-entry
      .label=${labels[name] ?? ""}
      .text=${text}
      .unit=${sizeUnit(name, this.system)}
      .keys=${"decimal"}
      .width=${8}
      .error=${"wrong" in read ? read.wrong : ""}
      @change=${(event: CustomEvent<{ text: string }>) => this.put(event, { [name]: event.detail.text, [`${name}-in`]: this.system })}
    ></gwb-entry>`;
  }

  private put(event: Event, change: Readonly<Record<string, string>>): void {
    event.stopPropagation();
    this.typed = { ...this.typed, ...change };
    this.today = todayOf(this.typed, this.system);
    this.tell({ today: this.today, typed: this.typed });
  }
}

const labels: Readonly<Partial<Record<SizeName, string>>> = {
  minutes: todayEntry.minutes,
  summer: todayEntry.summer,
  winter: todayEntry.winter,
  months: todayEntry.months,
};

/** What the fields come to; undefined while something is still wanted. */
export function todayOf(typed: Readonly<Record<string, string>>, system: UnitSystem): FirstToday | undefined {
  const value = (name: SizeName, stands = "") => {
    const read = readSize(name, shownText(name, typed, system) || stands, system);
    return "value" in read ? read.value : undefined;
  };
  if (typed.way === "not-watered" || typed.way === "unknown") return { is: typed.way };
  if (typed.way === "minutes") {
    const minutesPerWeek = value("minutes");
    const season = seasons.find((one) => one === typed.season) ?? "warm-half";
    return minutesPerWeek === undefined ? undefined : { is: "minutes", minutesPerWeek, season };
  }
  if (typed.way !== "bills") return undefined;
  const [summer_kL, winter_kL, months] = [value("summer"), value("winter"), value("months", "3")];
  if (summer_kL === undefined || winter_kL === undefined || months === undefined) return undefined;
  return { is: "bills", summer_kL, winter_kL, months };
}

customElements.define("gwb-today-field", TodayField);
