import { css, html, nothing, type PropertyValues } from "lit";
import { walkKey } from "../../../src/survey/measuring/key.ts";
import { thirsts } from "../../../src/survey/words.ts";
import { thirstKey } from "../../../src/tables/keys.ts";
import { litresWords, thirstPanelWords } from "../../../src/words/en/walk-aids.ts";
import { thirstSaid } from "../../../src/words/en/walk-answers.ts";
import { measureWords } from "../../../src/words/en/walk-screens.ts";
import { wayWords } from "../../../src/words/en/walk-ways.ts";
import type { Weighed } from "../context.ts";
import { setField } from "../keep.ts";
import { NotesPanel } from "./notes.ts";
import "../aids/key.ts";
import "../aids/plant-search.ts";
import "./planting-kind.ts";

type Way = "" | "thirst-key" | "list";

/** Thirst: guessed, then judged by what can be seen, or looked up; what each class means in litres stands beside it. */
export class ThirstPanel extends NotesPanel {
  static override properties = { ...NotesPanel.properties, litres: { state: true } };

  declare litres: (number | null)[];

  static override styles = [
    ...NotesPanel.styles,
    css`
      .litres {
        white-space: nowrap;
      }
    `,
  ];

  constructor() {
    super();
    this.litres = [];
  }

  private get way(): Way {
    return this.note("way") as Way;
  }

  private get answers(): number[] {
    return this.note("answers") === "" ? [] : this.note("answers").split(",").map(Number);
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("stop") && changed.get("stop")?.key !== this.stop.key) void this.weighClasses();
  }

  /** The bed's need with each class in turn. */
  private async weighClasses(): Promise<void> {
    const { weigh, survey } = this.walk;
    this.litres = [];
    if (!weigh) return;
    const of = async (thirst: string): Promise<Weighed | null> =>
      weigh(setField(survey, this.stop.at, thirst)).catch(() => null);
    const weighed: (Weighed | null)[] = [];
    for (const thirst of thirsts) weighed.push(await of(thirst));
    this.litres = weighed.map((one) => one?.beds.get(this.stop.id) ?? null);
  }

  protected override render() {
    if (this.note("guess") === "") return this.guess();
    if (this.way === "thirst-key") return this.key();
    return this.way === "list" ? this.list() : this.ways();
  }

  private get about() {
    return html`<gwb-planting-kind .walk=${this.walk} .stop=${this.stop}></gwb-planting-kind>`;
  }

  private guess() {
    return html`${this.about}
      <p class="lead">${thirstPanelWords.guess}</p>
      ${this.classes("", (thirst) => this.keepNote("guess", thirst))}
      <div class="grow"></div>
      <div class="foot">
        <button class="main" @click=${() => this.keepNote("guess", "none")}>${measureWords.noGuess}</button>
        ${this.pass()}
      </div>`;
  }

  /** The four classes in words, each with what it means in litres. */
  private classes(chosen: string, choose: (thirst: string) => void) {
    return html`<div class="answers">
      ${thirsts.map((thirst, i) => {
        const litres = this.litres[i];
        return html`<button class="answer" aria-pressed=${chosen === thirst} @click=${() => choose(thirst)}>
          <span class="words">${thirstSaid(thirst)}</span>
          <span class="end litres">${
            litres === null || litres === undefined
              ? nothing
              : litresWords.classNeeds(this.walk.about(litres, "L"))
          }</span>
        </button>`;
      })}
    </div>`;
  }

  private ways() {
    const { guess } = { guess: this.note("guess") };
    return html`${this.about}
      ${guess !== "none" ? html`<p class="note">${measureWords.yourGuess(thirstSaid(guess))}</p>` : nothing}
      <p class="lead">${measureWords.howWill}</p>
      <div class="answers">
        <button class="answer" @click=${() => this.keepNote("way", "thirst-key")}>
          <span class="words"><strong>${wayWords["thirst-key"]!.name}</strong>
            <span class="about">${wayWords["thirst-key"]!.how}</span></span>
        </button>
        <button class="answer" @click=${() => this.keepNote("way", "list")}>
          <span class="words"><strong>${thirstPanelWords.byName}</strong>
            <span class="about">${thirstPanelWords.byNameHow}</span></span>
        </button>
      </div>
      ${this.cautionLine()}
      <div class="grow"></div>
      <div class="foot">${this.pass()}</div>`;
  }

  private get guessed(): { guess?: string } {
    const guess = this.note("guess");
    return guess === "none" || guess === "" ? {} : { guess };
  }

  private key() {
    const { answers } = this;
    const end = answers.length > 0 ? walkKey(thirstKey, answers)?.end : undefined;
    const litres = end ? this.litres[(thirsts as readonly string[]).indexOf(end.is)] : null;
    return html`<gwb-walk-key
        .way=${"thirst-key"}
        .answers=${answers}
        .says=${thirstSaid}
        @answer=${(event: CustomEvent<{ answers: number[] }>) => this.keepNote("answers", event.detail.answers.join(","))}
      ></gwb-walk-key>
      ${litres === null || litres === undefined ? nothing : html`<p>${litresWords.bedNeeds(this.walk.about(litres, "L"))}</p>`}
      <div class="grow"></div>
      <div class="foot">
        <button
          class="main"
          ?disabled=${!end}
          @click=${() => this.take({ how: "thirst-key", readings: answers, ...this.guessed })}
        >${measureWords.keepIt}</button>
        <button class="plain" @click=${() => this.keepNote("way", "")}>${measureWords.otherWay}</button>
      </div>`;
  }

  private list() {
    return html`<gwb-plant-search
        .typed=${this.note("plant")}
        @type=${(event: CustomEvent<{ text: string }>) => this.keepNote("plant", event.detail.text)}
        @plant=${(event: CustomEvent<{ genus: string; thirst: string }>) => {
          const { genus, thirst } = event.detail;
          this.take({ how: "plant list", readings: [], word: thirst, text: genus, ...this.guessed });
        }}
      ></gwb-plant-search>
      <div class="grow"></div>
      <div class="foot">
        <button class="plain" @click=${() => this.keepNote("way", "")}>${measureWords.otherWay}</button>
        ${this.pass()}
      </div>`;
  }
}

customElements.define("gwb-walk-thirst", ThirstPanel);
