import { html, LitElement, nothing, type TemplateResult } from "lit";
import { walkCautions } from "../../src/words/en/walk-cautions.ts";
import { walkWords } from "../../src/words/en/walk-screens.ts";
import type { Walk } from "./context.ts";
import { inkStyles } from "./drawings/styles.ts";
import { walkStyles } from "./styles.ts";

/**
 * One screen of the walk.
 *
 * @property walk the survey, the group's draft, and what may be done with them
 */
export abstract class Screen extends LitElement {
  static override properties = { walk: { attribute: false } };

  declare walk: Walk;

  static override styles = [...walkStyles, inkStyles];

  /** The head of a screen: the way back, whose walk it is. */
  protected top(back = "round"): TemplateResult {
    const { draft } = this.walk;
    return html`<div class="top">
      <button class="plain" @click=${() => this.walk.go(back)}>
        ${back === "round" ? walkWords.toRound : walkWords.back}
      </button>
      <p>${draft.nickname ? walkWords.group(draft.nickname) : nothing}</p>
    </div>`;
  }

  protected cautions(part: string): TemplateResult {
    return html`<section class="aside" aria-labelledby="cautions">
      <h3 id="cautions">${walkWords.cautions}</h3>
      <ul>
        ${(walkCautions[part] ?? []).map((caution) => html`<li>${caution}</li>`)}
      </ul>
    </section>`;
  }

  /** A link to a screen of the survey's field editor, where there is one. */
  protected toFields(at: string, words: string): TemplateResult | typeof nothing {
    const { fields } = this.walk;
    return fields ? html`<a class="plain" href=${fields(at)}>${words}</a>` : nothing;
  }

  /** Brings the keyboard and the reader's voice to the head of what is new. */
  focusHead(): void {
    this.renderRoot.querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
  }
}
