import { css, html, LitElement, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { FoundPlant, findPlant } from "../../../src/survey/measuring/find-plant.ts";
import { searchWords } from "../../../src/words/en/walk-aids.ts";
import { plantKinds, thirstSaid } from "../../../src/words/en/walk-answers.ts";
import { climateWords } from "../../../src/words/en/walk-keys.ts";
import { walkStyles } from "../styles.ts";

/**
 * Plants by name, spelled as one can. The list is large and comes when it is first wanted.
 *
 * @property typed
 * @fires type `{ text }`
 * @fires plant `{ genus, thirst }` the one chosen
 */
export class PlantSearch extends LitElement {
  static override properties = {
    typed: { attribute: false },
    find: { state: true },
    missing: { state: true },
  };

  declare typed: string;
  declare find: typeof findPlant | null;
  /** The list could not be fetched. */
  declare missing: boolean;

  static override styles = [
    ...walkStyles,
    css`
      input[type="text"] {
        width: min(100%, 22rem);
        margin-top: 0.3rem;
      }
    `,
  ];

  constructor() {
    super();
    this.typed = "";
    this.find = null;
    this.missing = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.fetchList();
  }

  private readonly fetchList = async (): Promise<void> => {
    this.missing = false;
    try {
      this.find = (await import("../../../src/survey/measuring/find-plant.ts")).findPlant;
    } catch {
      this.missing = true;
    }
  };

  protected override render() {
    const found = this.find?.(this.typed) ?? [];
    return html`<h3><label for="plant">${searchWords.label}</label></h3>
      <p class="hint" id="hint">${searchWords.hint}</p>
      <input
        id="plant"
        type="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck="false"
        aria-describedby="hint"
        .value=${live(this.typed)}
        @input=${this.type}
      />
      <p class="note" role="status">${this.says(found.length)}</p>
      ${this.missing ? html`<button class="press" @click=${this.fetchList}>${searchWords.again}</button>` : nothing}
      <div class="answers">${found.map((one) => this.line(one))}</div>`;
  }

  private says(found: number): string {
    if (this.missing) return searchWords.noList;
    if (this.typed.trim().length < 2) return "";
    return found === 0 ? searchWords.none : searchWords.found(found);
  }

  private line({ genus, name, off }: FoundPlant) {
    const { thirst, climate, kind } = genus;
    const range =
      thirst.from && thirst.to && thirst.from !== thirst.to ? searchWords.range(thirst.from, thirst.to) : "";
    return html`<button class="answer" @click=${() => this.choose(genus.genus, thirst.is)}>
      <span class="words">
        <strong>${genus.genus}</strong>${name === genus.genus ? nothing : html`, ${name}`}${off > 0 ? html` <span class="quiet">${searchWords.spelled}</span>` : nothing}
        <span class="about">${plantKinds[kind] ?? kind}, ${thirstSaid(thirst.is)}${range}.
          ${searchWords.speaksFor(climateWords[climate] ?? climate)} ${thirst.memory ? searchWords.fromMemory : thirst.source}</span>
      </span>
    </button>`;
  }

  private readonly type = (event: Event): void => {
    this.typed = (event.target as HTMLInputElement).value;
    this.dispatchEvent(new CustomEvent("type", { detail: { text: this.typed } }));
  };

  private choose(genus: string, thirst: string): void {
    this.dispatchEvent(new CustomEvent("plant", { detail: { genus, thirst } }));
  }
}

customElements.define("gwb-plant-search", PlantSearch);
