import { html, LitElement, nothing } from "lit";
import { html as staticHtml, unsafeStatic } from "lit/static-html.js";
import { conflictWords, frameWords } from "../../src/words/en/frame.ts";
import { speak } from "../../src/words/spoken.ts";
import { Answered, NotReached } from "../kept/sites-api.ts";
import { base, pressable } from "../look/base.ts";
import { busy } from "../look/busy.ts";
import { painted } from "../look/painted.ts";
import type { App } from "./app.ts";
import { conflictPart, type Settle } from "./conflict.ts";
import { head, toSheet } from "./head.ts";
import { keeping } from "./keeping.ts";
import { frameLook } from "./look.ts";
import { placeNamed, places } from "./places.ts";
import { answerPlace, type Route, sitePath } from "./route.ts";
import { sheetLook } from "./sheet-look.ts";
import { siteLook } from "./site-look.ts";
import { SiteModel } from "./site-model.ts";
import { standingLine } from "./standing-line.ts";

/** Said after a pause, so that one hears the answer and not every step to it. */
const pause_ms = 1_200;
const slow_ms = 600;

type Opening = "opening" | "open" | "none" | "not-reached";

/** A kept site: its head, the place that the address names, and what somebody else's saving asks to be settled. */
export class Site extends LitElement {
  static override properties = {
    app: { attribute: false },
    route: { attribute: false },
    model: { state: true },
    opening: { state: true },
    loaded: { state: true },
    turn: { state: true },
    isSlow: { state: true },
  };

  declare app: App;
  declare route: Extract<Route, { screen: "site" }>;
  declare model: SiteModel | null;
  declare opening: Opening;
  /** Places whose elements are there. */
  declare loaded: ReadonlySet<string>;
  /** Counts what the model told. */
  declare turn: number;
  declare isSlow: boolean;

  private slow: ReturnType<typeof setTimeout> | undefined;
  private saying: ReturnType<typeof setTimeout> | undefined;
  /** The answer that was said, or stood there when the site was opened. */
  private said = "";

  static override styles = [base, pressable, busy, frameLook, sheetLook, siteLook];

  constructor() {
    super();
    this.model = null;
    this.opening = "opening";
    this.loaded = new Set();
    this.turn = 0;
    this.isSlow = false;
  }

  override disconnectedCallback(): void {
    this.close();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (!changed.has("route")) return;
    const before = changed.get("route") as Site["route"] | undefined;
    if (before?.id !== this.route.id) void this.open();
    void this.load(this.route.place, before !== undefined && before.place !== this.route.place);
  }

  private async open(): Promise<void> {
    this.close();
    this.opening = "opening";
    let begun: Promise<void> | null = null;
    const model = new SiteModel({
      id: this.route.id,
      keeping: await keeping(),
      compute: this.app.compute,
      mayBegin: () => {
        begun ??= placeNamed(this.route.place)?.showsAnswer ? Promise.resolve() : painted();
        return begun;
      },
    });
    this.model = model;
    model.listen(() => this.heard());
    try {
      await model.open();
      if (this.model === model) this.opening = "open";
    } catch (error) {
      if (this.model !== model) return;
      if (error instanceof NotReached) this.opening = "not-reached";
      else if (error instanceof Answered) this.opening = "none";
      else throw error;
    }
    this.setTitle();
  }

  private close(): void {
    this.model?.close();
    this.model = null;
    this.said = "";
    clearTimeout(this.slow);
    clearTimeout(this.saying);
  }

  private async load(id: string, isNew: boolean): Promise<void> {
    const place = placeNamed(id);
    if (!place) return;
    await place.load();
    this.loaded = new Set([...this.loaded, id]);
    this.setTitle();
    if (!isNew) return;
    await this.updateComplete;
    scrollTo({ top: 0, behavior: "instant" });
    this.toSheet();
    this.app.speak(frameWords.shown(frameWords.placeNames[id] ?? id));
  }

  private setTitle(): void {
    const name = this.model?.name || frameWords.program;
    const place = frameWords.placeNames[this.route.place];
    document.title = place ? frameWords.titleOf(place, name) : name;
  }

  private heard(): void {
    this.turn += 1;
    const { model } = this;
    if (!model) return;
    if (model.worked.is === "working") {
      this.slow ??= setTimeout(() => {
        this.isSlow = true;
      }, slow_ms);
      return;
    }
    clearTimeout(this.slow);
    this.slow = undefined;
    this.isSlow = false;
    this.sayLater(model);
  }

