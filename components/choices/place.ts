import { html, nothing } from "lit";
import type { Survey } from "../../src/survey/survey.ts";
import { choicesPage } from "../../src/words/en/choices-page.ts";
import { frameWords } from "../../src/words/en/frame.ts";
import { type OnPlace, offPlace, onPlace } from "../frame/on-place.ts";
import { PlaceElement } from "../frame/place-element.ts";
import type { SiteWeather } from "../frame/site-weather.ts";
import { base } from "../look/base.ts";
import "./choices.ts";

/** The choices between measures of a kept site. */
export class ChoicesPlace extends PlaceElement {
  static override styles = [base];

  /** Made once for a survey and its weather, so that the screen does not begin anew at every turn. */
  private made: { of: Survey; weather: SiteWeather | null; on: OnPlace | null } | null = null;

  /** When the survey was saved last; null while it is not. */
  private get savedAs(): string | null {
    const { state, standing } = this.model;
    if (!state || standing.is !== "saved") return null;
    const when = new Intl.DateTimeFormat(undefined, { dateStyle: "long", timeStyle: "short" });
    return choicesPage.brief.savedAs(state.version, when.format(new Date(state.savedAt)));
  }

  protected override render() {
    const { survey, weather } = this.model;
    if (!survey) return nothing;
    if (this.made?.of !== survey || this.made.weather !== weather)
      this.made = { of: survey, weather, on: onPlace(survey, weather) };
    const { on } = this.made;
    if (!on) return html`<p class="headline quiet">${frameWords.working}</p>`;
    return html`<gwb-choices
      .survey=${on.survey}
      .weather=${on.record}
      .say=${this.app.say}
      .version=${this.savedAs}
      @change=${(event: CustomEvent<{ survey: Survey }>) => this.model.changeBeside(offPlace(event.detail.survey, survey))}
    ></gwb-choices>`;
  }
}

customElements.define("gwb-choices-place", ChoicesPlace);
