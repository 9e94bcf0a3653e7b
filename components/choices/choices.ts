import { html, LitElement, nothing, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import type { Survey } from "../../src/survey/survey.ts";
import { choicesPage } from "../../src/words/en/choices-page.ts";
import { type Formatter, formatter } from "../../src/words/format.ts";
import { sheet } from "../answer/parts.ts";
import type { Chart } from "../charts/chart.ts";
import "../charts/plate.ts";
import { base, pressable } from "../look/base.ts";
import { provenanceLines } from "../look/provenance.ts";
import type { GivenWeather } from "./messages.ts";
import { paper } from "./paper.ts";
import { answerPart } from "./parts/answer.ts";
import { contents, refused } from "./parts/around.ts";
import { briefPart } from "./parts/brief.ts";
import { budgetPart } from "./parts/budget.ts";
import { measuresPart } from "./parts/measures.ts";
import { moneyPart, sharesPart } from "./parts/money.ts";
import { sizesPart } from "./parts/sizes.ts";
import { surePart } from "./parts/sure.ts";
import { weatherPart } from "./parts/weather.ts";
import { type Screen, saidOf } from "./screen.ts";
import { Session } from "./session.ts";
import { choicesStyles } from "./styles.ts";
import { tablesLook } from "./tables-look.ts";

/** While somebody types a quote, what its money does not touch at once is drawn after so long a pause. */
const pause_ms = 160;

/**
 * Choices: is another tank worth it, or what else first. The answer in a sentence with its width, measures and their
 * quotes, sizes, the best set for each budget, shares, money, draws, other weather, and the brief to print.
 *
 * @property survey what is decided upon; one that was told comes back without being worked out again
 * @property weather the record as CSV text or read; null: the survey's own normals
 * @property say how numbers and units are written
 * @property version when the survey was saved, in words, for the brief
 * @fires change `{ survey }`: the whole survey after a quote, a tick or a proposal taken
 */
export class Choices extends LitElement {
  static override properties = {
    survey: { attribute: false },
    weather: { attribute: false },
    say: { attribute: false },
    version: { attribute: false },
  };

  declare survey: Survey | null;
  declare weather: GivenWeather;
  declare say: Formatter;
  declare version: string | null;

  private readonly session = new Session({
    draw: (isTyping) => this.draw(isTyping),
    tell: (survey) => {
      const detail = { survey };
      this.dispatchEvent(new CustomEvent("change", { detail, bubbles: true, composed: true }));
    },
  });
  private charts = new Map<string, { of: unknown; say: Formatter; chart: Chart }>();
  /** What is shown of the parts that follow in a pause. */
  private later: Screen | null = null;
  private isTyping = false;
  private pause: ReturnType<typeof setTimeout> | undefined;

  static override styles = [base, pressable, sheet, provenanceLines, choicesStyles, tablesLook, paper];

  constructor() {
    super();
    this.survey = null;
    this.weather = null;
    this.say = formatter("metric", undefined);
    this.version = null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("hashchange", this.linked);
    if (this.hasUpdated) this.linked();
  }

  override disconnectedCallback(): void {
    removeEventListener("hashchange", this.linked);
    clearTimeout(this.pause);
    this.session.stop();
    super.disconnectedCallback();
  }

  private readonly linked = (): void => this.session.begin(this.survey, this.weather);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const isOther = changed.has("survey") && !this.session.isOwn(this.survey);
    if (isOther || changed.has("weather")) this.linked();
    if (changed.has("say")) this.isTyping = false;
  }

  private draw(isTyping: boolean): void {
    this.isTyping = isTyping;
    clearTimeout(this.pause);
    if (isTyping) this.pause = setTimeout(() => this.draw(false), pause_ms);
    this.requestUpdate();
  }

  private readonly explain = (at: string) => this.session.explain(at, this.say.system);

  private readonly copyLink = (): Promise<void> => this.session.copyLink();

  private readonly printWorkings = async (): Promise<void> => {
    await this.session.workOut(this.say.system);
    await this.updateComplete;
    print();
  };

  private chart(key: string, of: unknown, make: () => Chart): Chart {
    const kept = this.charts.get(key);
    if (kept && kept.of === of && kept.say === this.say) return kept.chart;
    const chart = make();
    this.charts.set(key, { of, say: this.say, chart });
    return chart;
  }

  protected override render() {
    const { now, choices, faults, isWorking, isStale, copied, workings } = this.session;
    if (!now) return html`<p class="headline">${choicesPage.noSurvey}</p>`;
    if (faults.length > 0) return refused(faults);
    if (now.beds.length === 0) return html`<p class="headline">${choicesPage.noBeds}</p>`;
    if (!choices) return html`<p class="headline" role="status">${choicesPage.working}</p>`;
    const { asked, drawing, typed, acts, opened } = this.session;
    const screen: Screen = {
      choices,
      survey: now,
      state: asked,
      say: this.say,
      drawing,
      isStale,
      typed,
      acts,
      said: saidOf(now, choices.currency, this.say),
      chart: (key, of, make) => this.chart(key, of, make),
      explain: this.explain,
      open: opened,
    };
    if (!this.isTyping || !this.later) this.later = screen;
    const { later, version, copyLink, printWorkings } = this;
    return html`${contents(this.renderRoot)}
      <div class=${isStale ? "quotes-change" : isWorking ? "busy" : ""} aria-busy=${isWorking ? "true" : nothing}>
        ${answerPart(screen)} ${measuresPart(screen)}
        ${guard([later], () => [sizesPart(later), budgetPart(later), sharesPart(later)])}
        ${moneyPart(screen)}
        ${guard([later], () => [
          surePart(later),
          weatherPart(later),
          briefPart(later, { version, copied, copyLink, workings, printWorkings }),
        ])}
      </div>`;
  }
}

customElements.define("gwb-choices", Choices);
