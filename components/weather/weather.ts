import { css, html, nothing } from "lit";
import type { Given } from "../../src/survey/record/mapping.ts";
import type { Survey, SurveyNormals } from "../../src/survey/survey.ts";
import { weatherPlaceWords as words } from "../../src/words/en/frame.ts";
import { PlaceElement } from "../frame/place-element.ts";
import { sitePath } from "../frame/route.ts";
import { sheetLook } from "../frame/sheet-look.ts";
import type { RecordPreview } from "../frame/work/preview.ts";
import { Answered, NotReached } from "../kept/sites-api.ts";
import { base, pressable } from "../look/base.ts";
import "./means.ts";
import { merged, previewLook, previewPart } from "./preview.ts";
import { siteFacts } from "./site-facts.ts";

const most_bytes = 40_000_000;

/** The weather that a site is worked out on: a record dropped in, means typed in, or those of its place. */
export class Weather extends PlaceElement {
  static override properties = {
    ...PlaceElement.properties,
    preview: { state: true },
    over: { state: true },
    says: { state: true },
    isBusy: { state: true },
    means: { state: true },
  };

  declare preview: RecordPreview | null;
  /** Whether a file hangs over the page. */
  declare over: boolean;
  declare says: string;
  declare isBusy: boolean;
  /** Whether the table of monthly means is open. */
  declare means: boolean;

  private text = "";
  private given: Given = {};

  static override styles = [
    base,
    pressable,
    sheetLook,
    previewLook,
    css`
      .over {
        position: fixed;
        z-index: 3;
        inset: 0;
        display: grid;
        place-items: center;
        background: color-mix(in srgb, var(--paper) 92%, transparent);
        font-size: 1.9rem;
        font-weight: 340;
        pointer-events: none;
      }
      .over::before {
        position: absolute;
        inset: 1.25rem;
        border: 2px dashed var(--ink);
        content: "";
      }
      .facts {
        max-width: 43rem;
      }
    `,
  ];

  constructor() {
    super();
    this.preview = null;
    this.over = false;
    this.says = "";
    this.isBusy = false;
    this.means = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("dragover", this.hover);
    addEventListener("dragleave", this.leave);
    addEventListener("drop", this.drop);
  }

  override disconnectedCallback(): void {
    removeEventListener("dragover", this.hover);
    removeEventListener("dragleave", this.leave);
    removeEventListener("drop", this.drop);
    super.disconnectedCallback();
  }

