import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { choicesPage } from "../../src/words/en/choices-page.ts";
import { type Formatter, formatter } from "../../src/words/format.ts";
import { sheet } from "../answer/parts.ts";
import type { Chart } from "../charts/chart.ts";
import "../charts/plate.ts";
import { base, pressable } from "../look/base.ts";
import { provenanceLines } from "../look/provenance.ts";
import { Asking } from "./asking.ts";
import { withBudget, withPlan } from "./edits.ts";
import { linkTo } from "./link.ts";
import type { GivenWeather, Told, ToldFault } from "./messages.ts";
import type { OpenCell } from "./opening.ts";
import { paper } from "./paper.ts";
import { answerPart } from "./parts/answer.ts";
import { contents, refused } from "./parts/around.ts";
import { briefPart } from "./parts/brief.ts";
import { budgetPart } from "./parts/budget.ts";
import { measuresPart } from "./parts/measures.ts";
import { moneyPart, sharesPart } from "./parts/money.ts";
import { sizesPart } from "./parts/sizes.ts";
import { surePart } from "./parts/sure.ts";
import { weatherPart } from "./parts/weather.ts";
import { type Acts, type Drawing, type Screen, saidOf } from "./screen.ts";
import { questionsOf, readState, type ScreenState, writeState } from "./state.ts";
import { choicesStyles } from "./styles.ts";

/** Draws made without being asked for. */
const firstDraws = 200;
const seed = 1;
/** After so long without another change of a quote the rest is worked out again. */
const calm_ms = 900;

/**
 * Choices: is another tank worth it, or what else first. The answer in a sentence with its width, measures and their
 * quotes, sizes, the best set for each budget, shares, money, draws, other weather, and the brief to print.
 *
 * @property survey what is decided upon; one that was told comes back without being worked out again
 * @property weather the record as CSV text or read; null: the survey's own normals
 * @property say how numbers and units are written
 * @property version when the survey was saved, in words, for the brief
 * @fires change `{ survey }`: the whole survey after a quote, a tick or a proposal taken
 */
export class Choices extends LitElement {
  static override properties = {
    survey: { attribute: false },
    weather: { attribute: false },
    say: { attribute: false },
    version: { attribute: false },
    now: { state: true },
    choices: { state: true },
    faults: { state: true },
    drawing: { state: true },
    isStale: { state: true },
    isWorking: { state: true },
    typed: { state: true },
    copied: { state: true },
    opened: { state: true },
  };

  declare survey: Survey | null;
  declare weather: GivenWeather;
  declare say: Formatter;
  declare version: string | null;
  /** The survey as it stands here. */
  declare now: Survey | null;
  declare choices: GroundsChoices | null;
  /** What stands in the way; a crash has no path. */
  declare faults: readonly ToldFault[];
  declare drawing: Drawing;
  declare isStale: boolean;
  declare isWorking: boolean;
  declare typed: ReadonlyMap<string, string>;
  declare copied: string | true | null;
  declare opened: OpenCell | null;

  private asked: ScreenState = readState("");
  private readonly asking = new Asking((told) => this.hear(told));
  private charts = new Map<string, { of: unknown; say: Formatter; chart: Chart }>();
  private calm: ReturnType<typeof setTimeout> | undefined;
  private told: Survey | null = null;

  static override styles = [base, pressable, sheet, provenanceLines, choicesStyles, paper];

  constructor() {
    super();
    this.survey = null;
    this.weather = null;
    this.say = formatter("metric", undefined);
    this.version = null;
    this.now = null;
    this.choices = null;
    this.faults = [];
    this.drawing = { done: 0, of: 0, isGoing: false };
    this.isStale = false;
    this.isWorking = false;
    this.typed = new Map();
    this.copied = null;
    this.opened = null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.asked = readState(location.hash);
    addEventListener("hashchange", this.linked);
    if (this.now) this.decide(false);
  }

  override disconnectedCallback(): void {
    removeEventListener("hashchange", this.linked);
    clearTimeout(this.calm);
    this.asking.stop();
    super.disconnectedCallback();
  }

  private readonly linked = (): void => {
    this.asked = readState(location.hash);
    this.begin();
  };

  protected override willUpdate(changed: PropertyValues<this>): void {
    const isOwn = changed.has("survey") && this.told !== null && same(this.survey, this.told);
    if ((changed.has("survey") && !isOwn) || changed.has("weather")) this.begin();
  }

  private begin(): void {
    const { survey, asked } = this;
    const planned = survey && asked.plan ? withPlan(survey, asked.plan) : survey;
    this.now = planned && asked.budget !== null ? withBudget(planned, asked.budget) : planned;
    this.choices = null;
    this.decide(false);
  }

  private decide(isMoneyAlone: boolean): void {
    clearTimeout(this.calm);
    if (!this.now) return;
    this.isWorking = true;
    const questions = questionsOf(this.asked.own);
    this.asking.decide(
      { survey: this.now, weather: this.weather, budget: null, questions, draws: firstDraws, seed },
      isMoneyAlone,
    );
  }

