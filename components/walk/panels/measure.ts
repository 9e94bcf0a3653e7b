import { css, html, nothing, type PropertyValues } from "lit";
import { live } from "lit/directives/live.js";
import { givenFor } from "../../../src/survey/measuring/finding.ts";
import type { Outcome } from "../../../src/survey/measuring/way.ts";
import { wayOf } from "../../../src/survey/measuring/ways.ts";
import { shownUnit } from "../../../src/units.ts";
import { noteSentence } from "../../../src/words/en/walk-notes.ts";
import { plainAnswers } from "../../../src/words/en/walk-panels.ts";
import { measureWords } from "../../../src/words/en/walk-screens.ts";
import { slotLabel } from "../../../src/words/en/walk-slots.ts";
import { stopWords } from "../../../src/words/en/walk-stops.ts";
import { wayWords } from "../../../src/words/en/walk-ways.ts";
import { readQuantity } from "../../fields/writing/quantity.ts";
import type { AtStop } from "../draft.ts";
import { asTyped, type Entry, type EntryRead, readEntry } from "../entry.ts";
import { entryBefore } from "../entry-before.ts";
import { keepTaken, setField } from "../keep.ts";
import { givenSaid } from "../said.ts";
import "../form.ts";
import "../litres.ts";
import "./terms.ts";
import { aidOf } from "../aids/all.ts";
import { tracedIn } from "../aids/plan.ts";
import { valueNamed } from "../aids/values.ts";
import type { Walk } from "../context.ts";
import type { Stop } from "../stops.ts";
import { inMetres } from "../trace/state.ts";
import { Panel } from "./panel.ts";
import { wayPicture } from "./way-picture.ts";

/** Guess, choose a way, measure: each on a screen of its own. */
export class MeasurePanel extends Panel {
  static override properties = { ...Panel.properties, wrongGuess: { state: true } };

  declare wrongGuess: boolean;

  private read: EntryRead | null = null;

