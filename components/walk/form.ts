import { css, html, LitElement, nothing } from "lit";
import { ifDefined } from "lit/directives/if-defined.js";
import { live } from "lit/directives/live.js";
import { paceSlots } from "../../src/survey/measuring/pacing.ts";
import { type Slot, slotAt } from "../../src/survey/measuring/way.ts";
import { wayOf } from "../../src/survey/measuring/ways.ts";
import { shownUnit } from "../../src/units.ts";
import { codeAnswers } from "../../src/words/en/walk-aids.ts";
import { measureWords } from "../../src/words/en/walk-screens.ts";
import { slotLabel } from "../../src/words/en/walk-slots.ts";
import { type Entry, fieldUnit, readText, type TypedIn, withText } from "./entry.ts";
import { formStyles } from "./form-styles.ts";
import { walkStyles } from "./styles.ts";

/**
 * The blanks of a way, as on its field sheet: a line a reading, as many readings as one likes.
 *
 * @property entry what is typed
 * @property typed the units that bare numbers are in
 * @property term which shape of the entry; −1 for the pace
 * @property hidden blanks that an aid fills
 * @fires entry `{ entry }` on every key
 * @fires look `{ slot }` the blank that is being filled
 */
export class WalkForm extends LitElement {
  static override properties = {
    entry: { attribute: false },
    typed: { attribute: false },
    term: { attribute: false },
    without: { attribute: false },
  };

  declare entry: Entry;
  declare typed: TypedIn;
  declare term: number;
  declare without: readonly string[];

  static override styles = [...walkStyles, formStyles, css``];

  constructor() {
    super();
    this.term = 0;
    this.without = [];
  }

  protected override render() {
    const way = this.term === -1 ? "pacing" : (this.entry.terms[this.term]?.way ?? "");
    const slots = this.term === -1 ? paceSlots : (wayOf(way)?.slots ?? []);
    const texts = (this.term === -1 ? this.entry.paced : this.entry.terms[this.term]?.texts) ?? [];
    return slots.map((slot, s) =>
      this.without.includes(slot.name) ? nothing : this.blank(way, slot, s, texts[s] ?? [""]),
    );
  }

  private blank(way: string, slot: Slot, s: number, texts: readonly string[]) {
    const choices = codeAnswers[`${way}/${slot.name}`];
    if (choices) return this.choice(way, slot, s, texts[0] ?? "", choices);
    if (slot.list) return this.list(way, slot, s, texts);
    const label = slotLabel(way, slot.name);
    const more = slot.by !== undefined;
    return html`<div class="blank">
      ${
        texts.length === 1
          ? html`<label class="label" for="b${s}-0">${label}</label>`
          : html`<p class="label" id="l${s}">${label}</p>`
      }
      <div class="cells">
        ${texts.map((text, r) => this.cell(slot, s, r, text, texts.length > 1 ? measureWords.readingOf(label, r + 1) : undefined))}
        ${
          more
            ? html`<button class="plain more" aria-label=${measureWords.oneMoreOf(label)} @click=${() => this.oneMore(s, texts.length)}>
                ${measureWords.oneMore}
              </button>`
            : nothing
        }
      </div>
      ${this.errors(slot, s, texts)}
    </div>`;
  }

  /** A row of different readings; some belong together, such as along and across. */
  private list(way: string, slot: Slot, s: number, texts: readonly string[]) {
    const label = slotLabel(way, slot.name);
    const size = slot.together ?? 1;
    const rows = Math.max(1, Math.ceil(texts.length / size));
    const cells =
      size === 1
        ? html`<div class="flow">
            ${Array.from({ length: rows }, (_, r) =>
              this.cell(slot, s, r, texts[r] ?? "", measureWords.readingOf(label, r + 1)),
            )}
          </div>`
        : Array.from({ length: rows }, (_, row) => this.together(slot, s, row, texts, label.split(", ")));
    return html`<div class="blank list">
      ${size === 1 ? html`<p class="label">${label}</p>` : nothing} ${cells}
      <button class="plain more" aria-label=${measureWords.oneMoreOf(label)} @click=${() => this.oneMore(s, rows * size)}>
        ${measureWords.oneMore}
      </button>
      ${this.errors(slot, s, texts)}
    </div>`;
  }

