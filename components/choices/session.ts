import type { Working } from "../../src/explain/working.ts";
import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import { Asking } from "./asking.ts";
import { briefAddresses } from "./brief-addresses.ts";
import { withBudget, withPlan } from "./edits.ts";
import { linkTo } from "./link.ts";
import { type GivenWeather, pricesOf, type Told, type ToldFault } from "./messages.ts";
import type { OpenCell } from "./opening.ts";
import type { Acts, Drawing } from "./screen.ts";
import { questionsOf, readState, type ScreenState, writeState } from "./state.ts";

/** Draws made without being asked for. */
const firstDraws = 200;
const seed = 1;
/** After so long without another change of a quote the rest is worked out again. */
const calm_ms = 900;
/** What is typed is shown at the latest after so long, should the worker not answer. */
const patience_ms = 90;

/** What the element around a session does for it. */
export interface SessionHost {
  /** Draws anew; while somebody types a quote, what its money touches first. */
  draw(isTyping: boolean): void;
  /** Tells the survey to whoever keeps it. */
  tell(survey: Survey): void;
}

/** One survey being decided upon: what is typed, what is asked of the workers, and what they have told. */
export class Session {
  /** The survey as it stands here. */
  now: Survey | null = null;
  choices: GroundsChoices | null = null;
  /** What stands in the way; a crash has no path. */
  faults: readonly ToldFault[] = [];
  drawing: Drawing = { done: 0, of: 0, isGoing: false };
  isStale = false;
  isWorking = false;
  readonly typed = new Map<string, string>();
  /** Fields whose text is no number. */
  readonly wrong = new Set<string>();
  opened: OpenCell | null = null;
  copied: string | true | null = null;
  /** What prints behind the brief; null where nobody asked. */
  workings: readonly Working[] | null = null;
  asked: ScreenState = readState("");

  #weather: GivenWeather = null;
  #told: Survey | null = null;
  #calm: ReturnType<typeof setTimeout> | undefined;
  #patience: ReturnType<typeof setTimeout> | undefined;
  readonly #host: SessionHost;
  readonly #asking = new Asking((told) => this.#hear(told));

  constructor(host: SessionHost) {
    this.#host = host;
  }

  /** @returns whether the survey is the one told last, which is not worked out again */
  isOwn(survey: Survey | null): boolean {
    return this.#told !== null && same(survey, this.#told);
  }

  begin(survey: Survey | null, weather: GivenWeather): void {
    this.asked = readState(location.hash);
    this.#weather = weather;
    const { plan, budget } = this.asked;
    const planned = survey && plan ? withPlan(survey, plan) : survey;
    this.now = planned && budget !== null ? withBudget(planned, budget) : planned;
    this.choices = null;
    this.#told = survey;
    this.#decide(false);
  }