  private readonly hover = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    this.over = true;
  };

  private readonly leave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.over = false;
  };

  private readonly drop = (event: DragEvent): void => {
    const [file] = event.dataTransfer?.files ?? [];
    if (!file) return;
    event.preventDefault();
    this.over = false;
    void this.take(file);
  };

  private async take(file: File): Promise<void> {
    this.says = "";
    if (file.size > most_bytes) {
      this.says = words.tooLarge(file.name);
      return;
    }
    try {
      this.text = await file.text();
    } catch {
      this.says = words.unread(file.name);
      return;
    }
    this.given = {};
    await this.look(file.name);
  }

  /** Reads the file anew with what was said about it. */
  private async look(name: string, more: Given = {}): Promise<void> {
    this.given = merged(this.given, more);
    this.isBusy = true;
    const told = await this.app.compute.ask({ kind: "preview", name, text: this.text, given: this.given });
    if (told === null) return;
    this.isBusy = false;
    this.preview = told.preview;
    await this.updateComplete;
    if (Object.keys(more).length > 0) return;
    const part = this.renderRoot.querySelector<HTMLElement>("#preview");
    part?.scrollIntoView({ block: "start" });
    part?.focus({ preventScroll: true });
  }

  private async keep(act: () => Promise<void>, said: string): Promise<void> {
    try {
      await act();
      this.preview = null;
      this.says = said;
      this.app.speak(said);
    } catch (error) {
      if (error instanceof NotReached) this.says = words.failed(words.notReached);
      else if (error instanceof Answered) this.says = words.failed(error.message);
      else throw error;
    }
  }

  protected override render() {
    const { model } = this;
    const { survey, state } = model;
    if (!survey) return nothing;
    return html`
      <h2 class="headline">${this.counts(survey)}</h2>
      <p class="lead" role="status">${this.says}</p>
      <div class="spread">
        <div class="main facts">
          ${siteFacts(survey, model.weather, this.app.say.system, (change) => model.change(change(survey)))}
        </div>
        <div class="margin">${this.limits()}</div>
      </div>
      <section class="section" aria-labelledby="record">
        <h3 id="record">${words.record}</h3>
        <p class="lead hint" id="record-hint">${words.recordHint}</p>
        <p class="row">
          <label class="press file">
            <input
              type="file"
              accept=".csv,.tsv,.txt,text/csv,text/plain"
              aria-labelledby="record"
              aria-describedby="record-hint"
              @change=${this.chosen}
            />
            <span>${words.choose}</span>
          </label>
          ${
            state?.weather
              ? html`<button
                  type="button"
                  class="plain"
                  @click=${() => void this.keep(() => model.takeWeatherOut(), words.tookOut)}
                >
                  ${words.takeOut}
                </button>`
              : nothing
          }
        </p>
        ${
          this.preview
            ? previewPart(this.preview, {
                isBusy: this.isBusy,
                say: this.app.say,
                answer: (given) => void this.look(this.preview?.name ?? "", given),
                use: (record) =>
                  void this.keep(
                    () => model.putWeather(record.csv),
                    words.used(dateOf(record.from), dateOf(record.to)),
                  ),
                leave: () => {
                  this.preview = null;
                },
              })
            : nothing
        }
      </section>
      ${this.ownMeans(survey)}
      ${this.over ? html`<div class="over" aria-hidden="true"><p>${words.dropHere}</p></div>` : nothing}
    `;
  }

  /** What the site is worked out on now. */
  private counts(survey: Survey): string {
    const { weather, state } = this.model;
    if (state?.weather) {
      const { from, to, days } = state.weather;
      return words.fromRecord(dateOf(from), dateOf(to), this.app.say.number(days));
    }
    if (survey.site.normals) return words.fromOwn(survey.site.normals.source);
    if (weather?.is === "place") return words.fromPlace;
    return weather === null ? words.reading : words.none;
  }

  private limits() {
    const { weather } = this.model;
    if (weather?.is === "none")
      return html`<div class="note" role="note">${weather.faults.map(({ sentence }) => html`<p>${sentence}</p>`)}</div>`;
    if (weather?.is !== "place" || !weather.place) return nothing;
    return html`<div class="note" role="note">
      <strong>${words.limits}</strong> ${weather.place.limits.map((limit) => html`<span>${limit} </span>`)}
    </div>`;
  }

  private ownMeans(survey: Survey) {
    const { model, app } = this;
    const own = survey.site.normals;
    const put = (normals: SurveyNormals | undefined) => {
      const { normals: _, ...site } = survey.site;
      model.change({ ...survey, site: normals ? { ...site, normals } : site });
      this.means = false;
    };
    return html`<section class="section" aria-labelledby="means">
      <h3 id="means">${words.own}</h3>
      <p class="lead hint">${words.ownHint}</p>
      ${own && model.state?.weather ? html`<p class="hint">${words.recordWins}</p>` : nothing}
      <p class="row">
        <button
          type="button"
          class="press"
          aria-expanded=${this.means}
          @click=${() => {
            this.means = !this.means;
          }}
        >
          ${words.ownOpen}
        </button>
        ${own ? html`<button type="button" class="plain" @click=${() => put(undefined)}>${words.ownDrop}</button>` : nothing}
        ${own ? html`<a href=${sitePath(model.id, "survey", "weather")}>${words.ownInSurvey}</a>` : nothing}
      </p>
      ${
        this.means
          ? html`<gwb-means
              .normals=${own ?? null}
              .place=${model.weather && "place" in model.weather ? (model.weather.place?.normals ?? null) : null}
              .say=${app.say}
              @change=${(event: CustomEvent<{ normals: SurveyNormals }>) => put(event.detail.normals)}
            ></gwb-means>`
          : nothing
      }
    </section>`;
  }

  private readonly chosen = (event: Event): void => {
    event.stopPropagation();
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file)
      void this.take(file).then(() => {
        input.value = "";
      });
  };
}

const dates = new Intl.DateTimeFormat(undefined, { dateStyle: "long", timeZone: "UTC" });

function dateOf(iso: string): string {
  return dates.format(new Date(iso));
}

customElements.define("gwb-weather", Weather);
