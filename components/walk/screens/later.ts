import { html, LitElement, type PropertyValues } from "lit";
import { laterWords } from "../../../src/words/en/walk-more.ts";
import { walkStyles } from "../styles.ts";

/**
 * Shows a screen once its code is there; says so where it cannot be fetched.
 *
 * @property load fetches the code
 * @property back goes back where it does not come
 */
class Later extends LitElement {
  static override properties = {
    load: { attribute: false },
    back: { attribute: false },
    missing: { state: true },
  };

  declare load: () => Promise<unknown>;
  declare back: () => void;
  declare missing: boolean;

  static override styles = walkStyles;

  constructor() {
    super();
    this.missing = false;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("load")) void this.fetchIt();
  }

  private readonly fetchIt = async (): Promise<void> => {
    this.missing = false;
    try {
      await this.load();
    } catch {
      this.missing = true;
    }
  };

  protected override render() {
    return this.missing
      ? html`<p class="lead" role="alert">${laterWords.missing}</p>
          <button class="press" @click=${this.fetchIt}>${laterWords.again}</button>
          <button class="plain" @click=${this.back}>${laterWords.back}</button>`
      : html`<slot></slot>`;
  }
}

customElements.define("gwb-walk-later", Later);
