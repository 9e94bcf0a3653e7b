import type { LogEntry } from "../../src/survey/schema/log.ts";

/** Entries of the log that nobody has taken yet: kept here until they are, signal or no signal. */
export interface LogStore {
  waiting(): readonly LogEntry[];
  add(entries: readonly LogEntry[]): void;
  /** Drops what the log that is kept elsewhere has by now. */
  taken(log: readonly LogEntry[]): void;
}

const sameEntry = (a: LogEntry, b: LogEntry) => writtenOut(a) === writtenOut(b);

function writtenOut(entry: LogEntry): string {
  return JSON.stringify(Object.entries(entry).sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Those of the waiting entries that a log does not have; two alike count as two. */
export function stillWaiting(waiting: readonly LogEntry[], log: readonly LogEntry[]): LogEntry[] {
  const left = [...log];
  return waiting.filter((entry) => {
    const at = left.findIndex((other) => sameEntry(entry, other));
    if (at < 0) return true;
    left.splice(at, 1);
    return false;
  });
}

/** Keeps them for as long as the page is open. */
export class PassingLogStore implements LogStore {
  #entries: LogEntry[] = [];

  waiting(): readonly LogEntry[] {
    return this.#entries;
  }

  add(entries: readonly LogEntry[]): void {
    this.#entries = [...this.#entries, ...entries];
  }

  taken(log: readonly LogEntry[]): void {
    this.#entries = stillWaiting(this.#entries, log);
  }
}

/** Keeps them in the browser, so that a page closed out of reach loses nothing. */
export class BrowserLogStore implements LogStore {
  readonly #storage: Pick<Storage, "getItem" | "setItem">;
  readonly #key: string;
  /** What could not be written for want of room is held while the page is open. */
  #entries: readonly LogEntry[];

  constructor(storage: Pick<Storage, "getItem" | "setItem">, site: string) {
    this.#storage = storage;
    this.#key = `rounds-log-${site}`;
    this.#entries = this.#read();
  }

  waiting(): readonly LogEntry[] {
    return this.#entries;
  }

  add(entries: readonly LogEntry[]): void {
    this.#write([...this.#entries, ...entries]);
  }

  taken(log: readonly LogEntry[]): void {
    const left = stillWaiting(this.#entries, log);
    if (left.length !== this.#entries.length) this.#write(left);
  }

  #read(): LogEntry[] {
    try {
      const read: unknown = JSON.parse(this.#storage.getItem(this.#key) ?? "[]");
      return Array.isArray(read) ? (read as LogEntry[]) : [];
    } catch {
      return [];
    }
  }

  #write(entries: readonly LogEntry[]): void {
    this.#entries = entries;
    try {
      this.#storage.setItem(this.#key, JSON.stringify(entries));
    } catch {
      // no room: kept in #entries
    }
  }
}
