import { html } from "lit";
import type { Survey } from "../../src/survey/survey.ts";
import { PlaceElement } from "../frame/place-element.ts";
import { sitePath } from "../frame/route.ts";
import { Compute } from "../frame/work/compute.ts";
import type { Weigh } from "./context.ts";
import "./walk.ts";

/** The walk as a place of a site: its survey from the model, litres worked out beside the page. */
export class WalkingPlace extends PlaceElement {
  private readonly compute = new Compute();
  /** The weighing under way: the worker's newest call overtakes, so that they go one after another. */
  private last: Promise<unknown> = Promise.resolve();

  override disconnectedCallback(): void {
    this.compute.stop();
    super.disconnectedCallback();
  }

  private readonly weigh: Weigh = (survey) => {
    const next = this.last.then(() => this.weighOne(survey));
    this.last = next.catch(() => null);
    return next;
  };

  private async weighOne(survey: Survey): ReturnType<Weigh> {
    const { weather } = this.model;
    if (!weather || weather.is === "none") throw new Error("no weather to work it out on");
    const told = await this.compute.ask({ kind: "answer", survey, weather: weather.of });
    if (!told || !("view" in told)) throw new Error("the survey cannot be worked out yet");
    const { beds, mains } = told.view;
    return {
      beds: new Map(beds.map(({ id, gross_L_year }) => [id, gross_L_year])),
      need_kL_year: mains.need_kL,
    };
  }

  protected override render() {
    const { model, app } = this;
    return html`<gwb-walk
      .site=${model.id}
      .survey=${model.survey}
      .system=${app.say.system}
      .weigh=${this.weigh}
      .route=${this.rest}
      @change=${(event: CustomEvent<{ survey: Survey }>) => model.change(event.detail.survey)}
      @route=${(event: CustomEvent<{ route: string }>) => app.go(sitePath(model.id, this.place, event.detail.route))}
    ></gwb-walk>`;
  }
}

customElements.define("gwb-walking-place", WalkingPlace);
