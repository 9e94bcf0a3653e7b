import { css, html, LitElement, type PropertyValues } from "lit";
import type { Working } from "../../src/explain/working.ts";
import { openedWords as words } from "../../src/words/en/workings.ts";
import { base } from "../look/base.ts";
import { provenanceLines } from "../look/provenance.ts";
import { type Explain, pageOf } from "./figure.ts";
import { figureStyles } from "./styles.ts";
import { sums } from "./sums.ts";

/**
 * The working of a figure that stands in a table, opened below its row. A number in it that came from others opens
 * in turn, with a way back.
 *
 * @property at address of the working
 * @property of what the figures are of: with another the workings are asked for anew
 * @property explain hands out workings by address
 * @fires gwb-close when Escape is pressed
 */
export class Opened extends LitElement {
  static override properties = {
    at: { attribute: false },
    of: { attribute: false },
    explain: { attribute: false },
    trail: { state: true },
    isAsked: { state: true },
  };

  declare at: string | undefined;
  declare of: unknown;
  declare explain: Explain | undefined;
  /** Workings from the first opened to the one shown. */
  declare private trail: readonly Working[];
  declare private isAsked: boolean;

  static override styles = [
    base,
    provenanceLines,
    figureStyles,
    css`
      :host {
        display: block;
        text-align: start;
      }
      .sums {
        float: none;
        margin: 0.2rem 0 0.6rem;
      }
    `,
  ];

  constructor() {
    super();
    this.trail = [];
    this.isAsked = false;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (this.at === undefined) return;
    if (changed.has("at")) {
      this.trail = [];
      void this.follow(this.at);
    } else if (changed.has("of")) void this.renew(this.at);
  }

  /** The same figure once its numbers have changed. */
  private async renew(at: string): Promise<void> {
    const next = await this.explain?.(at);
    if (this.at === at && next) this.trail = [next];
  }

  protected override render() {
    const shown = this.trail.at(-1);
    if (!shown) return html`<p class="quiet" role="status">${this.isAsked ? words.asked : words.nowhere}</p>`;
    const before = this.trail.at(-2);
    const host = {
      follow: (at: string) => void this.follow(at),
      back: before && this.back,
      before: before?.title,
      page: pageOf(shown),
    };
    return html`<div id="sums" class="sums" role="group" tabindex="-1" aria-label=${shown.title} @keydown=${this.escape}>
      ${sums(shown, host)}
    </div>`;
  }

  private async follow(at: string): Promise<void> {
    this.isAsked = true;
    const next = await this.explain?.(at);
    this.isAsked = false;
    if (!next) return;
    this.trail = [...this.trail, next];
    if (this.trail.length > 1) await this.readAnew();
  }

  private readonly back = (): void => {
    this.trail = this.trail.slice(0, -1);
    void this.readAnew();
  };

  /** The text has changed under the reader: it is read from its title again. */
  private async readAnew(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("#sums")?.focus({ preventScroll: true });
  }

  private readonly escape = (event: KeyboardEvent): void => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    this.dispatchEvent(new CustomEvent("gwb-close", { bubbles: true, composed: true }));
  };
}

customElements.define("gwb-opened", Opened);
