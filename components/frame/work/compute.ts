import type { Answers, AskOf, Kind, Post, Reply } from "./messages.ts";

/** The calculation itself stopped: a fault of the program, not of what was put in. */
export class Crashed extends Error {
  override name = "Crashed";
}

interface Waiting {
  kind: Kind;
  tell(told: Answers[Kind], isLast: boolean): void;
  fail(error: Error): void;
}

/** Works things out beside the page, so that it never stands still; of each kind the last call wins. */
export class Compute {
  #worker: Worker | null = null;
  #last = 0;
  readonly #lastOf = new Map<Kind, number>();
  readonly #waiting = new Map<number, Waiting>();

  /** @returns null where a later call of its kind has come in between */
  ask<K extends Kind>(ask: AskOf<K>): Promise<Answers[K] | null> {
    return this.follow(ask, () => {});
  }

  /**
   * The same for what comes several times.
   * @param each hears every answer while no later call has come
   * @returns the last answer
   */
  follow<K extends Kind>(ask: AskOf<K>, each: (told: Answers[K]) => void): Promise<Answers[K] | null> {
    const id = ++this.#last;
    const kind = ask.kind as K;
    const isOvertaken = () => this.#lastOf.get(kind) !== id;
    this.#lastOf.set(kind, id);
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, {
        kind,
        tell: (told, isLast) => {
          if (isOvertaken()) resolve(null);
          else {
            each(told as Answers[K]);
            if (isLast) resolve(told as Answers[K]);
          }
        },
        fail: (error) => (isOvertaken() ? resolve(null) : reject(error)),
      });
      this.#start().postMessage({ id, ask } satisfies Post);
    });
  }

  stop(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#waiting.clear();
  }

  #start(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", (event: MessageEvent<Reply>) => this.#hear(event.data));
    worker.addEventListener("error", (event) => {
      const waiting = [...this.#waiting.values()];
      this.stop();
      for (const { fail } of waiting) fail(new Crashed(event.message));
    });
    this.#worker = worker;
    return worker;
  }

  #hear(reply: Reply): void {
    const waiting = this.#waiting.get(reply.id);
    if (!waiting) return;
    if ("crash" in reply) {
      this.#waiting.delete(reply.id);
      waiting.fail(new Crashed(reply.crash));
      return;
    }
    if (reply.isLast) this.#waiting.delete(reply.id);
    waiting.tell(reply.told, reply.isLast);
  }
}
