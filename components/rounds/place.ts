import { html, nothing } from "lit";
import { readLog } from "../../src/files/log.ts";
import type { LogEntry } from "../../src/survey/schema/log.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { frameWords } from "../../src/words/en/frame.ts";
import type { Explain } from "../figure/figure.ts";
import { type OnPlace, offPlace, onPlace } from "../frame/on-place.ts";
import { PlaceElement } from "../frame/place-element.ts";
import type { SiteWeather } from "../frame/site-weather.ts";
import { base } from "../look/base.ts";
import { keepPage } from "../walk/offline/register.ts";
import { BrowserLogStore, type LogStore, PassingLogStore } from "./log-store.ts";
import "./rounds.ts";

/** The watering rounds of a kept site, with its log. */
export class RoundsPlace extends PlaceElement {
  static override properties = { ...PlaceElement.properties, log: { state: true } };

  static override styles = [base];

  declare private log: readonly LogEntry[];

  private store: LogStore | null = null;
  private made: { of: Survey; weather: SiteWeather | null; on: OnPlace | null } | null = null;

  constructor() {
    super();
    this.log = [];
  }

  private readonly explain: Explain = (at) => this.model.explain(at, this.app.say.system);

  /** The log is written in the garden, out of reach of the server too. */
  override connectedCallback(): void {
    super.connectedCallback();
    void keepPage();
  }

  /** How the kept log stood when it was last fetched. */
  private seen: string | null = null;

  protected override updated(): void {
    const now = JSON.stringify(this.model.state?.log ?? null);
    if (now === this.seen) return;
    this.seen = now;
    void this.fetchLog();
  }

  /** The log as it is kept; out of reach, what waits in this browser is all there is. */
  private async fetchLog(): Promise<void> {
    try {
      const answer = await fetch(`/api/sites/${encodeURIComponent(this.model.id)}/log`);
      if (!answer.ok) return;
      const read = readLog(await answer.text());
      if ("entries" in read) this.log = read.entries;
    } catch {
      // the server is not reached: entries stay in the browser and go when it is back
    }
  }

  protected override render() {
    const { survey, weather, id } = this.model;
    if (!survey) return nothing;
    if (this.made?.of !== survey || this.made.weather !== weather)
      this.made = { of: survey, weather, on: onPlace(survey, weather) };
    const { on } = this.made;
    if (!on) return html`<p class="headline quiet">${frameWords.working}</p>`;
    this.store ??= browserStore(id);
    return html`<gwb-rounds
      .survey=${on.survey}
      .record=${on.record}
      .log=${this.log}
      .store=${this.store}
      .today=${today()}
      .say=${this.app.say}
      .explainSite=${this.explain}
      @change=${(event: CustomEvent<{ survey: Survey }>) => this.model.changeBeside(offPlace(event.detail.survey, survey))}
      @log=${(event: CustomEvent<{ entries: readonly LogEntry[] }>) => this.model.kept.addToLog([...event.detail.entries])}
    ></gwb-rounds>`;
  }
}

function browserStore(site: string): LogStore {
  try {
    return new BrowserLogStore(localStorage, site);
  } catch {
    return new PassingLogStore();
  }
}

/** Today on this device's own calendar, as YYYY-MM-DD. */
function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

customElements.define("gwb-rounds-place", RoundsPlace);
