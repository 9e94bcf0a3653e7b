import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { Working } from "../../src/explain/working.ts";
import { figureWords as words } from "../../src/words/en/page.ts";
import { readRoute, sitePath } from "../frame/route.ts";
import { base } from "../look/base.ts";
import { provenanceLines } from "../look/provenance.ts";
import { figureStyles } from "./styles.ts";
import { sums } from "./sums.ts";

/** Hands out the working of an address; null where it leads nowhere. */
export type Explain = (address: string) => Promise<Working | null>;

/**
 * A figure in a sentence. Its underline says where it came from; it opens its working below the line that
 * it stands in, like a margin of sums. A number in it that came from others opens in turn, with a way back. The
 * same figure or Escape closes it.
 *
 * @property text the figure as shown
 * @property working what opens first; without one or an address the figure is plain text
 * @property at address of the working that opens, asked for when it is wanted
 * @property provenance how the figure stands, where only its address is given
 * @property explain hands out workings by address; without it nothing opens further
 */
export class Figure extends LitElement {
  static override properties = {
    text: { attribute: false },
    working: { attribute: false },
    at: { attribute: false },
    provenance: { attribute: false },
    explain: { attribute: false },
    open: { type: Boolean, reflect: true },
    trail: { state: true },
  };

  declare text: string;
  declare working: Working | undefined;
  declare at: string | undefined;
  declare provenance: Working["provenance"];
  declare explain: Explain | undefined;
  declare open: boolean;
  /** Workings from the first opened to the one shown. */
  declare private trail: readonly Working[];

  static override styles = [base, provenanceLines, figureStyles];

  constructor() {
    super();
    this.text = "";
    this.provenance = "worked-out";
    this.open = false;
    this.trail = [];
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("text") && this.open && this.at && this.trail.length > 0) void this.renew(this.at);
  }

  /** The figure has changed while it is open: its working is asked for anew. */
  private async renew(at: string): Promise<void> {
    const next = await this.explain?.(at);
    if (next && this.open) this.trail = [next];
  }

  protected override render() {
    if (!this.working && !(this.at && this.explain)) return html`${this.text}`;
    const shown = this.trail.at(-1) ?? this.working;
    return html`<button
        class="line ${this.working?.provenance ?? this.provenance}"
        aria-expanded=${this.open}
        aria-controls="sums"
        aria-description=${words.open}
        @click=${this.toggle}
        @keydown=${this.escape}
      >${this.text}</button>${this.open && shown ? this.margin(shown) : nothing}`;
  }

  private margin(working: Working) {
    const before = this.trail.at(-2) ?? (this.trail.length > 0 ? this.working : undefined);
    return html`<div id="sums" class="sums" role="group" tabindex="-1" aria-label=${working.title} @keydown=${this.escape}>
      ${sums(working, {
        follow: this.explain && this.follow,
        back: before && this.back,
        before: before?.title,
        page: pageOf(working),
      })}
    </div>`;
  }

  private readonly toggle = async (): Promise<void> => {
    if (this.open) {
      this.close();
      return;
    }
    this.trail = [];
    if (!this.working && this.at) await this.follow(this.at);
    this.open = true;
  };

  private readonly follow = async (address: string): Promise<void> => {
    const next = await this.explain?.(address);
    if (!next) return;
    this.trail = [...this.trail, next];
    await this.readAnew();
  };

  private readonly back = async (): Promise<void> => {
    this.trail = this.trail.slice(0, -1);
    await this.readAnew();
  };

  /** The margin's text has changed under the reader: it is read from its title again. */
  private async readAnew(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("#sums")?.focus({ preventScroll: true });
  }

  private close(): void {
    this.open = false;
    this.trail = [];
  }

  private readonly escape = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || !this.open) return;
    event.stopPropagation();
    this.close();
    this.renderRoot.querySelector("button")?.focus();
  };
}

/** Where a kept site's working stands by itself. */
export function pageOf({ at }: Working): string | undefined {
  const route = readRoute(location.pathname);
  return at !== undefined && route.screen === "site" ? sitePath(route.id, "working", at) : undefined;
}

customElements.define("gwb-figure", Figure);
