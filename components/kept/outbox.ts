import type { Box, Waiting } from "./box.ts";
import { isSameData } from "./same.ts";
import type { Tabs } from "./tabs.ts";

/** Unanswered surveys remembered: more are only ever sent while nothing arrives. */
const mostSent = 20;

/** What was typed in this tab and not answered for, in memory and in the browser's box. */
export class Outbox {
  readonly #box: Box;
  readonly #tabs: Tabs;
  readonly #site: string;
  #waiting: Waiting | null = null;
  #isInBrowser: boolean;

  constructor(box: Box, tabs: Tabs, site: string) {
    this.#box = box;
    this.#tabs = tabs;
    this.#site = site;
    this.#isInBrowser = box.isLasting;
  }

  get waiting(): Waiting | null {
    return this.#waiting;
  }

  /** Whether what waits would outlive the page. */
  get isInBrowser(): boolean {
    return this.#isInBrowser;
  }

  /** Takes up what this tab, or one that is closed, left unsent. */
  async open(): Promise<void> {
    for (const waiting of await this.#box.waiting(this.#site)) {
      const isOwn = waiting.tab === this.#tabs.own;
      if (!isOwn && (await this.#tabs.isOpen(waiting.tab))) continue;
      await this.#hold({ ...waiting, tab: this.#tabs.own });
      if (!isOwn) await this.#box.drop(this.#site, waiting.tab);
      return;
    }
  }

  /** @param etag of the state it was typed on, where nothing waits yet */
  async type(survey: object, etag: string): Promise<void> {
    const before = this.#waiting;
    await this.#hold({
      site: this.#site,
      tab: this.#tabs.own,
      survey,
      etag: before?.etag ?? etag,
      sent: before?.sent ?? [],
    });
  }

  /** What waits goes out now; whether it arrives is not known until there is an answer. */
  async markSent(): Promise<void> {
    const waiting = this.#waiting;
    if (waiting === null || waiting.sent.includes(waiting.survey)) return;
    await this.#hold({ ...waiting, sent: [...waiting.sent, waiting.survey].slice(-mostSent) });
  }

  /** Whether a survey may have come from here. */
  hasSent(survey: object): boolean {
    return this.#waiting?.sent.some((sent) => isSameData(survey, sent)) ?? false;
  }

  /** What waits is meant for a newer state. */
  async rebase(etag: string): Promise<void> {
    if (this.#waiting !== null) await this.#hold({ ...this.#waiting, etag, sent: [] });
  }

  async letGo(): Promise<void> {
    this.#waiting = null;
    await this.#box.drop(this.#site, this.#tabs.own).catch(() => {});
  }

  /** A box that fails is told of, and what is typed stays in memory. */
  async #hold(waiting: Waiting): Promise<void> {
    this.#waiting = waiting;
    try {
      await this.#box.keep(waiting);
      this.#isInBrowser = this.#box.isLasting;
    } catch {
      this.#isInBrowser = false;
    }
  }
}
