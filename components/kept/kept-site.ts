import type { ConflictAnswer, LogEntry, SiteState } from "./answers.ts";
import type { Box } from "./box.ts";
import { Outbox } from "./outbox.ts";
import { Patience } from "./patience.ts";
import { renamed } from "./renamed.ts";
import { Answered, isConflict, NotReached, type SitesApi } from "./sites-api.ts";
import type { Standing } from "./standing.ts";
import type { Tabs } from "./tabs.ts";

export interface KeptParts {
  id: string;
  api: SitesApi;
  box: Box;
  tabs: Tabs;
  /** A word that was never given before. */
  freshWord(): string;
  /** Waits so many milliseconds. */
  wait(ms: number): Promise<void>;
}

/**
 * A site that a page works on. Every change goes into the browser's box first, then to the server, the newest
 * only; it is called saved when the server has answered that it is on its disk.
 */
export class KeptSite {
  readonly #parts: KeptParts;
  readonly #outbox: Outbox;
  readonly #patience: Patience;
  readonly #listeners = new Set<() => void>();
  #state: SiteState | null = null;
  #standing: Standing = { is: "saving" };
  #sending: Promise<void> | null = null;
  #isAsked = false;
  #isClosed = false;

  constructor(parts: KeptParts) {
    this.#parts = parts;
    this.#patience = new Patience(parts.wait);
    this.#outbox = new Outbox(parts.box, parts.tabs, parts.id);
  }

  /** The site as the server last told it; null where it was never reached. */
  get state(): SiteState | null {
    return this.#state;
  }

  get standing(): Standing {
    return this.#standing;
  }

  /** The survey as it was last typed, faults and all. */
  get survey(): object | null {
    return this.#outbox.waiting?.survey ?? this.#state?.draft?.survey ?? this.#state?.survey ?? null;
  }

  /** Calls back on every change of survey, state or standing. @returns what ends it */
  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /**
   * Opens the site: from the server, or as it was last seen where that is not reached; with what an earlier tab
   * left behind unsent.
   * @throws Answered where the server says that there is no such site
   */
  async open(): Promise<void> {
    const { api, box, id } = this.#parts;
    await this.#outbox.open();
    try {
      await this.#take(await api.state(id));
    } catch (error) {
      if (!(error instanceof NotReached)) throw error;
      this.#state = await box.seen(id);
      this.#standWaiting(null);
    }
    void this.#send();
  }

