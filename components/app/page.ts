import { html, LitElement, nothing } from "lit";
import { cache } from "lit/directives/cache.js";
import type { UnitSystem } from "../../src/units.ts";
import { own, page } from "../../src/words/en/page.ts";
import "../answer/answer.ts";
import type { AnswerView } from "../../src/report/view.ts";
import { type Formatter, formatter } from "../../src/words/format.ts";
import { base, pressable } from "../look/base.ts";
import { busy } from "../look/busy.ts";
import { Compute } from "./compute.ts";
import { LIMIT_BYTES, type PutIn, type Refused, readPutIn } from "./files.ts";
import { frame } from "./frame.ts";
import { header } from "./header.ts";
import type { Which } from "./messages.ts";
import { type FaultList, ownPart } from "./own.ts";
import { keepUnits, readUnits } from "./preferences.ts";

type State = "loading" | "working" | "ready" | "empty";

/** The page: its frame, the answer, and the files that anyone puts in. */
export class Page extends LitElement {
  static override properties = {
    state: { state: true },
    view: { state: true },
    say: { state: true },
    lists: { state: true },
    held: { state: true },
    demo: { state: true },
    over: { state: true },
    spoken: { state: true },
    slow: { state: true },
  };

  declare state: State;
  declare view: AnswerView | null;
  declare say: Formatter;
  /** What stands in the way, by document. */
  declare lists: readonly FaultList[];
  /** Files put in so far. */
  declare held: Partial<Record<Which, PutIn>>;
  /** Whether the demo is shown. */
  declare demo: boolean;
  /** Whether files hang over the page. */
  declare over: boolean;
  /** What the live region says. */
  declare spoken: string;
  /** Whether it takes long enough to be said. */
  declare slow: boolean;

  private readonly compute = new Compute();

  static override styles = [base, pressable, busy, frame];

  constructor() {
    super();
    this.state = "loading";
    this.view = null;
    this.say = formatter(readUnits(), undefined);
    this.lists = [];
    this.held = {};
    this.demo = false;
    this.over = false;
    this.spoken = "";
    this.slow = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("dragover", this.hover);
    addEventListener("dragleave", this.leave);
    addEventListener("drop", this.drop);
    addEventListener("hashchange", this.toNamed);
    void this.showDemo();
  }

  override disconnectedCallback(): void {
    removeEventListener("dragover", this.hover);
    removeEventListener("dragleave", this.leave);
    removeEventListener("drop", this.drop);
    removeEventListener("hashchange", this.toNamed);
    this.compute.stop();
    super.disconnectedCallback();
  }

