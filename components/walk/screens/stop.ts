import { css, html, nothing, type PropertyValues } from "lit";
import { questionsAbout } from "../../../src/survey/measuring/unlikely.ts";
import { workOut } from "../../../src/survey/measuring/work-out.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { faultWords } from "../../../src/words/en/faults.ts";
import { noteSentence } from "../../../src/words/en/walk-notes.ts";
import { questionSentence } from "../../../src/words/en/walk-questions.ts";
import { measureWords, walkWords } from "../../../src/words/en/walk-screens.ts";
import { stopWords } from "../../../src/words/en/walk-stops.ts";
import { emptyStop } from "../draft.ts";
import { newFaults } from "../faults.ts";
import { keepTaken, setField } from "../keep.ts";
import { panelOf, type TakenAtStop } from "../panels/panel.ts";
import { standsSaid, valueSaid } from "../said.ts";
import { Screen } from "../screen.ts";
import { doneBy, standingOf } from "../standing.ts";
import { type Stop, stopsOf } from "../stops.ts";
import { toTop } from "../to-top.ts";
import { readingsPart } from "./readings.ts";
import "../panels/all.ts";

/** One stop: cautions the first time, then what it asks, then what was kept. */
export class StopScreen extends Screen {
  static override properties = {
    ...Screen.properties,
    key: { attribute: false },
    again: { state: true },
    faults: { state: true },
  };

  declare key: string;
  /** The stop that is measured once more. */
  declare again: string;
  /** What the survey cannot take of what was just measured. */
  declare faults: readonly string[];

  static override styles = [
    ...Screen.styles,
    css`
      .panel,
      .panel > * {
        display: flex;
        flex: 1;
        flex-direction: column;
      }
      .readings {
        margin-top: 1rem;
      }
      .readings summary {
        display: inline-flex;
        align-items: center;
      }
      .readings ul {
        padding: 0;
        list-style: none;
      }
      .readings li {
        padding: 0.5rem 0;
        border-bottom: 1px solid var(--hair);
        overflow-wrap: anywhere;
      }
      .readings .left p {
        color: var(--grey);
      }
    `,
  ];

  /** What the stop showed last: its cautions, a step of its panel, or what was kept. */
  private shown = { key: "", stage: "" };

