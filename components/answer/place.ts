import { css, html, nothing } from "lit";
import type { AnswerView } from "../../src/report/view.ts";
import { frameWords } from "../../src/words/en/frame.ts";
import { sheetLook } from "../frame/look.ts";
import { PlaceElement } from "../frame/place-element.ts";
import { answerPlace, sitePath } from "../frame/route.ts";
import type { Worked } from "../frame/site-model.ts";
import { base, pressable } from "../look/base.ts";
import type { Answer } from "./answer.ts";
import "./answer.ts";

const mostFaults = 12;

/** The site's answer, led to the part that the place names, and what stands in its way. */
export class AnswerPlace extends PlaceElement {
  static override styles = [
    base,
    pressable,
    sheetLook,
    css`
      .is-old {
        opacity: 0.55;
      }
      .in-the-way {
        margin: 0 0 2rem;
      }
    `,
  ];

  /** The view and place that the reader was led to. */
  private ledTo: { view: AnswerView; place: string } | null = null;

  protected override render() {
    const { view, worked } = this.model;
    return html`
      ${this.inTheWay(worked)}
      ${
        view
          ? html`<div class=${worked.is === "wrong" ? "is-old" : ""} aria-busy=${worked.is === "working"}>
              <gwb-answer
                .view=${view}
                .say=${this.app.say}
                .explain=${this.explain}
              ></gwb-answer>
            </div>`
          : worked.is === "working"
            ? html`<p class="headline quiet">${frameWords.working}</p>`
            : nothing
      }
    `;
  }

  protected override async updated(): Promise<void> {
    const { model, place } = this;
    const { view } = model;
    if (!view || (this.ledTo && this.ledTo.place === place)) return;
    this.ledTo = { view, place };
    if (place === answerPlace) return;
    const answer = this.renderRoot.querySelector<Answer>("gwb-answer");
    await answer?.updateComplete;
    const part = answer?.shadowRoot?.querySelector<HTMLElement>(`[id="${place}"]`);
    part?.focus({ preventScroll: true });
    if (part) leadTo(part);
  }

  private readonly explain = (at: string) => this.model.explain(at, this.app.say.system);

  private inTheWay(worked: Worked) {
    if (worked.is === "ready" || worked.is === "working") return nothing;
    if (worked.is === "not-reached")
      return html`<div class="in-the-way" role="alert">
        <h2>${frameWords.notReachedTitle}</h2>
        <p>${frameWords.notReached}</p>
        <p>
          <button type="button" class="plain" @click=${() => this.model.again()}>${frameWords.tryAgain}</button>
        </p>
      </div>`;
    if (worked.is === "crashed")
      return html`<div class="in-the-way" role="alert">
        <h2>${frameWords.failedTitle}</h2>
        <p>${frameWords.failed}</p>
        <p class="hint">${worked.message}</p>
      </div>`;
    const { of, faults } = worked;
    const to = of === "survey" ? "walk" : "weather";
    return html`<div class="in-the-way" role="alert">
      <h2>${frameWords.wrong[of](faults.length)}</h2>
      <ol>
        ${faults.slice(0, mostFaults).map(({ path, sentence }) => html`<li>${path ? html`<code>${path}</code> ` : nothing}${sentence}</li>`)}
      </ol>
      ${faults.length > mostFaults ? html`<p>${frameWords.more(faults.length - mostFaults)}</p>` : nothing}
      <p><a href=${sitePath(this.model.id, to)}>${of === "survey" ? frameWords.toWalk : frameWords.toWeather}</a></p>
    </div>`;
  }
}

/** Scrolls to a part, and again while the figures above it are still being drawn; whoever scrolls is not pulled back. */
function leadTo(part: HTMLElement): void {
  const go = () => part.scrollIntoView({ block: "start", behavior: "instant" });
  go();
  const timers = [100, 300, 700].map((ms) => setTimeout(go, ms));
  const stop = () => {
    for (const timer of timers) clearTimeout(timer);
  };
  for (const event of ["wheel", "pointerdown", "keydown"])
    addEventListener(event, stop, { once: true, passive: true });
}

customElements.define("gwb-answer-place", AnswerPlace);
