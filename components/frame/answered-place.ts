import { css, html, nothing, type TemplateResult } from "lit";
import { frameWords } from "../../src/words/en/frame.ts";
import type { Explain } from "../figure/figure.ts";
import { base, pressable } from "../look/base.ts";
import { calculationStopped, inTheWay } from "./in-the-way.ts";
import { PlaceElement } from "./place-element.ts";
import { sheetLook } from "./sheet-look.ts";

/** A place that shows the site's answer, or what is made of it; above it, what stands in its way. */
export abstract class AnsweredPlace extends PlaceElement {
  static override properties = { ...PlaceElement.properties, stopped: { state: true } };

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

  /** What is shown; null until it is there. An older one stays while the next is worked out. */
  protected abstract sheet(): TemplateResult | null;

  /** What stopped the view from being made: a fault of the program. */
  declare protected stopped: string | null;

  constructor() {
    super();
    this.stopped = null;
  }

  protected readonly explain: Explain = (at) => this.model.explain(at, this.app.say.system);

  protected override render() {
    const { worked } = this.model;
    const sheet = this.sheet();
    return html`
      ${inTheWay(this.model)} ${this.stopped ? calculationStopped(this.stopped) : nothing}
      ${
        sheet
          ? html`<div class=${worked.is === "wrong" ? "is-old" : ""} aria-busy=${worked.is === "working"}>
              ${sheet}
            </div>`
          : !this.stopped && (worked.is === "working" || worked.is === "ready")
            ? html`<p class="headline quiet">${frameWords.working}</p>`
            : nothing
      }
    `;
  }
}
