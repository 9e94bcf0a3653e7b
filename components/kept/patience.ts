/** Waits between tries while the server is not reached. */
const patience_ms = [1_000, 2_000, 5_000, 10_000, 30_000];

/** One next try at a time, later each time until something arrives. */
export class Patience {
  readonly #wait: (ms: number) => Promise<void>;
  #tries = 0;
  #wake: (() => void) | null = null;

  constructor(wait: (ms: number) => Promise<void>) {
    this.#wait = wait;
  }

  /** Something arrived: the next wait is a short one again. */
  rest(): void {
    this.#tries = 0;
  }

  /** Tries again after a while, unless a try is due already. */
  later(again: () => void): void {
    if (this.#wake !== null) return;
    const ms = patience_ms[Math.min(this.#tries, patience_ms.length - 1)]!;
    this.#tries += 1;
    const woken = new Promise<void>((resolve) => {
      this.#wake = resolve;
    });
    void Promise.race([this.#wait(ms), woken]).then(() => {
      this.#wake = null;
      again();
    });
  }

  /** Makes the try that is due at once. @returns whether one was due */
  now(): boolean {
    this.rest();
    this.#wake?.();
    return this.#wake !== null;
  }
}
