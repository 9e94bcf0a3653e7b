import { html } from "lit";
import type { Draft } from "../../src/survey/edit/document.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { PlaceElement } from "../frame/place-element.ts";
import { sitePath } from "../frame/route.ts";
import "./editor.ts";

/** The walk: the site's survey, every field of it. */
export class WalkPlace extends PlaceElement {
  protected override render() {
    const { model, app } = this;
    return html`<gwb-editor
      .survey=${model.survey}
      .draft=${model.draft as Draft | null}
      .at=${this.rest}
      .base=${`${sitePath(model.id, this.place)}/`}
      .system=${app.say.system}
      @change=${(event: CustomEvent<{ survey: Survey }>) => model.change(event.detail.survey)}
      @draft-change=${(event: CustomEvent<{ draft: object | null }>) => model.typeDraft(event.detail.draft)}
      @at-change=${(event: CustomEvent<{ at: string }>) => app.go(sitePath(model.id, this.place, event.detail.at))}
    ></gwb-editor>`;
  }
}

customElements.define("gwb-walk-place", WalkPlace);
