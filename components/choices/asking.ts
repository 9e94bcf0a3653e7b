import type { Working } from "../../src/explain/working.ts";
import type { UnitSystem } from "../../src/units.ts";
import type { Ask, Told } from "./messages.ts";

type Decide = Omit<Extract<Ask, { kind: "decide" }>, "id" | "kind">;
type Reprice = Omit<Extract<Ask, { kind: "reprice" }>, "id" | "kind">;

/**
 * The page's end of the calculation: one worker for what takes seconds, and one that holds the same decision ready, so
 * that a changed quote never waits for the other. It hears only what was asked last.
 */
export class Asking {
  #deep: Worker | null = null;
  #quick: Worker | null = null;
  #last = 0;
  #decision = 0;
  #priced = 0;
  readonly #hear: (told: Told) => void;
  readonly #wanting = new Map<number, (working: Working | null) => void>();

  constructor(hear: (told: Told) => void) {
    this.#hear = hear;
  }

  /** @param isMoneyAlone whether the decision held ready still serves */
  decide(asked: Decide, isMoneyAlone: boolean): void {
    this.#last += 1;
    this.#decision = this.#last;
    this.#deep ??= this.#start();
    this.#deep.postMessage({ kind: "decide", id: this.#last, ...asked } satisfies Ask);
    if (isMoneyAlone && this.#quick) return;
    const { survey, weather, budget } = asked;
    this.#quick ??= this.#start();
    this.#quick.postMessage({ kind: "ready", survey, weather, budget } satisfies Ask);
  }

  reprice(asked: Reprice): void {
    this.#last += 1;
    this.#priced = this.#last;
    // draws made with the quotes of before say nothing any more
    this.#deep?.postMessage({ kind: "stop" } satisfies Ask);
    this.#quick?.postMessage({ kind: "reprice", id: this.#last, ...asked } satisfies Ask);
  }

  /** The working of a figure: of draws and other weather from the worker that made them, else from the quick one. */
  explain(at: string, units: UnitSystem): Promise<Working | null> {
    const worker = /^choices\/(sure|under|met)\//.test(at) ? this.#deep : this.#quick;
    if (!worker) return Promise.resolve(null);
    this.#last += 1;
    const id = this.#last;
    worker.postMessage({ kind: "explain", id, at, units, lang: navigator.language } satisfies Ask);
    return new Promise((resolve) => this.#wanting.set(id, resolve));
  }

  stopDraws(): void {
    this.#deep?.postMessage({ kind: "stop" } satisfies Ask);
  }

  drawOn(draws: number): void {
    this.#deep?.postMessage({ kind: "draw-on", draws } satisfies Ask);
  }

  stop(): void {
    this.#deep?.terminate();
    this.#quick?.terminate();
    this.#deep = null;
    this.#quick = null;
    for (const resolve of this.#wanting.values()) resolve(null);
    this.#wanting.clear();
  }

  #start(): Worker {
    const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<Told>) => {
      if (data.kind === "working") return this.#explained(data);
      if (data.kind === "crash" || data.id === this.#wanted(data.kind)) this.#hear(data);
    });
    worker.addEventListener("error", (event) => {
      this.stop();
      this.#hear({ kind: "crash", id: this.#last, words: event.message });
    });
    return worker;
  }

  #explained({ id, working }: Extract<Told, { kind: "working" }>): void {
    this.#wanting.get(id)?.(working);
    this.#wanting.delete(id);
  }

  /** A decision or its draws are not wanted any more once a quote has changed. */
  #wanted(kind: Told["kind"]): number {
    if (kind === "repriced") return this.#priced;
    return this.#priced > this.#decision ? -1 : this.#decision;
  }
}
