import { html, LitElement, nothing } from "lit";
import type { FirstOutcome } from "../../src/report/first-answer.ts";
import { type FirstEntries, type FirstEntry, madeEntries } from "../../src/survey/first/entries.ts";
import type { FirstMeasure } from "../../src/survey/first/lead.ts";
import { firstWords } from "../../src/words/en/first.ts";
import "../fields/choice.ts";
import type { Entry } from "../fields/entry.ts";
import "../fields/entry.ts";
import type { App } from "../frame/app.ts";
import { sitePath } from "../frame/route.ts";
import { sheetLook } from "../frame/sheet-look.ts";
import { base, pressable } from "../look/base.ts";
import { allEntries } from "./all-entries.ts";
import { answerPart, headlineText, waitingPart } from "./answer-part.ts";
import { asides } from "./asides.ts";
import { type Begun, forgetBegun, keepBegun, readBegun } from "./begun.ts";
import { keepFirst } from "./keep.ts";
import { type KeepParts, keepPart } from "./keep-part.ts";
import { firstLook } from "./look.ts";
import "./place-field.ts";
import { type StandIn, standInPlace } from "./stand-in-place.ts";
import { type TapeRow, tapeLook, withRow } from "./tape.ts";
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
    isSeen: { state: true },
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
  /** Whether the answer itself is in view: else it is said again below. */
  declare isSeen: boolean;

  private readonly sight = new IntersectionObserver(([entry]) => {
    this.isSeen = entry?.isIntersecting ?? true;
  });
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
    this.isSeen = true;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // what has the focus is not to lie under the answer that is said again below
    document.documentElement.style.setProperty("scroll-padding-bottom", "6rem");
    if (this.made.length > 0) void this.work();
    else void this.warmUp();
  }

  protected override firstUpdated(): void {
    const answer = this.renderRoot.querySelector(".answer");
    if (answer) this.sight.observe(answer);
  }

  override disconnectedCallback(): void {
    clearTimeout(this.saying);
    this.sight.disconnect();
    document.documentElement.style.removeProperty("scroll-padding-bottom");
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
      this.app.speak(headlineText(outcome, this.app.say));
    }, pause_ms);
  }

  protected override render() {
    return html`
      <h2 class="unseen">${firstWords.title}</h2>
      <section class="answer ${this.isWorking ? "is-old" : ""}" aria-label=${firstWords.answer} aria-busy=${this.isWorking}>
        ${this.answer()}
      </section>
      <div class="spread">
        <div class="entries">${allEntries({ begun: this.begun, say: this.app.say, put: (entries, typed) => this.put(entries, typed) })}</div>
        <div class="margin">
          ${asides({
            entries: this.entries,
            outcome: this.outcome,
            rows: this.rows,
            standIn: this.standIn,
            say: this.app.say,
            toEntry: (entry) => this.toEntry(entry),
            measure: (what) => void this.keep(measureAt[what]),
          })}
        </div>
      </div>
      ${this.made.length > 0 ? keepPart(this.keepParts) : nothing}
      ${
        this.outcome
          ? html`<p class="echo ${this.isSeen ? "unseen-while-above" : ""}" aria-hidden="true">${headlineText(this.outcome, this.app.say)}</p>`
          : nothing
      }
    `;
  }

  private answer() {
    if (this.faults.length > 0) return html`<p class="headline">${this.faults[0]}</p>`;
    return this.outcome ? answerPart(this.outcome, this.app.say) : waitingPart(this.isWorking);
  }

  private toEntry(entry: FirstEntry): void {
    const part = this.renderRoot.querySelector<HTMLElement>(`[data-entry="${entry}"] > *`);
    part?.scrollIntoView({ block: "center" });
    part?.focus({ preventScroll: true });
  }

  private get keepParts(): KeepParts {
    return {
      place: this.entries.place ?? null,
      name: this.name,
      isKeeping: this.keeping,
      notKept: this.notKept,
      setName: (name) => {
        this.name = name;
      },
      keep: () => void this.keep(""),
      again: this.again,
    };
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
    this.app.go(at === "" ? sitePath(kept.id) : sitePath(kept.id, "survey", at));
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

function rowOf({ need_kL, area_m2 }: FirstOutcome, entry: FirstEntry, made: readonly FirstEntry[]): TapeRow {
  const per = (figure: number) => figure / area_m2;
  return { entry, made, need_kL_m2: { p10: per(need_kL.p10), p50: per(need_kL.p50), p90: per(need_kL.p90) } };
}

customElements.define("gwb-first", First);
