import { html, LitElement, nothing, type TemplateResult } from "lit";
import { frameWords } from "../../src/words/en/frame.ts";
import { type Formatter, formatter } from "../../src/words/format.ts";
import { keepUnits, readUnits } from "../app/preferences.ts";
import { base, pressable } from "../look/base.ts";
import type { App } from "./app.ts";
import { head, toSheet } from "./head.ts";
import { keepDemo } from "./keep-demo.ts";
import { frameLook } from "./look.ts";
import { placeNamed } from "./places.ts";
import { type Route, sitePath } from "./route.ts";
import { Router } from "./router.ts";
import { sheetLook } from "./sheet-look.ts";
import { Compute } from "./work/compute.ts";

/** The elements of each screen, loaded when it is first shown. */
const screens = {
  start: () => import("../start/start.ts"),
  first: () => import("../first/first.ts"),
  demo: () => import("../app/page.ts"),
  site: () => import("./site.ts"),
  unknown: async () => {},
} as const satisfies Readonly<Record<Route["screen"], () => Promise<unknown>>>;

/** The frame that every screen stands in: it follows the address, keeps the units, and speaks. */
export class Frame extends LitElement {
  static override properties = {
    route: { state: true },
    say: { state: true },
    loaded: { state: true },
    spoken: { state: true },
  };

  declare route: Route | null;
  declare say: Formatter;
  /** Screens whose elements are there. */
  declare loaded: ReadonlySet<Route["screen"]>;
  declare spoken: string;

  private readonly compute = new Compute();
  private readonly router = new Router((route, isNew) => this.show(route, isNew));

  static override styles = [base, pressable, frameLook, sheetLook];

  constructor() {
    super();
    this.route = null;
    this.say = formatter(readUnits(), undefined);
    this.loaded = new Set();
    this.spoken = "";
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.router.start();
  }

  override disconnectedCallback(): void {
    this.router.stop();
    this.compute.stop();
    super.disconnectedCallback();
  }

  private async show(route: Route, isNew: boolean): Promise<void> {
    const before = this.route;
    this.route = route;
    if (route.screen === "site" && before?.screen !== "site") this.fetchAhead(route.place);
    if (!this.loaded.has(route.screen)) {
      await screens[route.screen]();
      this.loaded = new Set([...this.loaded, route.screen]);
    }
    if (route.screen !== "site") document.title = titleOf(route);
    const isSameSite = before?.screen === "site" && route.screen === "site" && before.id === route.id;
    if (!isNew || isSameSite || before === null) return;
    await this.updateComplete;
    scrollTo({ top: 0, behavior: "instant" });
    this.toSheet();
  }

  /** What a site needs is fetched all at once, not one after another; what fails is fetched again where it is used. */
  private fetchAhead(place: string): void {
    void placeNamed(place)
      ?.load()
      .catch(() => null);
    if (placeNamed(place)?.showsAnswer) void this.compute.ask({ kind: "warm" }).catch(() => null);
  }

  private readonly toSheet = (): void => toSheet(this.renderRoot as ShadowRoot);

  private get app(): App {
    return {
      say: this.say,
      compute: this.compute,
      setUnits: (units) => {
        keepUnits(units);
        this.say = formatter(units, undefined);
      },
      go: (path, options) => this.router.go(path, options),
      speak: (words) => {
        // the same words again are said again
        this.spoken = words === this.spoken ? `${words}\u00A0` : words;
      },
    };
  }

  protected override render() {
    const { route } = this;
    if (!route) return nothing;
    return html`${this.screen(route)}
      <p class="unseen" role="status">${this.spoken}</p>`;
  }

  private screen(route: Route): TemplateResult {
    const { app } = this;
    const isHere = this.loaded.has(route.screen);
    // these have a head of their own
    if (route.screen === "demo" && isHere) return html`${this.demoLine()}<gwb-page></gwb-page>`;
    if (route.screen === "site" && isHere) return html`<gwb-site .app=${app} .route=${route}></gwb-site>`;
    return html`<div class="page">
      ${head({
        title: frameWords.program,
        below:
          route.screen === "start" ? nothing : html`<p class="quiet"><a href="/">${frameWords.home}</a></p>`,
        units: this.say.system,
        setUnits: app.setUnits,
        skip: this.toSheet,
      })}
      <main tabindex="-1">
        ${isHere ? this.sheet(route, app) : html`<p class="headline quiet">${frameWords.opening}</p>`}
      </main>
      <footer>${frameWords.foot}</footer>
    </div>`;
  }

  private demoLine() {
    const keep = async () => this.router.go(sitePath(await keepDemo()));
    return html`<nav class="demo-line row" aria-label=${frameWords.home}>
      <a href="/">${frameWords.home}</a>
      <button type="button" class="plain" @click=${keep}>${frameWords.keepDemo}</button>
    </nav>`;
  }

  private sheet(route: Route, app: App) {
    if (route.screen === "start") return html`<gwb-start .app=${app}></gwb-start>`;
    if (route.screen === "first") return html`<gwb-first .app=${app}></gwb-first>`;
    return html`<h2 class="headline">${frameWords.unknownTitle}</h2>
      <p class="lead">${frameWords.unknown(route.screen === "unknown" ? route.path : "")}</p>
      <p class="lead"><a class="press" href="/">${frameWords.toStart}</a></p>`;
  }
}

function titleOf({ screen }: Route): string {
  const { program, unknownTitle, titleOf: joined } = frameWords;
  if (screen === "unknown") return joined(unknownTitle, program);
  return screen === "first" ? joined(frameWords.firstTitle, program) : program;
}

customElements.define("gwb-frame", Frame);
