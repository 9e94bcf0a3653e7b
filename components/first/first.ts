import { html, LitElement, nothing, type TemplateResult } from "lit";
import type { FirstOutcome } from "../../src/report/first-answer.ts";
import { openGarden_m2 } from "../../src/survey/first/drawn.ts";
import {
  type FirstEntries,
  type FirstEntry,
  madeEntries,
  sixEntries,
} from "../../src/survey/first/entries.ts";
import type { FirstLead, FirstMeasure } from "../../src/survey/first/lead.ts";
import {
  entryWords,
  firstWords,
  gardenEntry,
  mulchEntry,
  roofEntry,
  tankEntry,
} from "../../src/words/en/first.ts";
import { speakFirst } from "../../src/words/first-spoken.ts";
import "../fields/choice.ts";
import type { Entry } from "../fields/entry.ts";
import "../fields/entry.ts";
import type { App } from "../frame/app.ts";
import { sheetLook } from "../frame/look.ts";
import { sitePath } from "../frame/route.ts";
import { base, pressable } from "../look/base.ts";
import { type Begun, forgetBegun, keepBegun, readBegun } from "./begun.ts";
import { keepFirst } from "./keep.ts";
import { firstLook } from "./look.ts";
import "./place-field.ts";
import { readSize, type SizeName, shownText, sizeUnit } from "./sizes.ts";
import { type StandIn, standInPlace } from "./stand-in-place.ts";
import { type TapeRow, tape, tapeLook, withRow } from "./tape.ts";
import "./thirst-field.ts";
import "./today-field.ts";
import { workFirst } from "./work.ts";

/** Where each thing to be measured stands in the survey. */
const measureAt: Readonly<Record<FirstMeasure, string>> = {
  plants: "beds/garden/plants",
  soil: "beds/garden/soil",
  sky: "beds/garden/shade",
  flow: "beds/garden/watering",
  reach: "beds/garden/watering",
  roof: "roofs/roof",
  mulch: "beds/garden/mulch",
  today: "beds/garden/habit",
};

/** Said after a pause, so that one hears the answer and not every step to it. */
const pause_ms = 900;

/** The first answer: six entries on one screen, and what they come to from the first one on. */
export class First extends LitElement {
  static override properties = {
    app: { attribute: false },
    begun: { state: true },
    outcome: { state: true },
    isWorking: { state: true },
    rows: { state: true },
    standIn: { state: true },
    faults: { state: true },
    name: { state: true },
    keeping: { state: true },
    notKept: { state: true },
  };

  declare app: App;
  declare begun: Begun;
  declare outcome: FirstOutcome | null;
  declare isWorking: boolean;
  declare rows: readonly TapeRow[];
  declare standIn: StandIn | null;
  /** What is wrong with the place. */
  declare faults: readonly string[];
  /** As typed; null while the place's name stands in. */
  declare name: string | null;
  declare keeping: boolean;
  declare notKept: string;

  private saying: ReturnType<typeof setTimeout> | undefined;

  static override styles = [base, pressable, sheetLook, firstLook, tapeLook];

