import type { RoundsAnswers, RoundsAsk, RoundsKind, RoundsPost, RoundsReply } from "./messages.ts";

type AskOf<K extends RoundsKind> = Extract<RoundsAsk, { kind: K }>;

/** Works rounds out beside the page, so that it never stands still; of each kind the last call wins. */
export class RoundsCompute {
  #worker: Worker | null = null;
  #last = 0;
  readonly #lastOf = new Map<RoundsKind, number>();
  readonly #waiting = new Map<number, (reply: RoundsReply) => void>();

  /**
   * @returns null where a later call of its kind has come in between
   * @throws what the program itself broke at
   */
  async ask<K extends RoundsKind>(ask: AskOf<K>): Promise<RoundsAnswers[K] | null> {
    const id = ++this.#last;
    this.#lastOf.set(ask.kind, id);
    const worker = this.#start();
    const reply = await new Promise<RoundsReply>((resolve) => {
      this.#waiting.set(id, resolve);
      worker.postMessage({ id, ask } satisfies RoundsPost);
    });
    if (this.#lastOf.get(ask.kind) !== id) return null;
    if ("crash" in reply) throw new Error(reply.crash);
    return reply.told as RoundsAnswers[K];
  }

  stop(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#waiting.clear();
  }

  #start(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<RoundsReply>) => {
      this.#waiting.get(data.id)?.(data);
      this.#waiting.delete(data.id);
    });
    worker.addEventListener("error", ({ message }) => {
      const waiting = [...this.#waiting];
      this.stop();
      for (const [id, tell] of waiting) tell({ id, crash: message });
    });
    this.#worker = worker;
    return worker;
  }
}
