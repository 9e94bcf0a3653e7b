import { html, nothing } from "lit";
import type { Draft } from "../../src/survey/edit/document.ts";
import { healed } from "../../src/survey/edit/heal.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { PlaceElement } from "../frame/place-element.ts";
import { sitePath } from "../frame/route.ts";
import type { Weight } from "./order.ts";
import { isScreen } from "./routes.ts";
import { Weighing } from "./weighing.ts";
import "./walk.ts";

/** The walk as a place of a site: its survey from the model, litres worked out beside the page. */
export class WalkPlace extends PlaceElement {
  static override properties = { ...PlaceElement.properties, weights: { state: true } };

  declare private weights: readonly Weight[];

  private readonly weighing = new Weighing();
  private isWeighed = false;
  private mended: { of: object; survey: Survey } | null = null;

  constructor() {
    super();
    this.weights = [];
  }

  override disconnectedCallback(): void {
    this.weighing.stop();
    super.disconnectedCallback();
  }

  /** Addresses of fields, from before the survey had a place of its own, lead there. */
  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has("rest") && !isScreen(this.rest))
      queueMicrotask(() => this.app.go(this.fields(this.rest), { replace: true }));
  }

  /** What each open question does to the answer, worked out once for a walk. */
  protected override updated(): void {
    const { survey } = this;
    const { weather } = this.model;
    if (this.isWeighed || !survey || !weather || weather.is === "none") return;
    this.isWeighed = true;
    void this.weighing.weights(survey, weather, (weights) => {
      this.weights = weights;
    });
  }

  private readonly fields = (at: string): string => sitePath(this.model.id, "survey", at);

  private readonly weigh = (survey: Survey) => this.weighing.weigh(survey, this.model.weather);

  /** What counts, with what is right of entries that still need another look. */
  private get survey(): Survey | null {
    const { survey, draft } = this.model;
    if (!survey || !draft) return survey;
    if (this.mended?.of !== draft) this.mended = { of: draft, survey: healed(draft as Draft, survey) };
    return this.mended.survey;
  }

  protected override render() {
    const { model, app, survey } = this;
    if (!survey || !isScreen(this.rest)) return nothing;
    return html`<gwb-walk
      .site=${model.id}
      .survey=${survey}
      .system=${app.say.system}
      .weigh=${this.weigh}
      .weights=${this.weights}
      .fields=${this.fields}
      .route=${this.rest}
      @change=${(event: CustomEvent<{ survey: Survey }>) => model.changeBeside(event.detail.survey, survey)}
      @route=${(event: CustomEvent<{ route: string }>) => app.go(sitePath(model.id, this.place, event.detail.route))}
    ></gwb-walk>`;
  }
}

customElements.define("gwb-walk-place", WalkPlace);
