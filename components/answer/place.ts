import { html } from "lit";
import type { AnswerView } from "../../src/report/view.ts";
import { AnsweredPlace } from "../frame/answered-place.ts";
import { sitePath } from "../frame/route.ts";
import type { AnswerWidth } from "../frame/work/messages.ts";
import "./answer.ts";

/** Entries come in a row: draws are begun once they rest. */
const rest_ms = 400;

/** The site's answer, with how far it may be out. */
export class AnswerPlace extends AnsweredPlace {
  static override properties = { ...AnsweredPlace.properties, width: { state: true } };

  declare private width: { of: AnswerView; is: AnswerWidth } | null;

  private drawn: AnswerView | null = null;
  private resting: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.width = null;
  }

  override disconnectedCallback(): void {
    clearTimeout(this.resting);
    this.drawn = null;
    super.disconnectedCallback();
  }

  protected override updated(): void {
    const { view, worked } = this.model;
    if (worked.is !== "ready" || !view || view === this.drawn) return;
    this.drawn = view;
    clearTimeout(this.resting);
    this.resting = setTimeout(() => void this.draw(view), rest_ms);
  }

  private async draw(of: AnswerView): Promise<void> {
    const each = (is: AnswerWidth | null) => {
      if (is && this.drawn === of) this.width = { of, is };
    };
    // without draws the answer stands, as sure as its years
    await this.model.width(each).catch(() => null);
  }

  protected override sheet() {
    const { view, id } = this.model;
    return (
      view &&
      html`<gwb-answer
        .view=${view}
        .width=${this.width?.of === view ? this.width.is : null}
        .say=${this.app.say}
        .explain=${this.explain}
        .places=${(place: string) => sitePath(id, place)}
      ></gwb-answer>`
    );
  }
}

customElements.define("gwb-answer-place", AnswerPlace);