  stop(): void {
    clearTimeout(this.#calm);
    clearTimeout(this.#patience);
    this.#asking.stop();
  }

  /** The workings of figures, from the worker that has them. */
  explain(at: string, units: UnitSystem): Promise<Working | null> {
    return this.#asking.explain(at, units);
  }

  async copyLink(): Promise<void> {
    if (!this.now) return;
    const address = linkTo(this.now, this.asked, location.href);
    try {
      await navigator.clipboard.writeText(address);
      this.copied = true;
    } catch {
      this.copied = address;
    }
    this.#host.draw(false);
  }

  /** The workings of the brief's figures, to print behind it. */
  async workOut(units: UnitSystem): Promise<void> {
    if (!this.choices) return;
    const asked = briefAddresses(this.choices).map((at) => this.explain(at, units));
    this.workings = (await Promise.all(asked)).filter((working) => working !== null);
    this.#host.draw(false);
  }

  readonly acts: Acts = {
    money: (change, isDone) => {
      const survey = this.now && change(this.now);
      if (!survey) return;
      if (!samePrices(survey, this.now)) {
        this.now = survey;
        this.asked = { ...this.asked, budget: null };
        this.#reprice();
      }
      if (!isDone || same(this.now, this.#told)) return;
      this.#keep();
      this.#tell(survey);
    },
    water: (change) => {
      if (!this.now) return;
      this.now = change(this.now);
      this.asked = { ...this.asked, plan: null };
      this.#keep();
      this.#decide(false);
      this.#tell(this.now);
    },
    state: (change) => {
      this.asked = { ...this.asked, ...change };
      this.#keep();
      if ("own" in change) this.#decide(true);
      this.#host.draw(false);
    },
    stopDraws: () => this.#asking.stopDraws(),
    drawOn: (draws) => {
      this.drawing = { ...this.drawing, of: draws, isGoing: true };
      this.#asking.drawOn(draws);
      this.#host.draw(false);
    },
    typed: (field, text, isRight) => {
      if (text === null) this.typed.delete(field);
      else this.typed.set(field, text);
      // the field shows itself what is typed in it
      const isTold = text !== null && isRight !== this.wrong.has(field);
      if (isRight) this.wrong.delete(field);
      else this.wrong.add(field);
      if (!isTold) this.#host.draw(text !== null);
    },
    open: (cell) => {
      this.opened = cell;
      this.#host.draw(false);
    },
  };

  #decide(isMoneyAlone: boolean): void {
    clearTimeout(this.#calm);
    this.workings = null;
    this.#host.draw(false);
    if (!this.now) return;
    this.isWorking = true;
    const questions = questionsOf(this.asked.own);
    this.#asking.decide(
      { survey: this.now, weather: this.#weather, budget: null, questions, draws: firstDraws, seed },
      isMoneyAlone,
    );
  }

  #hear(told: Told): void {
    switch (told.kind) {
      case "decided":
        this.choices = told.document;
        this.faults = [];
        this.isWorking = false;
        this.isStale = false;
        this.drawing = { done: 0, of: firstDraws, isGoing: true };
        break;
      case "repriced":
        clearTimeout(this.#patience);
        if (this.choices)
          this.choices = { ...this.choices, budget: this.now?.money?.budget ?? null, ...told.rows };
        this.#host.draw(true);
        return;
      case "drawn":
        this.drawing = { done: told.done, of: told.of, isGoing: !told.isLast };
        if (told.sureness && this.choices) this.choices = { ...this.choices, spread: told.sureness };
        break;
      case "faults":
        this.faults = told.faults;
        this.isWorking = false;
        break;
      case "crash":
        this.faults = [{ path: "", sentence: told.words }];
        this.isWorking = false;
    }
    this.#host.draw(false);
  }

  /** Money is redrawn at once; what takes seconds follows when nobody types any more. */
  #reprice(): void {
    if (!this.now) return;
    if (this.choices?.spread) {
      const { spread: _, ...choices } = this.choices;
      this.choices = choices;
    }
    this.isStale = true;
    this.workings = null;
    this.drawing = { ...this.drawing, done: 0, isGoing: false };
    this.#asking.reprice({ prices: pricesOf(this.now), budget: null });
    clearTimeout(this.#calm);
    clearTimeout(this.#patience);
    this.#calm = setTimeout(() => this.#decide(true), calm_ms);
    this.#patience = setTimeout(() => this.#host.draw(true), patience_ms);
  }

  #tell(survey: Survey): void {
    this.#told = survey;
    this.#host.tell(survey);
  }

  /** The address holds what the screen shows, so that it can be passed on. */
  #keep(): void {
    const address = new URL(location.href);
    address.hash = writeState(this.asked);
    history.replaceState(history.state, "", address);
  }
}

function samePrices(one: Survey, other: Survey | null): boolean {
  return other !== null && JSON.stringify(pricesOf(one)) === JSON.stringify(pricesOf(other));
}

function same(one: Survey | null, other: Survey | null): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
