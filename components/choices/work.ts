import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { readRecord } from "../../src/files/record.ts";
import {
  type Decision,
  decide,
  type PricedRows,
  pricedRowsOf,
  repricedContext,
} from "../../src/report/choices.ts";
import type { ChoicesContext } from "../../src/report/choices-context.ts";
import { usualQuestions } from "../../src/report/choices-weather.ts";
import type { SpreadRun } from "../../src/report/spread.ts";
import { workOut } from "../../src/report/work-out.ts";
import type { Fault } from "../../src/survey/faults.ts";
import { type WeatherNotes, weatherForSurvey } from "../../src/survey/normals/for-survey.ts";
import { readSurvey } from "../../src/survey/read.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";
import { choiceCautionSentence } from "../../src/words/en/choices-reasons.ts";
import { faultWords } from "../../src/words/en/faults.ts";
import { refusalsOf } from "../../src/words/en/refusals.ts";
import {
  type Ask,
  type GivenWeather,
  type Prices,
  pricesOf,
  type Told,
  type ToldFault,
  withPrices,
} from "./messages.ts";
import type { Workings } from "./workings.ts";

const say = { caution: cautionSentence, choiceCaution: choiceCautionSentence };

/** What draws say is told after so many; between them only how many are made. */
const toldAt = [25, 100, 250, 500, 1000, 2500, 5000, 10_000];

type DecideAsk = Extract<Ask, { kind: "decide" }>;

interface Under {
  id: number;
  decision: Decision;
  run: SpreadRun;
}

/** The worker's desk: one decision at a time, its draws made between what else is asked. */
export class Desk {
  #under: Under | null = null;
  #held: Decision | null = null;
  /** The decision held, at the prices last asked of. */
  #priced: ChoicesContext | null = null;
  /** Fetched when the first figure is opened. */
  #workings: Workings | null = null;
  /** Draws wanted; what is made stays. */
  #wanted = 0;
  #drawing = false;
  readonly #tell: (told: Told) => void;

  constructor(tell: (told: Told) => void) {
    this.#tell = tell;
  }

  async hear(ask: Ask): Promise<void> {
    switch (ask.kind) {
      case "decide":
        return this.#decide(ask);
      case "ready":
        return this.#ready(ask);
      case "reprice":
        return this.#reprice(ask);
      case "explain":
        return this.#explain(ask);
      case "stop":
        this.#wanted = this.#under?.run.done() ?? 0;
        return;
      case "draw-on":
        this.#wanted = ask.draws;
        return this.#draw();
    }
  }

  async #decide({ id, survey: document, weather, budget, questions, draws, seed }: DecideAsk): Promise<void> {
    this.#under = null;
    this.#workings?.forget();
    const given = givenFor(document, weather);
    if ("faults" in given) return this.#tell({ kind: "faults", id, faults: given.faults });
    try {
      const worked = workOut(given.survey, given.record, { notes: given.notes });
      const asked = [...usualQuestions(worked.outcome.mains.byYear), ...questions];
      const decision = decide(worked, { budget, questions: asked });
      this.#tell({ kind: "decided", id, document: decision.document(say, null) });
      this.#under = { id, decision, run: decision.spread(seed) };
      this.#wanted = draws;
    } catch (error) {
      const refusals = refusalsOf(
        error,
        given.survey.beds.map((bed) => bed.id),
      );
      if (refusals === null) throw error;
      return this.#tell({ kind: "faults", id, faults: refusals });
    }
    return this.#draw();
  }

  /** What was faulty is told by the other worker. */
  #ready({ survey: document, weather, budget }: Extract<Ask, { kind: "ready" }>): void {
    const given = givenFor(document, weather);
    this.#held = null;
    if ("faults" in given) return;
    this.#held = decide(workOut(given.survey, given.record, { notes: given.notes }), { budget });
    this.#workings?.forget();
    // what runs it needs are then made
    this.#price(this.#held, pricesOf(document), budget);
  }

  #price(held: Decision, prices: Prices, budget: number | null): PricedRows {
    this.#priced = repricedContext(held, withPrices(held.context.worked.survey, prices), budget);
    return pricedRowsOf(this.#priced);
  }

  #reprice({ id, prices, budget }: Extract<Ask, { kind: "reprice" }>): void {
    if (this.#held) this.#tell({ kind: "repriced", id, rows: this.#price(this.#held, prices, budget) });
  }

  async #explain({ id, at, units, lang }: Extract<Ask, { kind: "explain" }>): Promise<void> {
    if (!this.#workings) this.#workings = new (await import("./workings.ts")).Workings();
    const decision = this.#under?.decision ?? this.#held;
    const context = this.#under ? this.#under.decision.context : this.#priced;
    const working =
      decision && context
        ? this.#workings.of({ decision, context, run: this.#under?.run ?? null }, at, { units, lang })
        : null;
    this.#tell({ kind: "working", id, working });
  }

  async #draw(): Promise<void> {
    if (this.#drawing) return;
    this.#drawing = true;
    try {
      while (this.#under && this.#under.run.done() < this.#wanted) {
        const { run } = this.#under;
        run.draw();
        const done = run.done();
        if (toldAt.includes(done) && done < this.#wanted) this.#report(false);
        else if (done % 5 === 0) this.#progress(done);
        await otherMessages();
      }
    } finally {
      this.#drawing = false;
    }
    if (this.#under && this.#under.run.done() > 0) this.#report(true);
  }

  #progress(done: number): void {
    const { id } = this.#under!;
    this.#tell({ kind: "drawn", id, done, of: this.#wanted, sureness: null, isLast: false });
  }

  #report(isLast: boolean): void {
    const { id, decision, run } = this.#under!;
    const sureness = decision.sureness(run.outcome());
    this.#tell({
      kind: "drawn",
      id,
      done: run.done(),
      of: Math.max(run.done(), this.#wanted),
      sureness,
      isLast,
    });
  }
}

/** Lets what was asked meanwhile be heard. */
function otherMessages(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

interface Given {
  survey: Survey;
  record: WeatherRecord;
  notes?: WeatherNotes;
}

/** A record is read once for each text: the survey changes far more often. */
let lastRead: { text: string; record: WeatherRecord } | null = null;

function givenFor(document: Survey, weather: GivenWeather): Given | { faults: ToldFault[] } {
  const read = readSurvey(document);
  if ("faults" in read) return { faults: read.faults.map(told) };
  const { survey } = read;
  if (weather === null) {
    const found = weatherForSurvey(survey, null);
    return "faults" in found
      ? { faults: found.faults.map(told) }
      : { survey, record: found.record, notes: found.notes };
  }
  if (typeof weather !== "string") return { survey, record: weather };
  if (lastRead?.text !== weather) {
    const record = readRecord(weather);
    if ("faults" in record) return { faults: record.faults.map(told) };
    lastRead = { text: weather, record: record.record };
  }
  return { survey, record: lastRead.record };
}

function told(fault: Fault): ToldFault {
  return { path: fault.path, sentence: faultWords(fault) };
}