  /** Readings that belong together, each with its name over it. */
  private together(slot: Slot, s: number, row: number, texts: readonly string[], names: readonly string[]) {
    return html`<div class="row ${names.length === 4 ? "of-four" : ""}" role="group" aria-label=${measureWords.rowOf(row + 1)}>
      ${names.map((name, k) => {
        const r = row * names.length + k;
        const said = measureWords.readingOf(name, row + 1);
        return html`<span class="part"><span class="hint" aria-hidden="true">${name}</span>
          ${this.cell(slot, s, r, texts[r] ?? "", said)}</span>`;
      })}
    </div>`;
  }

  private cell(row: Slot, s: number, r: number, text: string, name?: string) {
    const slot = slotAt(row, r);
    const { unit, isShare } = fieldUnit(slot);
    const shown = isShare ? "%" : slot.unit === "mL" || slot.unit === "°" ? slot.unit : unit;
    const own = /\p{L}|%|°|′|″/u.test(text);
    const isWrong =
      typeof readText(text, slot, this.typed) === "object" && readText(text, slot, this.typed) !== null;
    const said = shown === "" ? "" : shownUnit(shown as Parameters<typeof shownUnit>[0], this.typed.system);
    return html`<span class="cell">
      <input
        id="b${s}-${r}"
        type="text"
        inputmode=${slot.signed || slot.unit === "s" || slot.unit === "code" ? "text" : "decimal"}
        enterkeyhint="next"
        autocomplete="off"
        spellcheck="false"
        aria-label=${ifDefined(name)}
        aria-invalid=${isWrong ? "true" : "false"}
        aria-describedby=${ifDefined(isWrong ? `e${s}` : said && !own ? `u${s}-${r}` : undefined)}
        .value=${live(text)}
        @input=${(event: Event) => this.type(s, r, (event.target as HTMLInputElement).value)}
        @focus=${() => this.look(s)}
        @keydown=${this.onKey}
      />${said && !own ? html`<span class="unit" id="u${s}-${r}">${said}</span>` : nothing}
    </span>`;
  }

  private choice(
    way: string,
    slot: Slot,
    s: number,
    text: string,
    choices: readonly { value: string; words: string }[],
  ) {
    return html`<fieldset class="blank">
      <legend class="label">${slotLabel(way, slot.name)}</legend>
      <div class="side">
        ${choices.map(
          ({ value, words }) => html`<button
            class="press"
            aria-pressed=${text === value}
            @click=${() => this.type(s, 0, value)}
          >${words}</button>`,
        )}
      </div>
    </fieldset>`;
  }

  private errors(slot: Slot, s: number, texts: readonly string[]) {
    const wrong = texts
      .map((text, place) => readText(text, slotAt(slot, place), this.typed))
      .find((read) => typeof read === "object" && read !== null);
    return wrong && typeof wrong === "object"
      ? html`<p class="wrong" id="e${s}">${measureWords[wrong.wrong]}</p>`
      : nothing;
  }

  private type(slot: number, place: number, text: string): void {
    let entry = this.entry;
    const row = (this.term === -1 ? entry.paced : entry.terms[this.term]?.texts)?.[slot] ?? [];
    for (let r = row.length; r < place; r++) entry = withText(entry, this.term, slot, r, "");
    this.tell(withText(entry, this.term, slot, place, text));
  }

  private async oneMore(slot: number, place: number): Promise<void> {
    this.type(slot, place, "");
    await this.updateComplete;
    await new Promise((done) => setTimeout(done));
    this.renderRoot.querySelector<HTMLElement>(`#b${slot}-${place}`)?.focus();
  }

  private tell(entry: Entry): void {
    this.dispatchEvent(new CustomEvent("entry", { detail: { entry }, bubbles: true, composed: true }));
  }

  private look(slot: number): void {
    this.dispatchEvent(
      new CustomEvent("look", { detail: { slot, term: this.term }, bubbles: true, composed: true }),
    );
  }

  /** Enter goes on to the next blank, as the phone's key says. */
  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    const inputs = [...this.renderRoot.querySelectorAll<HTMLInputElement>("input")];
    const next = inputs[inputs.indexOf(event.target as HTMLInputElement) + 1];
    const list = (event.target as HTMLElement).closest<HTMLElement>(".list");
    if (next) next.focus();
    else if (list) list.querySelector<HTMLElement>(".more")?.click();
    else this.dispatchEvent(new CustomEvent("end", { bubbles: true, composed: true }));
  };
}

customElements.define("gwb-walk-form", WalkForm);
