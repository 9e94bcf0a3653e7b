import { html, LitElement, nothing, type TemplateResult } from "lit";
import { fieldWords } from "../../src/words/en/editor.ts";
import { base } from "../look/base.ts";
import { fieldStyles } from "./styles.ts";

/** Where what stands in a field comes from. */
export type Origin = "measured" | "entered" | "assumed";

/**
 * What every field has: its name, hint, what stands in for it and what is wrong, in one root and tied to its control.
 *
 * @property label its name, as faults name it
 * @property hint what to look for, or how it is written
 * @property error what is wrong with what stands in it
 * @property standing what counts while it is blank or wrong
 * @property source where what stands in comes from
 * @property origin measured, entered or assumed: the style of its line
 * @fires change what somebody entered, chosen or left: not of what code sets
 */
export abstract class Field extends LitElement {
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };

  static override properties = {
    label: { attribute: false },
    hint: { attribute: false },
    error: { attribute: false },
    standing: { attribute: false },
    source: { attribute: false },
    origin: { attribute: false },
  };

  declare label: string;
  declare hint: string;
  declare error: string;
  declare standing: string;
  declare source: string;
  declare origin: Origin;

  static override styles = [base, fieldStyles];

  constructor() {
    super();
    this.label = "";
    this.hint = "";
    this.error = "";
    this.standing = "";
    this.source = "";
    this.origin = "entered";
  }

  /** Commits what is typed and not yet left. */
  commit(): void {}

  protected get state(): string {
    return `${this.origin}${this.error ? " wrong" : ""}`;
  }

  protected get describedBy(): string {
    const parts = { hint: this.hint, error: this.error, standing: this.standing };
    return Object.entries(parts)
      .filter(([, words]) => words !== "")
      .map(([id]) => id)
      .join(" ");
  }

  protected hintLine(): TemplateResult | typeof nothing {
    return this.hint ? html`<p id="hint" class="hint">${this.hint}</p>` : nothing;
  }

  /** What is wrong, then what counts meanwhile. */
  protected below(): TemplateResult {
    return html`${this.error ? html`<p id="error" class="error">${this.error}</p>` : nothing}
    ${
      this.standing
        ? html`<div class="standing"><span id="standing">${this.standing}</span> ${
            this.source
              ? html`<details>
                  <summary>${fieldWords.whereFrom}</summary>
                  <p>${this.source}</p>
                </details>`
              : nothing
          }</div>`
        : nothing
    }`;
  }

  protected tell(detail: unknown): void {
    this.dispatchEvent(new CustomEvent("change", { detail, bubbles: true }));
  }
}