  /** Takes the survey as it now stands on the page. @returns when it is in this browser's box */
  async change(survey: object): Promise<void> {
    await this.#outbox.type(survey, this.#state?.etag ?? "");
    if (this.#standing.is === "conflict" || this.#standing.is === "waiting") this.#tell();
    else this.#stand({ is: "saving" });
    void this.#send();
  }

  /** Adds entries to the log. @returns when they are in this browser's box */
  async addToLog(entries: LogEntry[]): Promise<void> {
    const { box, id, freshWord } = this.#parts;
    await box.keepLog({ key: freshWord(), site: id, entries });
    if (this.#standing.is === "saved") this.#stand({ is: "saving" });
    void this.#send();
  }

  /** Tries again at once: the network is back, or somebody asks. */
  tryNow(): void {
    if (!this.#patience.now()) void this.#send();
  }

  /** Waits until nothing is under way any more: all is saved, or something stands in the way. */
  async settled(): Promise<void> {
    while (this.#sending !== null) await this.#sending;
  }

  undo(): Promise<void> {
    return this.#move((etag) => this.#parts.api.undo(this.#parts.id, etag));
  }

  redo(): Promise<void> {
    return this.#move((etag) => this.#parts.api.redo(this.#parts.id, etag));
  }

  restore(version: number): Promise<void> {
    return this.#move((etag) => this.#parts.api.restore(this.#parts.id, etag, version));
  }

  /** Lets entries with faults go: back to the last survey that was right. */
  dropDraft(): Promise<void> {
    return this.#move((etag) => this.#parts.api.dropDraft(this.#parts.id, etag));
  }

  /** After a conflict: what was typed here goes on top; the other's stays among the versions. */
  async keepMine(): Promise<void> {
    const { kept } = this.#conflict();
    await this.#outbox.rebase(kept.etag);
    this.#state = kept;
    this.#stand({ is: "saving" });
    await this.#send();
  }

  /** After a conflict: what was typed here is let go. */
  async keepTheirs(): Promise<void> {
    const { kept } = this.#conflict();
    await this.#outbox.letGo();
    await this.#take(kept);
    await this.#send();
  }

  /**
   * After a conflict: the other's stays as it is, and what was typed here goes on a copy of the site.
   * @param name of the copy
   * @returns the copy's state
   */
  async keepBoth(name: string): Promise<SiteState> {
    this.#conflict();
    const { api, id, freshWord } = this.#parts;
    const copy = await api.create(await api.document(id), freshWord());
    const state = await api.saveTyped(copy.id, copy.etag, renamed(this.survey ?? copy.survey, name));
    await this.keepTheirs();
    return state;
  }

  close(): void {
    this.#isClosed = true;
    this.#listeners.clear();
    this.#patience.now();
  }

  #conflict(): ConflictAnswer {
    if (this.#standing.is !== "conflict") throw new Error("There is no conflict to settle.");
    return this.#standing.conflict;
  }

  /** Undo and the like: what was typed goes first, then the server moves, then its state is what is shown. */
  async #move(ask: (etag: string) => Promise<SiteState>): Promise<void> {
    await this.#send();
    if (this.#outbox.waiting !== null || this.#state === null) throw new NotReached();
    const { etag } = this.#state;
    try {
      await this.#moved(etag, await ask(etag));
    } catch (error) {
      if (error instanceof Answered && isConflict(error.problem)) await this.#moved(etag, error.problem.kept);
      throw error;
    }
  }

  /** What was typed while the answer was on its way goes on top of the state that it brought. */
  async #moved(etag: string, state: SiteState): Promise<void> {
    if (this.#outbox.waiting?.etag === etag) await this.#outbox.rebase(state.etag);
    await this.#take(state);
    void this.#send();
  }

  /** One sender at a time; it goes on until nothing is left, or something stands in the way. */
  #send(): Promise<void> {
    this.#isAsked = true;
    if (!this.#maySend()) return Promise.resolve();
    this.#sending ??= this.#sendWhileAsked();
    return this.#sending;
  }

  #maySend(): boolean {
    return !this.#isClosed && this.#standing.is !== "conflict";
  }

  async #sendWhileAsked(): Promise<void> {
    try {
      while (this.#isAsked && this.#maySend()) {
        this.#isAsked = false;
        await this.#sendAll();
      }
    } finally {
      this.#sending = null;
    }
  }

  async #sendAll(): Promise<void> {
    try {
      while ((await this.#sendSurvey()) || (await this.#sendLog())) this.#patience.rest();
      const { api, id } = this.#parts;
      if (this.#state === null || this.#standing.is === "waiting") await this.#take(await api.state(id));
    } catch (error) {
      await this.#failed(error);
    }
  }

  /** Sends the oldest entries of the log that wait. @returns whether there were any */
  async #sendLog(): Promise<boolean> {
    const { api, box, id } = this.#parts;
    const [oldest] = await box.log(id);
    if (oldest === undefined) return false;
    const { log, changedAt } = await api.addToLog(id, oldest.entries, oldest.key);
    await box.dropLog(oldest.key);
    if (this.#state) await this.#take({ ...this.#state, log, changedAt });
    return true;
  }

  /** Sends the survey as it was last typed. @returns whether it had to */
  async #sendSurvey(): Promise<boolean> {
    const { waiting } = this.#outbox;
    if (waiting === null) return false;
    await this.#outbox.markSent();
    const { api, id } = this.#parts;
    await this.#answered(waiting.survey, await api.saveTyped(id, waiting.etag, waiting.survey));
    return true;
  }

  /** The server has it on its disk. What was typed since goes next, on the new state. */
  async #answered(survey: object, state: SiteState): Promise<void> {
    if (this.#outbox.waiting?.survey === survey) await this.#outbox.letGo();
    else await this.#outbox.rebase(state.etag);
    await this.#take(state);
  }

  /** Sorts out why a send failed: to be tried later, told, or gone about another way. */
  async #failed(error: unknown): Promise<void> {
    if (error instanceof NotReached) return this.#tryLater(null);
    if (!(error instanceof Answered)) throw error;
    const { problem } = error;
    if (isConflict(problem)) return this.#overtaken(problem);
    if (problem.status >= 500) return this.#tryLater(problem.detail);
    this.#stand({ is: "refused", reason: problem.detail });
  }

  /** A conflict, unless what the server keeps is what this tab sent without hearing the answer. */
  async #overtaken(conflict: ConflictAnswer): Promise<void> {
    const { kept } = conflict;
    const now = kept.draft?.survey ?? kept.survey;
    if (!this.#outbox.hasSent(now)) {
      this.#stand({ is: "conflict", conflict });
      return;
    }
    await this.#outbox.rebase(kept.etag);
    this.#state = kept;
    this.#isAsked = true;
  }

  #tryLater(reason: string | null): void {
    this.#standWaiting(reason);
    this.#patience.later(() => void this.#send());
  }

  async #take(state: SiteState): Promise<void> {
    this.#state = state;
    await this.#parts.box.keepSeen(state).catch(() => {});
    if (this.#outbox.waiting !== null) this.#stand({ is: "saving" });
    else if (state.draft) this.#stand({ is: "draft", at: state.draft.savedAt, faults: state.draft.faults });
    else this.#stand({ is: "saved", at: state.changedAt });
  }

  #standWaiting(reason: string | null): void {
    this.#stand({ is: "waiting", reason, isInBrowser: this.#outbox.isInBrowser });
  }

  #stand(standing: Standing): void {
    this.#standing = standing;
    this.#tell();
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }
}
