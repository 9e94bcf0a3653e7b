import { css, html, LitElement, nothing } from "lit";
import type { SurveyNormals } from "../../src/survey/survey.ts";
import { fromSI, toSI } from "../../src/units.ts";
import { weatherPlaceWords as words } from "../../src/words/en/frame.ts";
import type { Formatter } from "../../src/words/format.ts";
import { readNumber, showNumber } from "../fields/writing/number.ts";
import { base, pressable } from "../look/base.ts";

type Column = "rain_mm" | "rainDays" | "tmin_c" | "tmax_c";

const columns: readonly Column[] = ["rain_mm", "rainDays", "tmin_c", "tmax_c"];

/**
 * Twelve months of means to be typed: rain, days with rain, lowest and highest temperature.
 *
 * @property normals those entered before
 * @property place those of the place, to begin with
 * @property say how numbers are written
 * @fires change `{ normals }` once all are there
 */
export class Means extends LitElement {
  static override properties = {
    normals: { attribute: false },
    place: { attribute: false },
    say: { attribute: false },
    typed: { state: true },
    source: { state: true },
    wrong: { state: true },
  };

  declare normals: SurveyNormals | null;
  declare place: SurveyNormals | null;
  declare say: Formatter;
  /** Texts by `column month`. */
  declare typed: Readonly<Record<string, string>> | null;
  declare source: string | null;
  declare wrong: string;

  static override styles = [
    base,
    pressable,
    css`
      :host {
        display: block;
        margin-top: 1rem;
      }
      .scroll {
        overflow-x: auto;
      }
      table {
        border-collapse: collapse;
      }
      th,
      td {
        padding: 0.1rem 1rem 0.1rem 0;
        font-weight: 400;
        text-align: start;
        white-space: nowrap;
      }
      thead th {
        color: var(--grey);
        font-size: 0.92rem;
      }
      input {
        width: 5.5rem;
        min-height: 2.2rem;
        border: 0;
        border-bottom: 2px dashed var(--ink);
        background: transparent;
        text-align: end;
      }
      .source input {
        width: min(100%, 24rem);
        text-align: start;
      }
      p {
        margin-top: 0.8rem;
      }
      .error {
        padding-inline-start: 0.7rem;
        border-inline-start: 3px solid var(--ink);
        font-weight: 600;
      }
      @media (pointer: coarse) {
        input {
          min-height: 44px;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.normals = null;
    this.place = null;
    this.typed = null;
    this.source = null;
    this.wrong = "";
  }

  private unit(column: Column): { si: "mm" | "°C"; shown: string } | null {
    const us = this.say.system === "us";
    if (column === "rainDays") return null;
    return column === "rain_mm"
      ? { si: "mm", shown: us ? "in" : "mm" }
      : { si: "°C", shown: us ? "°F" : "°C" };
  }

  private textsOf(normals: SurveyNormals | null): Record<string, string> {
    const texts: Record<string, string> = {};
    for (const column of columns) {
      const unit = this.unit(column);
      normals?.[column]?.forEach((value, month) => {
        const shown = unit ? (fromSI(value, unit.si, unit.shown) ?? value) : value;
        texts[`${column} ${month}`] = showNumber(Math.round(shown * 100) / 100);
      });
    }
    return texts;
  }

  private get texts(): Readonly<Record<string, string>> {
    return this.typed ?? this.textsOf(this.normals);
  }

  protected override render() {
    const { say } = this;
    const names = { rain_mm: words.rain, rainDays: words.rainDays, tmin_c: words.tmin, tmax_c: words.tmax };
    const months = Array.from({ length: 12 }, (_, month) => month);
    return html`
      <p class="source">
        <label
          >${words.ownSource}<br />
          <input
            type="text"
            dir="auto"
            .value=${this.source ?? this.normals?.source ?? ""}
            @change=${(event: Event) => {
              event.stopPropagation();
              this.source = (event.target as HTMLInputElement).value;
            }}
          />
        </label>
      </p>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">${words.month}</th>
              ${columns.map((column) => html`<th scope="col">${names[column]} ${this.unit(column)?.shown ?? ""}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${months.map(
              (month) => html`<tr>
                <th scope="row">${say.month(month)}</th>
                ${columns.map(
                  (column) => html`<td>
                    <input
                      type="text"
                      inputmode="decimal"
                      aria-label="${names[column]}, ${say.month(month)}"
                      .value=${this.texts[`${column} ${month}`] ?? ""}
                      @change=${(event: Event) => this.put(event, `${column} ${month}`)}
                    />
                  </td>`,
                )}
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      ${this.wrong ? html`<p class="error" role="alert">${this.wrong}</p>` : nothing}
      <p>
        <button type="button" class="press" @click=${this.use}>${words.ownUse}</button>
        ${
          this.place
            ? html`<button
                type="button"
                class="plain"
                @click=${() => {
                  this.typed = this.textsOf(this.place);
                  this.source ??= this.place?.source ?? "";
                }}
              >
                ${words.ownFill}
              </button>`
            : nothing
        }
      </p>
    `;
  }

  private put(event: Event, key: string): void {
    event.stopPropagation();
    this.typed = { ...this.texts, [key]: (event.target as HTMLInputElement).value };
  }

  private readonly use = (): void => {
    const months = Array.from({ length: 12 }, (_, month) => month);
    const names = { rain_mm: words.rain, rainDays: words.rainDays, tmin_c: words.tmin, tmax_c: words.tmax };
    const read: Partial<Record<Column, number[]>> = {};
    for (const column of columns) {
      const unit = this.unit(column);
      const values = months.map((month) => {
        const value = readNumber(this.texts[`${column} ${month}`] ?? "");
        return value === null || !unit ? value : (toSI(value, unit.shown, unit.si) ?? null);
      });
      const gap = values.indexOf(null);
      if (gap >= 0) {
        this.wrong = words.ownWanted(names[column], this.say.month(gap));
        return;
      }
      read[column] = values as number[];
    }
    this.wrong = "";
    const { rain_mm = [], rainDays = [], tmin_c = [], tmax_c = [] } = read;
    const source = (this.source ?? this.normals?.source ?? "").trim() || words.ownSourceUnsaid;
    const normals: SurveyNormals = { ...this.normals, source, rain_mm, rainDays, tmin_c, tmax_c };
    this.dispatchEvent(new CustomEvent("change", { detail: { normals }, bubbles: true }));
  };
}

customElements.define("gwb-means", Means);
