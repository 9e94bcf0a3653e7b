import { html, nothing } from "lit";
import { frameWords, keptWords } from "../../src/words/en/frame.ts";
import { keeping } from "../frame/keeping.ts";
import { PlaceElement } from "../frame/place-element.ts";
import { sheetLook } from "../frame/sheet-look.ts";
import type { Fault, VersionLine } from "../kept/answers.ts";
import { Answered, NotReached } from "../kept/sites-api.ts";
import { base, pressable } from "../look/base.ts";
import { takeOut } from "../start/deleted.ts";
import { versionsLook } from "./look.ts";
import { saveSurveyFile } from "./save-file.ts";

const shownAtFirst = 25;

interface Comparison {
  from: number;
  to: number;
  changes: readonly Fault[];
}

/** Every version of a site: undone, done again, compared, gone back to; and the site as files. */
export class Versions extends PlaceElement {
  static override properties = {
    ...PlaceElement.properties,
    lines: { state: true },
    comparison: { state: true },
    shown: { state: true },
    failed: { state: true },
    pair: { state: true },
  };

  declare lines: readonly VersionLine[] | null;
  declare comparison: Comparison | null;
  declare shown: number;
  declare failed: string;
  /** Versions chosen to be compared. */
  declare pair: readonly [number, number] | null;

  /** The version whose list is there. */
  private listedFor = "";

  static override styles = [base, pressable, sheetLook, versionsLook];

  constructor() {
    super();
    this.lines = null;
    this.comparison = null;
    this.shown = shownAtFirst;
    this.failed = "";
    this.pair = null;
  }

  protected override updated(): void {
    const now = `${this.model.id} ${this.model.state?.etag}`;
    if (now === this.listedFor) return;
    this.listedFor = now;
    void this.list();
  }

  private async list(): Promise<void> {
    const { api } = await keeping();
    await this.tried(async () => {
      this.lines = await api.versions(this.model.id);
    });
  }

  /** Does something, and says why where it could not be done. */
  private async tried(act: () => Promise<void>, said = ""): Promise<void> {
    this.failed = "";
    try {
      await act();
      if (said) this.app.speak(said);
    } catch (error) {
      if (error instanceof NotReached) this.failed = keptWords.failed(keptWords.notReached);
      else if (error instanceof Answered) this.failed = keptWords.failed(error.message);
      else throw error;
    }
  }

  protected override render() {
    const { state } = this.model;
    return html`
      <h2 class="headline">${keptWords.title}</h2>
      <p class="lead">${keptWords.lead}</p>
      ${this.failed ? html`<p class="in-the-way" role="alert">${this.failed}</p>` : nothing}
      ${state ? this.moves(state.undo, state.redo, state.draft !== null) : nothing}
      <section class="section" aria-labelledby="list">
        <h3 id="list">${keptWords.list}</h3>
        ${this.lines === null ? html`<p class="quiet">${frameWords.opening}</p>` : this.versions(this.lines)}
      </section>
      ${this.files()}
    `;
  }

  private moves(undo: string | null, redo: string | null, hasDraft: boolean) {
    const move = (way: "undo" | "redo", what: string | null) => html`<p>
      <button
        type="button"
        class="press"
        aria-describedby=${way}
        ?disabled=${what === null || hasDraft}
        @click=${() => void this.tried(() => this.model[way](), keptWords.done(what ?? ""))}
      >
        ${keptWords[way]}
      </button>
      <span class="hint" id=${way}>${what === null ? (way === "undo" ? keptWords.nothingToUndo : "") : firstLines(what)}</span>
    </p>`;
    return html`<div class="section">
      ${move("undo", undo)} ${redo === null ? nothing : move("redo", redo)}
      ${
        hasDraft
          ? html`<p>
              ${keptWords.draft}
              <button
                type="button"
                class="plain"
                @click=${() => void this.tried(() => this.model.kept.dropDraft())}
              >
                ${keptWords.dropDraft}
              </button>
            </p>`
          : nothing
      }
    </div>`;
  }

