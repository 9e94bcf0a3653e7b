import type { Ask, Told } from "./messages.ts";

/** Works answers out beside the page, so that it never stands still; the last call wins. */
export class Compute {
  private worker: Worker | null = null;
  private last = 0;

  /** Resolves to null where a later call has come in between. */
  async ask(survey: string, weather: string): Promise<Told | null> {
    const id = ++this.last;
    const worker = this.start();
    const reply = await new Promise<Told>((resolve) => {
      const hear = (event: MessageEvent<Told>) => {
        if (event.data.id !== id) return;
        done();
        resolve(event.data);
      };
      const fail = (event: ErrorEvent) => {
        done();
        this.stop();
        resolve({ id, crash: event.message });
      };
      const done = () => {
        worker.removeEventListener("message", hear);
        worker.removeEventListener("error", fail);
      };
      worker.addEventListener("message", hear);
      worker.addEventListener("error", fail);
      worker.postMessage({ id, survey, weather } satisfies Ask);
    });
    return id === this.last ? reply : null;
  }

  stop(): void {
    this.worker?.terminate();
    this.worker = null;
  }

  private start(): Worker {
    this.worker ??= new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    return this.worker;
  }
}