  private hear(told: Told): void {
    switch (told.kind) {
      case "decided":
        this.choices = told.document;
        this.faults = [];
        this.isWorking = false;
        this.isStale = false;
        this.drawing = { done: 0, of: firstDraws, isGoing: true };
        return;
      case "repriced":
        if (this.choices)
          this.choices = { ...this.choices, budget: this.now?.money?.budget ?? null, ...told.rows };
        return;
      case "drawn":
        this.drawing = { done: told.done, of: told.of, isGoing: !told.isLast };
        if (told.sureness && this.choices) this.choices = { ...this.choices, spread: told.sureness };
        return;
      case "faults":
        this.faults = told.faults;
        this.isWorking = false;
        return;
      case "crash":
        this.faults = [{ path: "", sentence: told.words }];
        this.isWorking = false;
    }
  }

  /** Money is redrawn at once; what takes seconds follows when nobody types any more. */
  private reprice(): void {
    if (!this.now) return;
    if (this.choices?.spread) {
      const { spread: _, ...choices } = this.choices;
      this.choices = choices;
    }
    this.isStale = true;
    this.drawing = { ...this.drawing, done: 0, isGoing: false };
    this.asking.reprice({ survey: this.now, budget: null });
    clearTimeout(this.calm);
    this.calm = setTimeout(() => this.decide(true), calm_ms);
  }

  private tell(): void {
    this.told = this.now;
    this.dispatchEvent(
      new CustomEvent("change", { detail: { survey: this.now }, bubbles: true, composed: true }),
    );
  }

  private readonly acts: Acts = {
    money: (survey, isDone) => {
      if (survey !== this.now && !same(survey, this.now)) {
        this.now = survey;
        this.asked = { ...this.asked, budget: null };
        this.reprice();
      }
      if (!isDone || same(this.now, this.told ?? this.survey)) return;
      this.keep();
      this.tell();
    },
    water: (survey) => {
      this.now = survey;
      this.asked = { ...this.asked, plan: null };
      this.keep();
      this.decide(false);
      this.tell();
    },
    state: (change) => {
      this.asked = { ...this.asked, ...change };
      this.keep();
      if ("own" in change) this.decide(true);
      this.requestUpdate();
    },
    stopDraws: () => this.asking.stopDraws(),
    drawOn: (draws) => {
      this.drawing = { ...this.drawing, of: draws, isGoing: true };
      this.asking.drawOn(draws);
    },
    typed: (field, text) => {
      const typed = new Map(this.typed);
      if (text === null) typed.delete(field);
      else typed.set(field, text);
      this.typed = typed;
    },
    open: (cell) => {
      this.opened = cell;
    },
  };

  private readonly explain = (at: string) => this.asking.explain(at, this.say.system);

  /** The address holds what the screen shows, so that it can be passed on. */
  private keep(): void {
    const state = writeState(this.asked);
    const address = new URL(location.href);
    address.hash = state;
    history.replaceState(history.state, "", address);
  }

  private readonly copyLink = async (): Promise<void> => {
    if (!this.now) return;
    const address = linkTo(this.now, this.asked, location.href);
    try {
      await navigator.clipboard.writeText(address);
      this.copied = true;
    } catch {
      this.copied = address;
    }
  };

  private chart(key: string, of: unknown, make: () => Chart): Chart {
    const kept = this.charts.get(key);
    if (kept && kept.of === of && kept.say === this.say) return kept.chart;
    const chart = make();
    this.charts.set(key, { of, say: this.say, chart });
    return chart;
  }

  protected override render() {
    const { now, choices, faults } = this;
    if (!now) return html`<p class="headline">${choicesPage.noSurvey}</p>`;
    if (faults.length > 0) return refused(faults);
    if (!choices) return html`<p class="headline" role="status">${choicesPage.working}</p>`;
    const screen: Screen = {
      choices,
      survey: now,
      state: this.asked,
      say: this.say,
      drawing: this.drawing,
      isStale: this.isStale,
      typed: this.typed,
      acts: this.acts,
      said: saidOf(now, choices.currency, this.say),
      chart: (key, of, make) => this.chart(key, of, make),
      explain: this.explain,
      open: this.opened,
    };
    const today = new Intl.DateTimeFormat(undefined, { dateStyle: "long" }).format(new Date());
    const { version, copied, copyLink } = this;
    return html`${contents(this.renderRoot)}
      <div class=${this.isWorking && !this.isStale ? "busy" : ""} aria-busy=${this.isWorking ? "true" : nothing}>
        ${answerPart(screen)} ${measuresPart(screen)} ${sizesPart(screen)} ${budgetPart(screen)} ${sharesPart(screen)}
        ${moneyPart(screen)} ${surePart(screen)} ${weatherPart(screen)}
        ${briefPart(screen, { version, today, copied, copyLink })}
      </div>`;
  }
}

function same(one: Survey | null, other: Survey | null): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}

customElements.define("gwb-choices", Choices);
