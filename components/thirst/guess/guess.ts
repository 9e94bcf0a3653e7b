import { html, LitElement, type PropertyValues } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import "../../charts/plate.ts";
import { base, pressable } from "../../look/base.ts";
import { guessChart } from "./chart.ts";
import { mostGuessed, moved, resultOf, toGuess } from "./prepare.ts";
import { guessStyles } from "./styles.ts";

const words = thirst.guess;

/**
 * A class puts the beds in order before it sees them: by dragging, by number, or with the arrow keys. Then the order
 * found stands beside the guess, with the litres between neighbours.
 *
 * @property beds all beds of the site
 * @property say how numbers are written
 * @fires gwb-leave when the guess is left, seen or not
 */
export class ThirstGuess extends LitElement {
  static override properties = {
    beds: { attribute: false },
    say: { attribute: false },
    order: { state: true },
    seen: { state: true },
    spoken: { state: true },
    held: { state: true },
  };

  declare beds: readonly ThirstBed[];
  declare say: Formatter;
  /** Ids, thirstiest first as guessed. */
  declare order: readonly string[];
  declare seen: boolean;
  declare spoken: string;
  /** The bed under the finger. */
  declare held: string | null;

  static override styles = [base, pressable, guessStyles];

  constructor() {
    super();
    this.beds = [];
    this.order = [];
    this.seen = false;
    this.spoken = "";
    this.held = null;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("beds")) return;
    const ids = toGuess(this.beds).map(({ id }) => id);
    const same = ids.length === this.order.length && ids.every((id) => this.order.includes(id));
    if (same) return;
    this.order = ids;
    this.seen = false;
  }

  protected override render() {
    const { beds, say } = this;
    const asked = toGuess(beds);
    if (this.seen) {
      return html`
        <gwb-plate .chart=${guessChart(resultOf(asked, this.order), say)}></gwb-plate>
        <p class="ways">
          <button class="press" @click=${() => this.guessAgain()}>${words.again}</button>
          <button class="plain" @click=${this.leave}>${words.leave}</button>
        </p>
      `;
    }
    return html`
      <h3 tabindex="-1">${say.system === "us" ? words.headingUs : words.heading}</h3>
      <p class="lead">${words.lead} ${beds.length > mostGuessed ? words.largest(mostGuessed) : ""}</p>
      <p class="end" aria-hidden="true">${words.thirstiest}</p>
      <ol @pointermove=${this.drag} @pointerup=${this.drop} @pointercancel=${this.drop}>
        ${repeat(
          this.order,
          (id) => id,
          (id, place) => this.row(asked.find((bed) => bed.id === id)!, place),
        )}
      </ol>
      <p class="end" aria-hidden="true">${words.frugal}</p>
      <p class="ways">
        <button class="press" @click=${this.see}>${words.see}</button>
        <button class="plain" @click=${this.leave}>${words.leave}</button>
      </p>
      <p class="unseen" role="status">${this.spoken}</p>
    `;
  }

  private row(bed: ThirstBed, place: number) {
    const { name, id } = bed;
    const places = this.order.map(
      (_, i) => html`<option ?selected=${i === place} value=${i}>${i + 1}</option>`,
    );
    return html`<li data-id=${id} class=${this.held === id ? "held" : ""}>
      <button
        class="grip"
        aria-label=${words.move(name)}
        aria-description=${words.keys}
        @pointerdown=${(event: PointerEvent) => this.take(event, id)}
        @keydown=${(event: KeyboardEvent) => this.key(event, id)}
      ><span aria-hidden="true"></span></button>
      <span class="name">${name}</span>
      <select aria-label=${words.place(name)} .value=${String(place)}
        @change=${(event: Event) => this.put(id, Number((event.target as HTMLSelectElement).value))}>
        ${places}
      </select>
    </li>`;
  }

  private put(id: string, place: number): void {
    const from = this.order.indexOf(id);
    const to = Math.max(0, Math.min(this.order.length - 1, place));
    if (from === to) return;
    this.order = moved(this.order, from, to);
    const { name } = this.beds.find((bed) => bed.id === id)!;
    this.spoken = words.moved(name, to + 1, this.order.length);
  }

  /** Arrows move a bed by one place, Home and End to the ends, a digit to that place. */
  private key(event: KeyboardEvent, id: string): void {
    const at = this.order.indexOf(id);
    const to = { ArrowUp: at - 1, ArrowDown: at + 1, Home: 0, End: this.order.length - 1 }[event.key];
    const digit = /^[1-9]$/.test(event.key) ? Number(event.key) - 1 : undefined;
    const place = to ?? digit;
    if (place === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const grip = event.currentTarget as HTMLElement;
    this.put(id, place);
    void this.updateComplete.then(() => grip.focus());
  }

  private take(event: PointerEvent, id: string): void {
    if (event.button !== 0) return;
    this.renderRoot.querySelector("ol")!.setPointerCapture(event.pointerId);
    this.held = id;
  }

  private readonly drag = (event: PointerEvent): void => {
    if (this.held === null) return;
    const rows = [...this.renderRoot.querySelectorAll<HTMLElement>("li")];
    const over = rows.findIndex((row) => event.clientY < row.getBoundingClientRect().bottom);
    this.put(this.held, over < 0 ? rows.length - 1 : over);
  };

  private readonly drop = (): void => {
    this.held = null;
  };

  private readonly see = async (): Promise<void> => {
    this.seen = true;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("button.press")?.focus({ preventScroll: true });
  };

  private async guessAgain(): Promise<void> {
    this.seen = false;
    this.order = toGuess(this.beds).map(({ id }) => id);
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("h3")?.focus({ preventScroll: true });
  }

  private readonly leave = (): void => {
    this.dispatchEvent(new CustomEvent("gwb-leave", { bubbles: true }));
  };
}

customElements.define("gwb-thirst-guess", ThirstGuess);
