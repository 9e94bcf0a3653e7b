import type { Survey } from "../../src/survey/survey.ts";
import type { Entry } from "./entry.ts";
import type { WalkStore } from "./store.ts";

/** A walk's length: everything, what matters most in 45 minutes, or practice on an invented school. */
export type WalkMode = "full" | "short" | "practice";

/** A stopwatch by the clock on the wall, so that a screen that sleeps loses no second. */
export interface Watch {
  /** When it was started, ms since 1970; null while it stands. */
  started_ms: number | null;
  /** Counted before that start. */
  before_ms: number;
}

/** A stop under way. */
export interface AtStop {
  step: "guess" | "way" | "measure";
  guess: string;
  entry: Entry | null;
  watch?: Watch;
  /** What else an aid keeps, by its name. */
  notes?: Record<string, string>;
}

/** Everything a group has under way. */
export interface WalkDraft {
  nickname: string;
  mode: WalkMode;
  /** The screen that it is on. */
  route: string;
  stops: Record<string, AtStop>;
  /** Parts whose cautions were read. */
  read: string[];
  /** Stops passed over on this walk. */
  passed: string[];
  /** The practice school as measured so far. */
  practice?: Survey;
}

export const emptyDraft = (nickname: string, mode: WalkMode = "full"): WalkDraft => ({
  nickname,
  mode,
  route: "",
  stops: {},
  read: [],
  passed: [],
});

export const emptyStop = (): AtStop => ({ step: "guess", guess: "", entry: null });

/** A group's draft by site and nickname, and who walked last on this machine. */
export class Drafts {
  private readonly store: WalkStore;
  private readonly site: string;

  constructor(store: WalkStore, site: string) {
    this.store = store;
    this.site = site;
  }

  last(): string | null {
    return this.store.read(`${this.site}/last`);
  }

  read(nickname: string): WalkDraft | null {
    const text = this.store.read(this.key(nickname));
    if (text === null) return null;
    try {
      return { ...emptyDraft(nickname), ...(JSON.parse(text) as WalkDraft) };
    } catch {
      return null;
    }
  }

  keep(draft: WalkDraft): void {
    this.store.write(this.key(draft.nickname), JSON.stringify(draft));
    this.store.write(`${this.site}/last`, draft.nickname);
  }

  /** Another group takes the machine: nothing of the first is lost. */
  handOver(): void {
    this.store.drop(`${this.site}/last`);
  }

  private key(nickname: string): string {
    return `${this.site}/group/${nickname.trim().toLowerCase()}`;
  }
}