  static override styles = [
    ...Panel.styles,
    css`
      .guess {
        display: flex;
        align-items: baseline;
        gap: 0.5rem;
        margin-top: 1.2rem;
      }
      .guess input {
        width: 9rem;
        font-size: 1.9rem;
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
    this.wrongGuess = false;
  }

  private get at(): AtStop {
    const at = this.walk.atStop(this.stop.key);
    const step = at.step === "guess" && !this.asksGuess ? "way" : at.step;
    const [only, ...others] = this.stop.ways;
    if (step === "way" && others.length === 0 && !plainAnswers[this.stop.kind])
      return { ...at, step: "measure", entry: at.entry ?? entryBefore(this.walk.survey, this.stop, only!) };
    return { ...at, step };
  }

  private get asksGuess(): boolean {
    return stopWords[this.stop.kind]!.guess !== undefined && this.stop.unit !== null;
  }

  private keep(patch: Partial<AtStop>): void {
    this.walk.keepStop(this.stop.key, patch);
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("stop") && changed.get("stop")?.key !== this.stop.key) this.wrongGuess = false;
  }

  protected override render() {
    const at = this.at;
    if (at.step === "guess") return this.guess(at);
    return at.step === "way" || !at.entry ? this.ways(at) : this.measure(at, at.entry);
  }

  private guess({ guess }: AtStop) {
    const { unit } = this.stop;
    const shown = unit === "share" ? "%" : shownUnit(unit!, this.walk.system);
    const go = () => {
      const isRead = guess.trim() === "" || this.guessed(guess) !== null;
      this.wrongGuess = !isRead;
      if (isRead) this.keep({ step: "way" });
    };
    return html`<p class="lead" id="ask">${stopWords[this.stop.kind]!.guess}</p>
      <p class="hint">${measureWords.guessHint}</p>
      <div class="guess">
        <input
          type="text"
          inputmode="decimal"
          enterkeyhint="next"
          autocomplete="off"
          aria-labelledby="ask"
          aria-describedby="guess-unit"
          aria-invalid=${this.wrongGuess ? "true" : "false"}
          .value=${live(guess)}
          @input=${(event: Event) => this.keep({ guess: (event.target as HTMLInputElement).value })}
          @keydown=${(event: KeyboardEvent) => event.key === "Enter" && go()}
        /><span class="unit" id="guess-unit">${shown}</span>
      </div>
      ${this.wrongGuess ? html`<p class="wrong" role="alert">${measureWords.guessUnread}</p>` : nothing}
      <div class="grow"></div>
      <div class="foot">
        <button class="main" @click=${go}>
          ${guess.trim() === "" ? measureWords.noGuess : measureWords.guessFirst}
        </button>
        ${this.pass()}
      </div>`;
  }

  private guessed(text: string): number | null {
    const { unit } = this.stop;
    const field = { unit: unit === "share" ? "" : unit!, isShare: unit === "share", ...this.walk.typed };
    const read = readQuantity(text, field);
    return "value" in read && typeof read.value === "number" ? read.value : null;
  }

  private ways(at: AtStop) {
    return html`<p class="lead">${measureWords.howWill}</p>
      ${at.guess.trim() ? html`<p class="note">${measureWords.yourGuess(`${at.guess} ${this.guessUnit}`)}</p>` : nothing}
      <div class="answers ways">
        ${this.stop.ways.map(
          (way) => html`<button class="answer" @click=${() => this.choose(way, at)}>
            ${wayPicture(way)}
            <span class="words"><strong>${wayWords[way]!.name}</strong></span>
          </button>`,
        )}
        ${this.plainly()}
      </div>
      ${this.cautionLine()}
      <div class="grow"></div>
      <div class="foot">${this.pass()}</div>`;
  }

  /** What needs no measuring: an open sky, no diverter. */
  private plainly() {
    const answer = plainAnswers[this.stop.kind];
    if (!answer) return nothing;
    const { words, value } = answer;
    const take = () =>
      this.take({ how: "seen", readings: [], word: words, used: false, set: [[this.stop.at, value]] });
    return html`<button class="answer" @click=${take}><span class="words"><strong>${words}</strong></span></button>`;
  }

  private get guessUnit(): string {
    const { unit } = this.stop;
    return unit === null ? "" : unit === "share" ? "%" : shownUnit(unit, this.walk.system);
  }

  private choose(way: string, { entry }: AtStop): void {
    const isSame = entry?.terms[0]?.way === way;
    this.keep({ step: "measure", entry: isSame ? entry : entryBefore(this.walk.survey, this.stop, way) });
  }

  private measure(at: AtStop, entry: Entry) {
    this.read = readEntry(entry, this.walk.typed);
    const { outcome } = this.read;
    const way = entry.terms[0]!.way;
    return html`<p class="how">${wayWords[way]!.how}</p>
      <gwb-walk-terms
        .walk=${this.walk}
        .stop=${this.stop}
        .entry=${entry}
        .outcome=${outcome}
        @entry=${(event: CustomEvent<{ entry: Entry }>) => this.keep({ step: "measure", entry: event.detail.entry })}
      ></gwb-walk-terms>
      <div class="result" role="status">${this.result(this.read)}</div>
      ${this.litres(outcome)}
      ${this.cautionLine()}
      <div class="grow"></div>
      <div class="foot">
        <button
          class="main"
          aria-disabled=${outcome && !("impossible" in outcome) ? "false" : "true"}
          ?disabled=${!outcome || "impossible" in outcome}
          @click=${() => this.keepReading(at, entry)}
        >${measureWords.keepIt}</button>
        ${
          this.stop.ways.length > 1
            ? html`<button class="plain" @click=${() => this.keep({ step: "way" })}>${measureWords.otherWay}</button>`
            : this.pass()
        }
      </div>`;
  }

  private result({ outcome, missing, wrong }: EntryRead) {
    // the key says itself where it leads
    if (this.at.entry?.terms[0]?.way === "soil-feel") return nothing;
    if (outcome && "impossible" in outcome)
      return html`<p class="wrong">${noteSentence(outcome.impossible, this.walk.show)}</p>`;
    if (outcome)
      return html`${this.givens(outcome)}
      ${outcome.notes.map((note) => html`<p class="note">${noteSentence(note, this.walk.show)}</p>`)}`;
    const [first] = missing;
    // a tool that stands alone has no blanks to name
    const way = this.at.entry?.terms[0]?.way ?? "";
    if (wrong.length > 0 || !first || aidOf(way)?.fills === "all")
      return html`<p class="quiet">${measureWords.noFigure}</p>`;
    return html`<p class="quiet">${measureWords.stillWanted(this.blankName(first))}</p>`;
  }

  private blankName({ term, slot }: EntryRead["missing"][number]): string {
    if (term === -1) return measureWords.paceFirst;
    const way = this.at.entry?.terms[term]?.way ?? "";
    return slotLabel(way, wayOf(way)?.slots[slot]?.name ?? "");
  }

  private givens(outcome: Exclude<Outcome, { impossible: unknown }>) {
    const said = givenSaid(this.walk, this.stop, outcome);
    return said.map(
      ({ name, text, doubt }, i) => html`<p>
        ${name ?? (i === 0 ? measureWords.comesTo : nothing)} <strong>${text}</strong>${
          doubt === null ? nothing : html`, ${measureWords.giveOrTake(doubt)}`
        }
      </p>`,
    );
  }

  private litres(outcome: Outcome | null) {
    if (this.stop.list !== "beds" || !outcome || "impossible" in outcome || !this.read) return nothing;
    const { survey, stop } = { survey: this.walk.survey, stop: this.stop };
    const { how, readings } = this.read;
    const candidate = keepTaken(survey, {
      ...{ at: stop.at, also: stop.also },
      how,
      readings,
      when: this.walk.now(),
    });
    const plants = givenFor(outcome, "plantings[0].count.plants");
    return html`<gwb-walk-litres
      .walk=${this.walk}
      .bed=${stop.id}
      .plants=${plants && "figure" in plants ? plants.figure.figure : null}
      .candidate=${candidate}
      .open=${stop.kind === "shade" ? setField(survey, stop.at, []) : null}
    ></gwb-walk-litres>`;
  }

  private keepReading({ guess }: AtStop, entry: Entry): void {
    const { how, readings } = this.read!;
    const guessed = this.asksGuess && guess.trim() !== "" ? this.guessed(guess) : null;
    this.take({
      ...{ how, readings, text: asTyped(entry), set: outlineOf(this.walk, this.stop, entry) },
      ...(guessed === null ? {} : { guess: guessed }),
    });
  }
}

/** A shape traced on the site's plan gives the outline too, in metres of the plan. */
function outlineOf(walk: Walk, stop: Stop, entry: Entry): [string, unknown][] {
  const [term] = entry.terms;
  if (term?.way !== "plan" || entry.terms.length > 1) return [];
  const known_m = valueNamed(entry, 0, "known", walk.typed);
  const known_px = valueNamed(entry, 0, "known-drawn", walk.typed);
  const height_px = Number(walk.store.read(`${walk.site}/plan/height`) ?? 0);
  if (!known_m || !known_px) return [];
  const outline = inMetres(tracedIn(entry, 0), known_m / known_px, height_px);
  return [[`${stop.list}[${stop.index}].outline_m`, outline]];
}

customElements.define("gwb-walk-measure", MeasurePanel);