  private sayLater({ view }: SiteModel): void {
    if (!view) return;
    const { first, headline } = speak(view, this.app.say);
    const words = [...(first ?? []), " ", ...headline]
      .map((part) => (typeof part === "string" ? part : part.text))
      .join("")
      .trim();
    clearTimeout(this.saying);
    if (words === this.said) return;
    const isFirst = this.said === "";
    this.said = words;
    if (!isFirst) this.saying = setTimeout(() => this.app.speak(words), pause_ms);
  }

  private readonly toSheet = (): void => toSheet(this.renderRoot as ShadowRoot);

  protected override render() {
    const { model } = this;
    const isOpen = this.opening === "open" && model !== null;
    // the head stands from the first, so that nothing below it moves
    const mayOpen = isOpen || this.opening === "opening";
    return html`<div class="page">
      ${head({
        title: isOpen ? model.name : frameWords.program,
        below: html`<p class="quiet">
            <a href="/">${frameWords.home}</a>
            ${
              isOpen
                ? html`<span class="standing" role="status"
                    >· ${standingLine(model.standing, () => model.kept.tryNow())}</span
                  >`
                : nothing
            }
          </p>
          ${mayOpen ? this.asideLinks() : nothing}`,
        places: mayOpen ? this.placeLinks() : nothing,
        units: this.app.say.system,
        setUnits: this.app.setUnits,
        skip: this.toSheet,
      })}
      <main tabindex="-1">
        ${isOpen && model.standing.is === "conflict" ? conflictPart(model.standing.conflict, this.settle) : nothing}
        ${this.sheet()}
      </main>
      <footer>
        <p>${frameWords.foot}</p>
      </footer>
      </div>
      ${this.isSlow ? html`<p class="busy" aria-hidden="true">${frameWords.working}</p>` : nothing}
    `;
  }

  private placeLinks() {
    return html`<nav aria-label=${frameWords.places}>
      ${places.filter(({ linked }) => linked === "first").map(({ id }) => this.link(id))}
    </nav>`;
  }

  private asideLinks() {
    return html`<nav class="asides" aria-label=${frameWords.asides}>
      ${places.filter(({ linked }) => linked === "beside").map(({ id }) => this.link(id))}
    </nav>`;
  }

  private link(id: string) {
    return html`<a
      href=${sitePath(this.route.id, id)}
      aria-current=${id === this.route.place ? "page" : nothing}
      >${frameWords.placeNames[id] ?? id}</a
    >`;
  }

  private sheet() {
    const { route, opening, model } = this;
    const place = placeNamed(route.place);
    if (opening === "opening") return html`<p class="headline quiet">${frameWords.opening}</p>`;
    if (opening === "none") return this.saidOnly(frameWords.unknownTitle, frameWords.noSite);
    if (opening === "not-reached" || !model)
      return html`${this.saidOnly(frameWords.notReachedTitle, frameWords.notReached)}
        <p><button type="button" class="press" @click=${() => void this.open()}>${frameWords.tryAgain}</button></p>`;
    if (!place)
      return this.saidOnly(
        frameWords.unknownTitle,
        frameWords.unknown(sitePath(route.id, route.place, route.rest)),
        sitePath(route.id),
      );
    if (!this.loaded.has(place.id)) return html`<p class="headline quiet">${frameWords.opening}</p>`;
    const tag = unsafeStatic(place.element);
    return staticHtml`<${tag}
      .model=${model}
      .app=${this.app}
      .place=${place.id}
      .rest=${route.rest}
      .turn=${this.turn}
    ></${tag}>`;
  }

  private saidOnly(title: string, words: string, path = "/") {
    return html`<h2 class="headline">${title}</h2>
      <p class="lead">${words}</p>
      <p class="lead">
        <a class="press" href=${path}>${path === "/" ? frameWords.toStart : frameWords.placeNames[answerPlace]}</a>
      </p>`;
  }

  private readonly settle = async (way: Settle): Promise<void> => {
    const { model } = this;
    if (!model) return;
    if (way === "mine") await model.kept.keepMine();
    else if (way === "theirs") await model.kept.keepTheirs();
    else {
      const copy = await model.kept.keepBoth(conflictWords.copyName(model.name));
      this.app.go(sitePath(copy.id));
    }
    this.app.speak(conflictWords.settled);
  };
}

customElements.define("gwb-site", Site);
