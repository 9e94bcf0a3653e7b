import { css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { habitOf, loggedOverTold } from "../../../src/survey/measuring/habit-log.ts";
import { weekdays } from "../../../src/survey/words.ts";
import { habitWords } from "../../../src/words/en/walk-panels.ts";
import { measureWords } from "../../../src/words/en/walk-screens.ts";
import { readNumber } from "../../fields/writing/number.ts";
import { NotesPanel } from "./notes.ts";

const months = Array.from({ length: 12 }, (_, i) => String(i + 1));
/** Told and logged minutes this near agree. */
const near = 0.1;

/** Watering today: as it is told, and as a week's log has it. */
export class HabitPanel extends NotesPanel {
  static override styles = [
    ...NotesPanel.styles,
    css`
      fieldset {
        min-width: 0;
        margin: 1.2rem 0 0;
        padding: 0;
        border: 0;
      }
      .strip {
        display: grid;
        grid-template-columns: repeat(7, minmax(0, 1fr));
        margin-top: 0.4rem;
        border: 1px solid var(--ink);
        border-width: 1px 0 0 1px;
      }
      .strip.year {
        grid-template-columns: repeat(6, minmax(0, 1fr));
      }
      .strip button {
        min-height: 48px;
        padding: 0;
        border: 1px solid var(--ink);
        border-width: 0 1px 1px 0;
        background: none;
        color: var(--grey);
      }
      .strip [aria-pressed="true"] {
        background: var(--ink);
        color: var(--on-ink);
        font-weight: 650;
      }
      .minutes {
        margin-top: 1.2rem;
      }
      .minutes input {
        width: 5rem;
      }
      .log {
        display: grid;
        grid-template-columns: repeat(7, minmax(0, 1fr));
        gap: 0.3rem;
        margin-top: 0.4rem;
      }
      .log label {
        display: grid;
        color: var(--grey);
        text-align: center;
      }
      .log input {
        width: 100%;
        text-align: center;
      }
    `,
  ];

  private picked(name: string): string[] {
    return this.note(name).split(",").filter(Boolean);
  }

  private turn(name: string, value: string, order: readonly string[]): void {
    const picked = this.picked(name);
    const next = order.filter((one) => picked.includes(one) !== (one === value));
    this.keepNote(name, next.join(","));
  }

  private number(name: string): number | null {
    const value = readNumber(this.note(name), this.walk.locale);
    return value !== null && value >= 0 && value <= 1440 ? value : null;
  }

  private get week(): number[] | null {
    const texts = weekdays.map((day) => this.note(`log-${day}`));
    if (texts.every((text) => text.trim() === "")) return null;
    const read = weekdays.map((day) =>
      this.note(`log-${day}`).trim() === "" ? 0 : this.number(`log-${day}`),
    );
    return read.every((value) => value !== null) ? (read as number[]) : null;
  }

  protected override render() {
    const minutes = this.number("minutes");
    const days = this.picked("days");
    const inMonths = this.picked("months");
    const { week } = this;
    const isTold = minutes !== null && (minutes === 0 || (days.length > 0 && inMonths.length > 0));
    const isLogged = week !== null && inMonths.length > 0;
    return html`<p class="lead">${habitWords.told}</p>
      <div class="answers">
        <button class="answer" @click=${this.keepNone}>
          <span class="words"><strong>${habitWords.none}</strong></span>
        </button>
      </div>
      <p class="minutes">
        <label class="label" for="minutes">${habitWords.minutes}</label>
        <input id="minutes" type="text" inputmode="decimal" autocomplete="off" .value=${live(this.note("minutes"))} @input=${this.keepTyped("minutes")} />
        <span class="unit">min</span>
      </p>
      ${this.strip("days", habitWords.days, weekdays, habitWords.dayNames, habitWords.dayLong)}
      ${this.strip("months", habitWords.months, months, this.monthNames("short"), this.monthNames("long"), "year")}
      <h3>${habitWords.log}</h3>
      <p class="hint">${habitWords.logHint}</p>
      <div class="log">
        ${weekdays.map(
          (day, i) => html`<label>${habitWords.dayNames[i]}
            <input type="text" inputmode="decimal" autocomplete="off" aria-label=${habitWords.dayLong[i]} .value=${live(this.note(`log-${day}`))} @input=${this.keepTyped(`log-${day}`)} />
          </label>`,
        )}
      </div>
      ${isTold && week ? html`<p class="result" role="status">${this.compared(week, { minutes, days })}</p>` : nothing}
      ${this.cautionLine()}
      <div class="grow"></div>
      <div class="foot">
        <button class="main" ?disabled=${!isTold} @click=${() => this.keepTold(minutes!, days, inMonths)}>
          ${isLogged ? habitWords.keepTold : measureWords.keepIt}
        </button>
        ${isLogged ? html`<button class="press" @click=${() => this.keepLog(week, inMonths)}>${habitWords.keepLog}</button>` : this.pass()}
      </div>`;
  }

  private monthNames(month: "short" | "long"): string[] {
    const format = new Intl.DateTimeFormat(this.walk.locale, { month, timeZone: "UTC" });
    return months.map((_, i) => format.format(Date.UTC(2021, i, 15)));
  }

  private strip(
    name: string,
    legend: string,
    values: readonly string[],
    short: readonly string[],
    long: readonly string[],
    look = "",
  ) {
    const picked = this.picked(name);
    return html`<fieldset>
      <legend class="label">${legend}</legend>
      <div class="strip ${look}">
        ${values.map(
          (value, i) => html`<button
            aria-label=${long[i]!}
            aria-pressed=${picked.includes(value)}
            @click=${() => this.turn(name, value, values)}
          >${short[i]}</button>`,
        )}
      </div>
    </fieldset>`;
  }

  private compared(week: readonly number[], told: { minutes: number; days: readonly string[] }): string {
    const times = loggedOverTold(week, told);
    if (times !== null && Math.abs(times - 1) <= near) return habitWords.same;
    return habitWords.more(
      times === null
        ? "many"
        : new Intl.NumberFormat(this.walk.locale, { maximumSignificantDigits: 2 }).format(times),
    );
  }

  private get field(): string {
    return `beds[${this.stop.index}].watering.habit`;
  }

  private readonly keepNone = (): void => {
    const habit = { minutes: 0, days: [], months: [] };
    this.take({ how: "told", readings: [0], word: 0, used: false, set: [[this.field, habit]] });
  };

  private keepTold(minutes: number, days: readonly string[], inMonths: readonly string[]): void {
    const habit = { minutes, days, months: inMonths.map(Number) };
    const on = weekdays.map((day) => (days.includes(day) ? 1 : 0));
    this.take({
      ...{ how: "told", readings: [minutes, ...on, ...habit.months], word: minutes, used: false },
      set: [[this.field, minutes === 0 ? { minutes, days: [], months: [] } : habit]],
    });
  }

  /** The log's own days and minutes; its months as told. */
  private keepLog(week: readonly number[], inMonths: readonly string[]): void {
    const { minutes, days } = habitOf(week);
    const habit = { minutes, days, months: inMonths.map(Number) };
    this.take({ how: "habit-week", readings: [...week], set: [[this.field, habit]] });
  }
}

customElements.define("gwb-walk-habit", HabitPanel);