  private readonly hover = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    this.over = true;
  };

  private readonly leave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.over = false;
  };

  private readonly drop = (event: DragEvent): void => {
    if (!event.dataTransfer?.files.length) return;
    event.preventDefault();
    this.over = false;
    void this.take([...event.dataTransfer.files]);
  };

  /** Goes to the part of the page that the address names; parts lie in shadow roots. */
  private goTo(name: string): void {
    if (!name) return;
    const roots = [this.renderRoot, this.renderRoot.querySelector("gwb-answer")?.shadowRoot];
    const part = roots
      .map((root) => root?.querySelector<HTMLElement>(`[id="${CSS.escape(name)}"]`))
      .find(Boolean);
    part?.scrollIntoView();
    part?.focus({ preventScroll: true });
  }

  private readonly toNamed = (): void => this.goTo(location.hash.slice(1));

  private async showDemo(): Promise<void> {
    this.state = "loading";
    this.lists = [];
    this.held = {};
    try {
      const response = await fetch("api/demo");
      if (!response.ok) throw new Error(response.statusText);
      const { survey, weather } = (await response.json()) as { survey: unknown; weather: string };
      await this.work(JSON.stringify(survey), weather, true);
    } catch {
      this.state = "empty";
      this.lists = [{ title: own.noDemo, faults: [] }];
    }
  }

  private async take(files: readonly File[], wanted?: Which): Promise<void> {
    this.spoken = own.reading;
    const read = await Promise.all(files.map((file) => readPutIn(file, wanted)));
    const refused = read.filter((r): r is Refused => "why" in r);
    const held = { ...this.held };
    for (const r of read) if ("of" in r) held[r.of] = r;
    this.held = held;
    this.lists = refused.map((r) => ({ title: this.refusal(r), faults: [] }));
    const { survey, weather } = held;
    if (survey && weather) await this.work(survey.text, weather.text, false);
    else {
      const missing = survey ? own.stillWeather : weather ? own.stillSurvey : "";
      this.spoken = [...this.lists.map((l) => l.title), missing].join(" ");
      this.showOwn();
    }
  }

  private refusal({ name, why }: Refused): string {
    if (why === "too-large") return own.tooLarge(name, `${this.say.number(LIMIT_BYTES / 1e6)} MB`);
    return why === "unread" ? own.unread(name) : own.notText(name);
  }

  private async work(survey: string, weather: string, demo: boolean): Promise<void> {
    const before = this.view ? "ready" : "empty";
    this.state = this.view ? "working" : "loading";
    const timer = setTimeout(() => {
      this.slow = true;
      this.spoken = own.working;
    }, 600);
    const told = await this.compute.ask(survey, weather);
    clearTimeout(timer);
    this.slow = false;
    if (told === null) return;
    if ("view" in told) {
      this.view = told.view;
      this.demo = demo;
      this.lists = [];
      this.state = "ready";
      document.title = `${told.view.site} · ${page.title}`;
      this.spoken = demo ? "" : own.done(told.view.site);
      await this.updateComplete;
      if (demo) this.toNamed();
      else this.renderRoot.querySelector<HTMLElement>("h1")?.focus();
      return;
    }
    this.state = before;
    this.lists =
      "crash" in told
        ? [{ title: own.failed, faults: [{ path: "", sentence: told.crash }] }]
        : told.faults.map(({ of, faults }) => ({
            title: own.faults(faults.length, this.held[of]?.name ?? own[of]),
            faults,
          }));
    this.spoken = this.lists.map((l) => l.title).join(". ");
    this.showOwn();
  }

  /** Brings what stands in the way, or what is still wanted, before the reader. */
  private async showOwn(): Promise<void> {
    await this.updateComplete;
    const part = this.renderRoot.querySelector<HTMLElement>("#own");
    part?.scrollIntoView({ block: "start" });
    part?.focus({ preventScroll: true });
  }

  private setUnits(units: UnitSystem): void {
    keepUnits(units);
    this.say = formatter(units, undefined);
  }

  protected override render() {
    const ready = this.view !== null;
    return html`
      ${header({
        view: this.view,
        isComing: this.state === "loading",
        demo: this.demo || (this.view === null && this.state === "loading"),
        units: this.say.system,
        setUnits: (units) => this.setUnits(units),
        go: this.reGo,
        skip: () => this.goTo("answer"),
      })}
      <main>
        ${this.view ? html`<gwb-answer .view=${this.view} .say=${this.say}></gwb-answer>` : this.waiting()}
        ${ownPart({
          lists: this.lists,
          held: this.held,
          answered: this.view !== null,
          again: this.demo || this.state === "loading" ? null : () => void this.showDemo(),
          take: (files, of) => void this.take(files, of),
        })}
      </main>
      <footer>${page.foot}</footer>
      <p class="unseen" role="status">${this.spoken}</p>
      ${cache(this.slow && ready ? html`<p class="busy" aria-hidden="true">${own.working}</p>` : nothing)}
      ${this.over ? html`<div class="over" aria-hidden="true"><p>${own.dropHere}</p></div>` : nothing}
    `;
  }

  /** A click on the part that the address names already still goes there. */
  private readonly reGo = (event: Event): void => {
    const link = event.currentTarget as HTMLAnchorElement;
    if (link.hash === location.hash) this.toNamed();
  };

  private waiting() {
    if (this.state === "empty") return nothing;
    return html`<section class="waiting" aria-busy="true">
      <p class="headline">${own.working}</p>
    </section>`;
  }
}

customElements.define("gwb-page", Page);