  constructor() {
    super();
    this.key = "";
    this.again = "";
    this.faults = [];
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("key")) this.faults = [];
  }

  /** Another step of the same stop begins at its head, for the eye and for the reader's voice. */
  protected override updated(): void {
    const { key, walk, shown } = this;
    const stop = stopsOf(walk.survey).find((one) => one.key === key);
    const stage = stop ? this.stageOf(stop) : "";
    this.shown = { key, stage };
    if (shown.key !== key || shown.stage === stage) return;
    toTop(this);
    this.focusHead();
  }

  private stageOf(stop: Stop): string {
    const { draft, survey, group } = this.walk;
    if (!draft.read.includes(stop.part)) return "cautions";
    if (doneBy(survey, stop, group) && this.again !== stop.key) return "kept";
    return this.walk.atStop(stop.key).step;
  }

  protected override render() {
    const { walk } = this;
    const stops = stopsOf(walk.survey);
    const stop = stops.find(({ key }) => key === this.key);
    if (!stop) return this.gone();
    const stage = this.stageOf(stop);
    const body =
      stage === "cautions"
        ? this.gate(stop)
        : stage === "kept"
          ? this.kept(stop, stops)
          : html`<div class="panel" @taken=${(event: CustomEvent<TakenAtStop>) => this.take(stop, event.detail)} @pass=${() => this.pass(stop, stops)}>
            ${panelOf(stop, walk)}
          </div>`;
    return html`<section class="screen wide" aria-labelledby="head">
      ${this.top()}
      <p class="of" id="of"><bdi>${stop.name}</bdi></p>
      <h2 id="head" tabindex="-1" aria-describedby="of">${stopWords[stop.kind]!.ask}</h2>
      ${this.faults.map((fault) => html`<p class="wrong" role="alert">${fault}</p>`)} ${body}
    </section>`;
  }

  private gone() {
    return html`<section class="screen">
      ${this.top()}
      <h2 id="head" tabindex="-1">${walkWords.noSuchStop}</h2>
    </section>`;
  }

  private gate(stop: Stop) {
    const read = [...this.walk.draft.read, stop.part];
    return html`${this.cautions(stop.part)}
      <div class="grow"></div>
      <div class="foot">
        <button class="main" @click=${() => this.walk.keepDraft({ read })}>${walkWords.haveRead}</button>
      </div>`;
  }

  private take(stop: Stop, { set = [], at = stop.at, also = stop.also, ...taken }: TakenAtStop): void {
    const { survey: before, group } = this.walk.withGroup();
    const survey = set.reduce((next, [path, value]) => setField(next, path, value), before);
    const kept = keepTaken(survey, { at, also, group, when: this.walk.now(), ...taken });
    if (!kept) return;
    this.faults = newFaults(before, kept).map(faultWords);
    if (this.faults.length > 0) return;
    this.again = "";
    this.walk.keepStop(stop.key, emptyStop());
    this.walk.keepDraft({ passed: this.walk.draft.passed.filter((key) => key !== stop.key) });
    this.walk.change(kept);
  }

  private pass(stop: Stop, stops: readonly Stop[]): void {
    const { draft } = this.walk;
    const passed = [...new Set([...draft.passed, stop.key])];
    this.walk.keepDraft({ passed, route: after(this.walk.survey, this.walk.group, stops, stop, passed) });
  }

  private kept(stop: Stop, stops: readonly Stop[]) {
    const { walk } = this;
    const { stands, rows, value } = standingOf(walk.survey, stop);
    const said = stands ? standsSaid(walk, stop, stands) : valueSaid(walk, stop, value);
    const parts = stands && "figure" in stands && stop.unit ? walk.figure(stands.figure, stop.unit) : null;
    const mine = rows.filter((row) => row.group === walk.group).at(-1);
    const outcome = mine ? workOut(mine.how, mine.readings) : null;
    const notes = outcome && !("impossible" in outcome) ? outcome.notes : [];
    const questions = questionsFor(walk.survey, stop);
    const groups = new Set(rows.map(({ group }) => group)).size;
    return html`<p class="result" role="status">${measureWords.isKept(stopWords[stop.kind]!.name, "")}
        <strong>${parts?.text ?? said ?? mine?.figure}</strong>${
          parts?.doubt ? html`, ${measureWords.giveOrTake(parts.doubt)}` : nothing
        }</p>
      ${groups > 1 && stands ? html`<p class="note">${measureWords.middleOf(groups)}</p>` : nothing}
      ${mine?.guess !== undefined ? html`<p class="note">${measureWords.yourGuess(this.guessSaid(stop, mine.guess))}</p>` : nothing}
      ${notes.map((note) => html`<p class="note">${noteSentence(note, walk.show)}</p>`)}
      ${
        questions.length > 0
          ? html`<section class="aside">
              <h3>${measureWords.askAgain}</h3>
              ${questions.map((question) => html`<p>${questionSentence(question, walk.show)}</p>`)}
            </section>`
          : nothing
      }
      ${readingsPart(walk, stop)}
      <div class="grow"></div>
      <div class="foot">
        <button
          class="main"
          @click=${() => walk.go(after(walk.survey, walk.group, stops, stop, walk.draft.passed))}
        >${questions.length > 0 ? measureWords.leaveIt : measureWords.nextStop}</button>
        <button
          class="plain"
          @click=${() => {
            this.again = stop.key;
          }}
        >${walkWords.again}</button>
      </div>`;
  }

  private guessSaid(stop: Stop, guess: number | boolean | string): string {
    return valueSaid(this.walk, stop, guess) ?? String(guess);
  }
}

/** Questions about the fields that a stop fills. */
function questionsFor(survey: Survey, stop: Stop) {
  try {
    return questionsAbout(survey).filter(({ at }) => [stop.at, ...stop.also].includes(at));
  } catch {
    // a survey still being put together asks nothing yet
    return [];
  }
}

/** The route of the next stop that is open, in the walk's order after this one; the round where none is. */
function after(
  survey: Survey,
  group: string | undefined,
  stops: readonly Stop[],
  stop: Stop,
  passed: readonly string[],
): string {
  const at = stops.findIndex(({ key }) => key === stop.key);
  const rest = [...stops.slice(at + 1), ...stops.slice(0, at)];
  const next = rest.find((one) => !doneBy(survey, one, group) && !passed.includes(one.key));
  return next ? `stop/${next.key}` : "round";
}

customElements.define("gwb-walk-stop", StopScreen);
