import { css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { type WalkPart, walkParts } from "../../../src/survey/measuring/way.ts";
import { waysOf } from "../../../src/survey/measuring/ways.ts";
import { typeWords } from "../../../src/words/en/walk-more.ts";
import { noteSentence } from "../../../src/words/en/walk-notes.ts";
import { measureWords } from "../../../src/words/en/walk-screens.ts";
import { sheetWords } from "../../../src/words/en/walk-sheets.ts";
import { stopWords } from "../../../src/words/en/walk-stops.ts";
import { wayWords } from "../../../src/words/en/walk-ways.ts";
import { readQuantity } from "../../fields/writing/quantity.ts";
import { asTyped, type Entry, entryFor, readEntry } from "../entry.ts";
import { keepTaken, setField } from "../keep.ts";
import { givenSaid } from "../said.ts";
import { Screen } from "../screen.ts";
import { type Stop, stopsOf } from "../stops.ts";
import "../form.ts";

/** What is done on screen alone stands on no sheet. */
const onScreenOnly = new Set(["plan", "leaf-photograph"]);

/** A sheet typed in, block by block, in the order in which its blanks stand. */
export class TypeScreen extends Screen {
  static override styles = [
    ...Screen.styles,
    css`
      .label {
        margin-top: 1.1rem;
      }
    `,
  ];

  private note(name: string): string {
    return this.walk.atStop("type").notes?.[name] ?? "";
  }

  private keepNotes(more: Record<string, string>): void {
    const { notes = {} } = this.walk.atStop("type");
    this.walk.keepStop("type", { notes: { ...notes, ...more } });
  }

  protected override render() {
    const part = this.note("part") as WalkPart | "";
    return html`<section class="screen" aria-labelledby="head">
      ${this.top()}
      <h2 id="head" tabindex="-1">${typeWords.heading}</h2>
      ${part === "" ? this.chooser() : this.blocks(part)}
    </section>`;
  }

  private chooser() {
    return html`<p class="lead">${typeWords.lead}</p>
      <h3>${typeWords.part}</h3>
      <div class="answers">
        ${walkParts.map(
          (part) => html`<button class="answer" @click=${() => this.begin(part)}>
            <span class="words">${sheetWords.parts[part]}</span>
          </button>`,
        )}
      </div>`;
  }

  private begin(part: WalkPart): void {
    this.keepNotes({ part, block: "0", kept: "0" });
    this.fresh(part, 0);
  }

  private fresh(part: WalkPart, block: number): void {
    const way = blocksOf(part)[block];
    this.walk.keepStop("type", { entry: way ? entryFor(way) : null, guess: "" });
    this.keepNotes({ part, block: String(block), about: "" });
  }

  /** The group's pace stands once on its sheet: typed in once, it is there for the next paced shape. */
  private turnPaced(entry: Entry): void {
    const kept = this.note("pace");
    const paced = entry.paced ? null : kept ? (JSON.parse(kept) as string[][]) : [[""], [""]];
    this.walk.keepStop("type", { entry: { ...entry, paced } });
  }

  private keepEntry(entry: Entry): void {
    this.walk.keepStop("type", { entry });
    if (entry.paced) this.keepNotes({ pace: JSON.stringify(entry.paced) });
  }

  private form(entry: Entry, term: number) {
    return html`<gwb-walk-form
      .entry=${entry}
      .typed=${this.walk.typed}
      .term=${term}
      @entry=${(event: CustomEvent<{ entry: Entry }>) => this.keepEntry(event.detail.entry)}
    ></gwb-walk-form>`;
  }

  private blocks(part: WalkPart) {
    const all = blocksOf(part);
    const block = Number(this.note("block"));
    const way = all[block];
    const kept = Number(this.note("kept"));
    if (!way)
      return html`<p class="lead">${typeWords.end} ${typeWords.kept(kept)}</p>
        ${this.seen(part)}
        <div class="grow"></div>
        <div class="foot">
          <button class="main" @click=${() => this.keepNotes({ part: "" })}>${typeWords.another}</button>
        </div>`;
    return this.block(part, block, way, all.length);
  }

  /** Stops of the part that have no readings: each at its own screen. */
  private seen(part: WalkPart) {
    const stops = stopsOf(this.walk.survey).filter((stop) => stop.part === part && isSeen(stop));
    if (stops.length === 0) return nothing;
    return html`<h3>${typeWords.seen}</h3>
      <p class="hint">${typeWords.seenHint}</p>
      <div class="answers">
        ${stops.map(
          (stop) => html`<button class="answer" @click=${() => this.walk.go(`stop/${stop.key}`)}>
            <span class="words"><bdi>${stop.name}</bdi>: ${stopWords[stop.kind]!.name.toLowerCase()}</span>
          </button>`,
        )}
      </div>`;
  }

  private block(part: WalkPart, block: number, way: string, all: number) {
    const at = this.walk.atStop("type");
    const entry = at.entry?.terms[0]?.way === way ? at.entry : entryFor(way);
    const read = readEntry(entry, this.walk.typed);
    const stops = stopsOf(this.walk.survey).filter(({ ways }) => ways.includes(way));
    const stop = stops.find(({ key }) => key === this.note("about")) ?? null;
    const isDone = stop !== null && read.outcome !== null && !("impossible" in read.outcome);
    return html`<p class="of">${sheetWords.parts[part]}. ${typeWords.block(block + 1, all)}</p>
      <h3>${wayWords[way]!.name}</h3>
      <p class="hint">${wayWords[way]!.how}</p>
      <label class="label" for="about">${typeWords.about}</label>
      <select id="about" @change=${(event: Event) => this.keepNotes({ about: (event.target as HTMLSelectElement).value })}>
        <option value="" .selected=${live(stop === null)}>${typeWords.choose}</option>
        ${stops.map((one) => html`<option value=${one.key} .selected=${live(one === stop)}>${one.name}: ${stopWords[one.kind]!.name.toLowerCase()}</option>`)}
      </select>
      <label class="label" for="guess">${typeWords.guess}</label>
      <input
        id="guess"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        .value=${live(at.guess)}
        @input=${(event: Event) => this.walk.keepStop("type", { guess: (event.target as HTMLInputElement).value })}
      />
      ${
        part === "areas"
          ? html`<button class="plain" aria-pressed=${entry.paced !== null} @click=${() => this.turnPaced(entry)}>
              ${measureWords.inPaces}
            </button>`
          : nothing
      }
      ${entry.paced ? this.form(entry, -1) : nothing} ${this.form(entry, 0)}
      <div class="result" role="status">
        ${
          read.outcome && "impossible" in read.outcome
            ? html`<p class="wrong">${noteSentence(read.outcome.impossible, this.walk.show)}</p>`
            : read.outcome && stop
              ? givenSaid(this.walk, stop, read.outcome).map(
                  ({ text }) => html`<p>${measureWords.comesTo} <strong>${text}</strong></p>`,
                )
              : nothing
        }
      </div>
      <div class="grow"></div>
      <div class="foot">
        <button class="main" ?disabled=${!isDone} @click=${() => this.keep(stop!, entry, part, block, at.guess)}>${typeWords.keep}</button>
        <button class="plain" @click=${() => this.fresh(part, block + 1)}>${typeWords.skip}</button>
      </div>`;
  }

  /** Keeps a block and stays at it: a sheet has several of the same. */
  private keep(stop: Stop, entry: Entry, part: WalkPart, block: number, guess: string): void {
    const { how, readings } = readEntry(entry, this.walk.typed);
    const { survey, group } = this.walk.withGroup();
    const unit = stop.unit === "share" ? "" : (stop.unit ?? "");
    const read = readQuantity(guess, { unit, isShare: stop.unit === "share", ...this.walk.typed });
    const guessed = "value" in read && typeof read.value === "number" ? { guess: read.value } : {};
    const kept = keepTaken(survey, {
      ...{ at: stop.at, also: stop.also, how, readings, group, when: this.walk.now(), text: asTyped(entry) },
      ...guessed,
    });
    if (!kept) return;
    this.walk.change(wholeYear(kept, stop));
    this.keepNotes({ kept: String(Number(this.note("kept")) + 1) });
    this.fresh(part, block);
  }
}

/** A week's log says nothing of the year: where no months are known, every month stands until they are told. */
function wholeYear(survey: ReturnType<typeof keepTaken> & object, stop: Stop) {
  const bed = stop.kind === "habit" ? survey.beds[stop.index] : undefined;
  if (!bed || bed.watering.habit) return survey;
  const row = (survey.found ?? []).filter(({ at }) => at === stop.at).at(-1);
  if (!row) return survey;
  const days = (["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const).filter(
    (_, i) => (row.readings[i] ?? 0) > 0,
  );
  const months = Array.from({ length: 12 }, (_, i) => i + 1);
  return setField(survey, `beds[${stop.index}].watering.habit`, {
    minutes: Number(row.figure),
    days,
    months,
  });
}

/** The habit is told as well as logged. */
const isSeen = ({ kind, ways }: Stop) => ways.length === 0 || kind === "habit";

function blocksOf(part: WalkPart): string[] {
  return waysOf(part)
    .map(({ code }) => code)
    .filter((code) => !onScreenOnly.has(code));
}

customElements.define("gwb-walk-type", TypeScreen);