  constructor() {
    super();
    this.begun = readBegun();
    this.outcome = null;
    this.isWorking = false;
    this.rows = [];
    this.standIn = null;
    this.faults = [];
    this.name = null;
    this.keeping = false;
    this.notKept = "";
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.made.length > 0) void this.work();
    else void this.warmUp();
  }

  override disconnectedCallback(): void {
    clearTimeout(this.saying);
    super.disconnectedCallback();
  }

  private get entries(): FirstEntries {
    return this.begun.entries;
  }

  private get made(): FirstEntry[] {
    return madeEntries(this.entries);
  }

  /** Takes an entry in; an undefined one is taken out again. */
  private put(
    entries: Partial<Record<keyof FirstEntries, unknown>>,
    typed: Readonly<Record<string, string>> = {},
  ): void {
    const next = Object.fromEntries(
      Object.entries({ ...this.entries, ...entries }).filter(([, value]) => value !== undefined),
    ) as FirstEntries;
    const last = madeEntries(next).find((entry) => !this.made.includes(entry)) ?? this.made.at(-1) ?? "place";
    this.begun = { entries: next, typed: { ...this.begun.typed, ...typed } };
    keepBegun(this.begun);
    void this.work(last);
  }

  private async work(last: FirstEntry = this.made.at(-1) ?? "place"): Promise<void> {
    const { entries, made } = this;
    this.faults = [];
    if (made.length === 0) {
      this.outcome = null;
      this.rows = [];
      return;
    }
    this.isWorking = true;
    try {
      const standIn = entries.place ? null : await standInPlace();
      this.standIn = standIn;
      const told = await workFirst(this.app.compute, entries, standIn?.place, (outcome) => {
        this.outcome = outcome;
      });
      if (told === null) return;
      this.isWorking = false;
      if ("faults" in told) {
        this.faults = told.faults;
        this.outcome = null;
        return;
      }
      this.rows = withRow(this.rows, rowOf(told.outcome, last, made));
      this.sayLater(told.outcome);
    } catch {
      this.isWorking = false;
      this.faults = [firstWords.notReachedWeather];
    }
  }

  /** Has everything there before the first entry: the calculation, and the weather that may serve. */
  private async warmUp(): Promise<void> {
    const { place } = await standInPlace().catch(() => ({ place: undefined }));
    if (place && this.made.length === 0)
      await workFirst(this.app.compute, {}, place, () => {}).catch(() => {});
  }

  private sayLater(outcome: FirstOutcome): void {
    clearTimeout(this.saying);
    this.saying = setTimeout(() => {
      const { first, headline } = speakFirst(outcome, this.app.say);
      const words = headline.map((part) => (typeof part === "string" ? part : part.figure)).join("");
      this.app.speak([first, words].filter(Boolean).join(" "));
    }, pause_ms);
  }

  protected override render() {
    return html`
      <h2 class="unseen">${firstWords.title}</h2>
      <section class="answer ${this.isWorking ? "is-old" : ""}" aria-label=${firstWords.answer} aria-busy=${this.isWorking}>
        ${this.answer()}
      </section>
      <div class="spread">
        <div class="entries">${this.sixEntries()} ${this.seventh()}</div>
        <div class="margin">${this.asides()}</div>
      </div>
      ${this.keepPart()}
      <p class="echo" aria-hidden="true">${this.echo()}</p>
    `;
  }

  private answer() {
    if (this.faults.length > 0) return html`<p class="headline">${this.faults[0]}</p>`;
    const { outcome } = this;
    if (!outcome)
      return html`<p class="headline ${this.isWorking ? "quiet" : ""}">
          ${this.isWorking ? firstWords.working : firstWords.begin}
        </p>
        <p class="lead">${firstWords.lead}</p>`;
    const { first, headline, after } = speakFirst(outcome, this.app.say);
    return html`${first ? html`<p class="first">${first}</p>` : nothing}
      <p class="headline">
        ${headline.map((part) => (typeof part === "string" ? part : html`<span class="figure">${part.figure}</span>`))}
      </p>
      <p class="lead">${after.map((sentence) => `${sentence} `)}</p>`;
  }

  private echo(): string {
    if (!this.outcome) return "";
    return speakFirst(this.outcome, this.app.say)
      .headline.map((part) => (typeof part === "string" ? part : part.figure))
      .join("");
  }

  private sixEntries() {
    const { place, thirst, grass = false, mulched, tank } = this.entries;
    return html`
      <div class="entry half" data-entry="place">
        <gwb-place-field
          .place=${place ?? null}
          @change=${(event: CustomEvent) => this.put({ place: event.detail.place ?? undefined })}
        ></gwb-place-field>
      </div>
      <div class="entry half" data-entry="garden">${this.size("garden", gardenEntry, "garden_m2")}</div>
      <div class="entry whole" data-entry="thirst">
        <gwb-thirst-field
          .value=${thirst}
          .grass=${grass}
          @change=${(event: CustomEvent) => this.put({ thirst: event.detail.thirst, grass: event.detail.grass || undefined })}
        ></gwb-thirst-field>
      </div>
      <div class="entry" data-entry="mulch">
        <gwb-choice
          .label=${mulchEntry.label}
          .hint=${mulchEntry.hint}
          .options=${[{ value: true, words: mulchEntry.yes }, { value: false, words: mulchEntry.no }]}
          .value=${mulched}
          @change=${(event: CustomEvent) => this.put({ mulched: event.detail.value })}
        ></gwb-choice>
      </div>
      <div class="entry" data-entry="roof">${this.size("roof", roofEntry, "roof_m2")}</div>
      <div class="entry" data-entry="tank">
        ${this.size("tank", tankEntry, "tank")}
        <gwb-choice
          .label=${tankEntry.which}
          .options=${[{ value: true, words: tankEntry.there }, { value: false, words: tankEntry.thought }]}
          .value=${tank?.isThere ?? this.begun.typed.tankIsThere !== "no"}
          .isShort=${true}
          @change=${(event: CustomEvent) => {
            const isThere = event.detail.value === true;
            this.put(tank ? { tank: { ...tank, isThere } } : {}, { tankIsThere: isThere ? "yes" : "no" });
          }}
        ></gwb-choice>
      </div>
    `;
  }

  private size(
    name: SizeName,
    words: { label: string; hint: string },
    field: "garden_m2" | "roof_m2" | "tank",
  ) {
    const { system } = this.app.say;
    const text = shownText(name, this.begun.typed, system);
    const read = readSize(name, text, system);
    const change = (event: CustomEvent<{ text: string }>) => {
      const typed = { [name]: event.detail.text, [`${name}-in`]: system };
      const now = readSize(name, event.detail.text, system);
      const value = "value" in now ? now.value : undefined;
      const isThere = this.begun.typed.tankIsThere !== "no";
      const entry = field === "tank" && value !== undefined ? { capacity_L: value, isThere } : value;
      this.put({ [field]: entry }, typed);
    };
    return html`<gwb-entry
      .label=${words.label}
      .hint=${words.hint}
      .text=${text}
      .unit=${sizeUnit(name, system)}
      .keys=${"decimal"}
      .width=${9}
      .error=${"wrong" in read ? read.wrong : ""}
      @change=${change}
    ></gwb-entry>`;
  }

  private seventh() {
    return html`<div class="entry whole" data-entry="today">
      <gwb-today-field
        .today=${this.entries.today}
        .typed=${this.begun.typed}
        .system=${this.app.say.system}
        @change=${(event: CustomEvent) => this.put({ today: event.detail.today }, event.detail.typed)}
      ></gwb-today-field>
    </div>`;
  }

  private asides() {
    const { outcome, made, standIn } = this;
    const open = sixEntries.filter((entry) => !made.includes(entry));
    return html`
      ${outcome?.lead ? this.narrow(outcome.lead) : nothing}
      ${this.rows.length > 1 ? tape(this.rows, outcome?.area_m2 ?? openGarden_m2, this.app.say) : nothing}
      ${outcome ? note(firstWords.howSure, firstWords.howSureWords(this.app.say.number(outcome.draws), String(outcome.years))) : nothing}
      ${standIn && outcome ? note(firstWords.standIn, standIn.words) : nothing}
      ${
        outcome && open.length > 0
          ? note(
              firstWords.openHead,
              firstWords.open(this.app.say.list(open.map((entry) => firstWords.openNames[entry]))),
            )
          : nothing
      }
      ${note(entryWords.cautions, html`${entryWords.measureCaution} ${this.entries.tank ? entryWords.tankCaution : nothing}`)}
    `;
  }

  private narrow(lead: FirstLead) {
    const share =
      lead.share !== null && lead.share >= 0.05 ? firstWords.ofWidth(this.app.say.share(lead.share)) : "";
    if (lead.is === "years") return note(firstWords.narrow, `${firstWords.narrowYears} ${share}`);
    const words =
      lead.is === "entry" ? firstWords.narrowEntry[lead.entry] : firstWords.narrowMeasure[lead.what];
    const go =
      lead.is === "entry"
        ? html`<button type="button" class="plain" @click=${() => this.toEntry(lead.entry)}>${firstWords.toEntry}</button>`
        : html`<button type="button" class="plain" @click=${() => void this.keep(measureAt[lead.what])}>
            ${firstWords.toMeasure}
          </button>`;
    return note(firstWords.narrow, html`${words}${share ? html`, ${share}` : "."} ${go}`);
  }

  private toEntry(entry: FirstEntry): void {
    const part = this.renderRoot.querySelector<HTMLElement>(`[data-entry="${entry}"] > *`);
    part?.scrollIntoView({ block: "center" });
    part?.focus({ preventScroll: true });
  }

  private keepPart() {
    const { place } = this.entries;
    if (this.made.length === 0) return nothing;
    return html`<section class="section keep" aria-labelledby="keep-name">
      <h3 id="keep-name">${firstWords.keep}</h3>
      <p class="lead">${place ? firstWords.keepLead : firstWords.keepPlace}</p>
      ${
        place
          ? html`<div class="row">
              <gwb-entry
                .label=${firstWords.keepName}
                .hint=${firstWords.keepNameHint}
                .text=${this.name ?? place.name}
                .width=${26}
                @change=${(event: CustomEvent<{ text: string }>) => {
                  event.stopPropagation();
                  this.name = event.detail.text;
                }}
              ></gwb-entry>
              <button type="button" class="press primary" ?disabled=${this.keeping} @click=${() => void this.keep("")}>
                ${this.keeping ? firstWords.keeping : firstWords.keepButton}
              </button>
            </div>`
          : nothing
      }
      ${this.notKept ? html`<p class="in-the-way" role="alert">${this.notKept}</p>` : nothing}
      <p><button type="button" class="plain" @click=${this.again}>${firstWords.again}</button></p>
    </section>`;
  }

  /** Makes a site of the entries, and goes to it: to what is to be measured, or to its answer. */
  private async keep(at: string): Promise<void> {
    // what is typed and not yet left counts too
    for (const entry of this.renderRoot.querySelectorAll<Entry>("gwb-entry")) entry.commit();
    const { place } = this.entries;
    if (!place || this.keeping) return;
    this.keeping = true;
    this.notKept = "";
    const kept = await keepFirst(this.entries, this.name?.trim() || place.name);
    this.keeping = false;
    if ("reason" in kept) {
      this.notKept = firstWords.notKept(kept.reason);
      return;
    }
    forgetBegun();
    this.app.go(at === "" ? sitePath(kept.id) : sitePath(kept.id, "walk", at));
  }

  private readonly again = (): void => {
    forgetBegun();
    this.begun = readBegun();
    this.outcome = null;
    this.rows = [];
    this.name = null;
    this.faults = [];
    this.toEntry("place");
  };
}

function note(head: string, words: string | TemplateResult): TemplateResult {
  return html`<div class="note" role="note"><strong>${head}</strong> ${words}</div>`;
}

function rowOf({ need_kL, area_m2 }: FirstOutcome, entry: FirstEntry, made: readonly FirstEntry[]): TapeRow {
  const per = (figure: number) => figure / area_m2;
  return { entry, made, need_kL_m2: { p10: per(need_kL.p10), p50: per(need_kL.p50), p90: per(need_kL.p90) } };
}

customElements.define("gwb-first", First);
