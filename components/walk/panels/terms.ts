import { css, html, LitElement, nothing } from "lit";
import type { Outcome } from "../../../src/survey/measuring/way.ts";
import { areaWays } from "../../../src/survey/measuring/ways-areas.ts";
import { countedWays } from "../../../src/survey/measuring/ways-counted.ts";
import { measureWords } from "../../../src/words/en/walk-screens.ts";
import { pacedWords, wayWords } from "../../../src/words/en/walk-ways.ts";
import { aidOf } from "../aids/all.ts";
import type { Walk } from "../context.ts";
import { inkStyles } from "../drawings/styles.ts";
import { type Entry, readEntry, termFor } from "../entry.ts";
import { figureSaid } from "../said.ts";
import type { Stop } from "../stops.ts";
import { walkStyles } from "../styles.ts";
import { wayPicture } from "./way-picture.ts";

const shapes = new Set(areaWays.map(({ code }) => code).filter((code) => code !== "plan"));
const counted = new Set(countedWays.map(({ code }) => code));

/**
 * The blanks of an entry with their drawing or tool: one way, or several shapes added and taken away.
 *
 * @property walk
 * @property stop
 * @property entry
 * @property outcome what the whole entry comes to
 * @fires entry `{ entry }`
 */
export class WalkTerms extends LitElement {
  static override properties = {
    walk: { attribute: false },
    stop: { attribute: false },
    entry: { attribute: false },
    outcome: { attribute: false },
    hand: { state: true },
    at: { state: true },
    adding: { state: true },
  };

  declare walk: Walk;
  declare stop: Stop;
  declare entry: Entry;
  declare outcome: Outcome | null;
  /** The blank in hand. */
  declare hand: number | null;
  /** The shape in hand. */
  declare at: number;
  /** A shape is being chosen, to add or to take away. */
  declare adding: 0 | 1 | -1;

  static override styles = [
    ...walkStyles,
    inkStyles,
    css`
      .term {
        margin-top: 1.2rem;
        padding-top: 0.6rem;
        border-top: 1px solid var(--hair);
      }
      .term h3 {
        margin: 0;
      }
      @media (min-width: 60rem) {
        .pair {
          display: grid;
          grid-template-columns: minmax(0, 21.5rem) minmax(0, 1fr);
          gap: 0 3.5rem;
        }
      }
      .more {
        display: flex;
        flex-wrap: wrap;
        gap: 0 1.4rem;
        margin-top: 0.6rem;
      }
      .ways {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 17rem), 1fr));
        column-gap: 1.5rem;
      }
    `,
  ];

  constructor() {
    super();
    this.hand = null;
    this.at = 0;
    this.adding = 0;
  }

  private get isShapes(): boolean {
    return this.entry.terms.every(({ way }) => shapes.has(way));
  }

  protected override render() {
    const { entry } = this;
    const several = entry.terms.length > 1;
    return html`${entry.paced ? this.pace() : nothing}
      ${entry.terms.map((term, t) =>
        several
          ? html`<section class="term" aria-labelledby="t${t}">
              <h3 id="t${t}">${measureWords.shapeNumber(t + 1)}: ${wayWords[term.way]!.name.toLowerCase()},
                ${term.sign > 0 ? measureWords.added : measureWords.takenAway}${this.termArea(t)}</h3>
              ${this.term(t)}
              <button class="plain" @click=${() => this.drop(t)}>${measureWords.removeShape}</button>
            </section>`
          : this.term(t),
      )}
      ${this.isShapes ? this.moreShapes() : nothing}`;
  }

  private pace() {
    return html`<section class="term">
      <h3>${measureWords.paceFirst}</h3>
      <p class="hint">${pacedWords.how}</p>
      <gwb-walk-form .entry=${this.entry} .typed=${this.walk.typed} .term=${-1}></gwb-walk-form>
    </section>`;
  }

  private term(t: number) {
    const { entry, walk, stop, outcome } = this;
    const aid = aidOf(entry.terms[t]!.way);
    const isHere = t === this.at;
    const shown = aid?.show({
      ...{ walk, stop, entry, term: t, outcome },
      slot: isHere ? this.hand : null,
      tell: (next) => this.tell(next),
    });
    if (aid?.fills === "all") return shown;
    return html`<div class="pair">
      ${shown ? html`<div>${shown}</div>` : nothing}
      ${html`<gwb-walk-form
              .entry=${entry}
              .typed=${walk.typed}
              .term=${t}
              .without=${aid?.fills ?? []}
              @look=${this.look}
            ></gwb-walk-form>`}
    </div>`;
  }

  private readonly look = (event: CustomEvent<{ slot: number; term: number }>): void => {
    this.hand = event.detail.slot;
    this.at = event.detail.term;
  };

  /** The area of one shape of several, where it is whole. */
  private termArea(t: number): string {
    const { paced, terms } = this.entry;
    const { outcome } = readEntry({ paced, terms: [{ ...terms[t]!, sign: 1 }] }, this.walk.typed);
    if (!outcome || "impossible" in outcome || !outcome.figures.area_m2) return "";
    return `: ${figureSaid(this.walk, outcome.figures.area_m2, "m²")}`;
  }

  private moreShapes() {
    if (this.adding !== 0)
      return html`<div class="answers ways">
        ${this.stop.ways
          .filter((way) => shapes.has(way) && !counted.has(way))
          .map(
            (way) => html`<button class="answer" @click=${() => this.add(way)}>
              ${wayPicture(way)}<span class="words">${wayWords[way]!.name}</span>
            </button>`,
          )}
      </div>`;
    const choose = (sign: 1 | -1) => () => {
      this.adding = sign;
    };
    return html`<div class="more">
      <button class="plain" @click=${choose(1)}>${measureWords.addShape}</button>
      <button class="plain" @click=${choose(-1)}>${measureWords.cutShape}</button>
      <button
        class="plain"
        @click=${() => this.tell({ ...this.entry, paced: this.entry.paced ? null : [[""], [""]] })}
      >${this.entry.paced ? measureWords.inTape : measureWords.inPaces}</button>
    </div>`;
  }

  private add(way: string): void {
    this.tell({ ...this.entry, terms: [...this.entry.terms, termFor(way, this.adding < 0 ? -1 : 1)] });
    this.at = this.entry.terms.length;
    this.adding = 0;
  }

  private drop(term: number): void {
    const terms = this.entry.terms.filter((_, t) => t !== term);
    this.tell({ ...this.entry, terms: terms.map((one, t) => (t === 0 ? { ...one, sign: 1 } : one)) });
  }

  private tell(entry: Entry): void {
    this.dispatchEvent(new CustomEvent("entry", { detail: { entry }, bubbles: true, composed: true }));
  }
}

customElements.define("gwb-walk-terms", WalkTerms);