  private versions(lines: readonly VersionLine[]) {
    const now = this.model.state?.version;
    const more = lines.length - this.shown;
    return html`
      ${lines.length > 1 ? this.comparing(lines) : nothing}
      <ol class="versions" reversed>
        ${lines.slice(0, this.shown).map(
          ({ number, savedAt, words }) => html`<li>
            <span class="hint"
              >${keptWords.number(String(number))}<br /><time datetime=${savedAt}>${whens.format(new Date(savedAt))}</time></span
            >
            <span class="what ${number === now ? "now" : ""}" dir="auto">${firstLines(words)}</span>
            ${
              number === now
                ? html`<span class="hint">${keptWords.now}</span>`
                : html`<button
                    type="button"
                    class="plain"
                    aria-label="${keptWords.restore}: ${keptWords.number(String(number))}"
                    @click=${() => void this.tried(() => this.model.kept.restore(number), keptWords.restored(String(number)))}
                  >
                    ${keptWords.restore}
                  </button>`
            }
          </li>`,
        )}
      </ol>
      ${
        more > 0
          ? html`<p>
              <button
                type="button"
                class="plain"
                @click=${() => {
                  this.shown += 200;
                }}
              >
                ${keptWords.more(more)}
              </button>
            </p>`
          : nothing
      }
    `;
  }

  private comparing(lines: readonly VersionLine[]) {
    const numbers = lines.map(({ number }) => number);
    const [from, to] = this.pair ?? [numbers[1] ?? 1, numbers[0] ?? 1];
    const chooser = (words: string, chosen: number, choose: (number: number) => void) => html`<label
      >${words}
      <select
        @change=${(event: Event) => {
          event.stopPropagation();
          choose(Number((event.target as HTMLSelectElement).value));
        }}
      >
        ${numbers.map((number) => html`<option value=${number} ?selected=${number === chosen}>${keptWords.number(String(number))}</option>`)}
      </select></label
    >`;
    return html`<div class="row">
        <button type="button" class="press" @click=${() => void this.compare(from, to)}>${keptWords.compare}</button>
        ${chooser(keptWords.from, from, (number) => {
          this.pair = [number, to];
        })}
        ${chooser(keptWords.to, to, (number) => {
          this.pair = [from, number];
        })}
      </div>
      ${this.comparison ? this.compared(this.comparison) : nothing}`;
  }

  private compared({ from, to, changes }: Comparison) {
    return html`<div class="in-the-way" role="status">
      <h3>${keptWords.comparison(String(from), String(to))}</h3>
      ${
        changes.length === 0
          ? html`<p>${keptWords.same}</p>`
          : html`<ol>
              ${changes.map(({ sentence }) => html`<li><bdi>${sentence}</bdi></li>`)}
            </ol>`
      }
    </div>`;
  }

  private async compare(from: number, to: number): Promise<void> {
    const { api } = await keeping();
    await this.tried(async () => {
      this.comparison = { from, to, changes: await api.compare(this.model.id, from, to) };
    });
  }

  private files() {
    const { model } = this;
    const address = `/api/sites/${encodeURIComponent(model.id)}`;
    const file = (path: string, words: string) =>
      html`<li><a href="${address}/${path}" download>${words}</a></li>`;
    return html`<section class="section" aria-labelledby="files">
      <h3 id="files">${keptWords.files}</h3>
      <ul class="files">
        <li>
          <a href="${address}/export" download aria-describedby="export">${keptWords.exportSite}</a>
          <span class="hint" id="export">${keptWords.exportHint}</span>
        </li>
        <li>
          <button type="button" class="plain" @click=${() => model.survey && saveSurveyFile(model.survey)}>
            ${keptWords.exportSurvey}
          </button>
        </li>
        ${model.state?.weather ? file("weather", keptWords.weather) : nothing}
        ${(model.state?.log.entries ?? 0) > 0 ? file("log", keptWords.log) : nothing}
      </ul>
      <p>
        <button type="button" class="plain" aria-describedby="out" @click=${() => void this.takeOut()}>
          ${keptWords.takeOut}
        </button>
        <span class="hint" id="out">${keptWords.takeOutHint}</span>
      </p>
    </section>`;
  }

  private async takeOut(): Promise<void> {
    await this.tried(async () => {
      await takeOut(this.model.id);
      this.app.go("/");
    });
  }
}

const whens = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

const mostLines = 6;

/** What changed, its first lines; the rest is in the comparison. */
function firstLines(words: string): string {
  const lines = words.split("\n");
  return lines.length <= mostLines ? words : [...lines.slice(0, mostLines - 1), "…"].join("\n");
}

customElements.define("gwb-versions", Versions);
