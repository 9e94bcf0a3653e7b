import { css, html } from "lit";
import type { Working } from "../../src/explain/working.ts";
import type { AnswerView } from "../../src/report/view.ts";
import { frameWords } from "../../src/words/en/frame.ts";
import { figureWords as words } from "../../src/words/en/page.ts";
import { figureStyles } from "../figure/styles.ts";
import { sums } from "../figure/sums.ts";
import { AnsweredPlace } from "../frame/answered-place.ts";
import { sitePath } from "../frame/route.ts";
import { provenanceLines } from "../look/provenance.ts";

/**
 * One figure's working on a page of its own, to keep as a bookmark, to send and to print. What follows the place in
 * the address is the figure's: `/working/bed/oval/ks/2015-07-14`.
 */
export class WorkingPlace extends AnsweredPlace {
  static override properties = { ...AnsweredPlace.properties, shown: { state: true } };

  /** What was found at an address; null where it leads nowhere. */
  declare private shown: { at: string; units: string; of: AnswerView; working: Working | null } | null;

  /** What was asked for last, and of which answer: a figure under way is not asked for twice. */
  private asked: { key: string; of: AnswerView } | null = null;

  static override styles = [
    ...AnsweredPlace.styles,
    provenanceLines,
    figureStyles,
    css`
      h2 {
        max-width: 43rem;
        font-size: clamp(1.5rem, 1.1rem + 1.6vw, 2.2rem);
        font-weight: 340;
        line-height: 1.2;
        text-wrap: pretty;
      }
      .sums {
        float: none;
        max-width: 52rem;
        margin-top: 1.4rem;
      }
      .title {
        display: none;
      }
      @media print {
        .ways-on {
          display: none;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.shown = null;
  }

  protected override updated(): void {
    const { model, rest, app } = this;
    const { view } = model;
    const units = app.say.system;
    if (model.worked.is !== "ready" || !view) return;
    if (this.shown?.of === view && this.shown.at === rest && this.shown.units === units) return;
    const key = `${rest} ${units}`;
    if (this.asked?.key === key && this.asked.of === view) return;
    this.asked = { key, of: view };
    void this.find(rest, units, view, key);
  }

  private async find(at: string, units: string, of: AnswerView, key: string): Promise<void> {
    const working = await this.explain(at).catch(() => null);
    if (this.asked?.key === key && this.asked.of === of) this.shown = { at, units, of, working };
  }

  protected override sheet() {
    const { shown, model } = this;
    if (!shown) return null;
    const toAnswer = html`<p class="ways-on"><a href=${sitePath(model.id)}>${words.toAnswer}</a></p>`;
    const { working } = shown;
    if (!working)
      return html`<h2>${frameWords.unknownTitle}</h2>
        <p class="lead">${words.noFigure(shown.at)}</p>
        ${toAnswer}`;
    return html`<h2>${working.title}</h2>
      <div class="sums">${sums(working, { follow: this.follow, back: undefined, before: undefined, page: undefined })}</div>
      ${toAnswer}`;
  }

  private readonly follow = (at: string): void => this.app.go(sitePath(this.model.id, this.place, at));
}

customElements.define("gwb-working-place", WorkingPlace);
