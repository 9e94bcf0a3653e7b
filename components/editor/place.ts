import { css, html, nothing } from "lit";
import type { Draft } from "../../src/survey/edit/document.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { surveyPlaceWords } from "../../src/words/en/frame.ts";
import { PlaceElement } from "../frame/place-element.ts";
import { sitePath } from "../frame/route.ts";
import { base, pressable } from "../look/base.ts";
import type { Editor } from "./editor.ts";
import "./editor.ts";

/** Lists whose entries a walk measures. */
const walked = ["beds", "roofs", "tanks", "taps", "draws", "leaks"];

/** The site's survey, every field of it; `at/PATH` leads to the field at a path of the document. */
export class SurveyPlace extends PlaceElement {
  static override styles = [
    base,
    pressable,
    css`
      .to-walk {
        margin-bottom: 1.2rem;
      }
      @media print {
        .to-walk {
          display: none;
        }
      }
    `,
  ];

  protected override render() {
    const { model, app } = this;
    if (!model.survey) return nothing;
    return html`<p class="to-walk">${this.toWalk()}</p>
      <gwb-editor
        .survey=${model.survey}
        .draft=${model.draft as Draft | null}
        .at=${this.rest.startsWith("at/") ? "" : this.rest}
        .base=${`${sitePath(model.id, this.place)}/`}
        .system=${app.say.system}
        .beyond=${{ undo: model.state?.undo ?? null, redo: model.state?.redo ?? null }}
        @change=${(event: CustomEvent<{ survey: Survey }>) => model.change(event.detail.survey)}
        @draft-change=${(event: CustomEvent<{ draft: object | null }>) => model.typeDraft(event.detail.draft)}
        @step-beyond=${(event: CustomEvent<{ way: "undo" | "redo" }>) => void this.stepKept(event.detail.way)}
        @at-change=${(event: CustomEvent<{ at: string }>) => this.goOn(event.detail.at)}
      ></gwb-editor>`;
  }

  protected override async updated(changed: Map<PropertyKey, unknown>): Promise<void> {
    if (!changed.has("rest") || !this.rest.startsWith("at/")) return;
    const editor = this.renderRoot.querySelector<Editor>("gwb-editor");
    await editor?.updateComplete;
    editor?.openField(decodeURIComponent(this.rest.slice("at/".length)));
  }

  /** Undone or done again among the versions; out of reach, it stays as it is and the head says how it stands. */
  private async stepKept(way: "undo" | "redo"): Promise<void> {
    await this.model[way]().catch(() => null);
  }

  /** A field's own address gives way to that of its screen. */
  private goOn(at: string): void {
    this.app.go(sitePath(this.model.id, this.place, at), { replace: this.rest.startsWith("at/") });
  }

  /** The way to the walk: to the thing at hand, where it is one that groups measure. */
  private toWalk() {
    const [list = "", id] = this.rest.split("/");
    const isThing = walked.includes(list) && id !== undefined;
    const to = sitePath(this.model.id, "walk", isThing ? `thing/${list}/${id}` : "");
    return html`<a href=${to}>${isThing ? surveyPlaceWords.measure : surveyPlaceWords.walk}</a>`;
  }
}

customElements.define("gwb-survey-place", SurveyPlace);
