import { html } from "lit";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { fieldSheetStyle } from "../../../src/report/field-sheet-style.ts";
import { fieldSheets } from "../../../src/report/field-sheets.ts";
import { type WalkPart, walkParts } from "../../../src/survey/measuring/way.ts";
import { sheetScreenWords } from "../../../src/words/en/walk-more.ts";
import { sheetWords } from "../../../src/words/en/walk-sheets.ts";
import { printOnly } from "../print.ts";
import { Screen } from "../screen.ts";

/** The field sheets, printed from here: the page itself is put away meanwhile. */
export class SheetsScreen extends Screen {
  static override properties = { ...Screen.properties, parts: { state: true } };

  declare parts: readonly WalkPart[];

  constructor() {
    super();
    this.parts = walkParts;
  }

  protected override render() {
    const turn = (part: WalkPart) => {
      this.parts = walkParts.filter((one) => this.parts.includes(one) !== (one === part));
    };
    return html`<section class="screen" aria-labelledby="head">
      ${this.top(this.walk.draft.nickname ? "round" : "")}
      <h2 id="head" tabindex="-1">${sheetScreenWords.heading}</h2>
      <p class="lead">${sheetScreenWords.lead}</p>
      <h3 id="parts">${sheetScreenWords.parts}</h3>
      <div class="answers" role="group" aria-labelledby="parts">
        ${walkParts.map(
          (
            part,
          ) => html`<button class="answer" aria-pressed=${this.parts.includes(part)} @click=${() => turn(part)}>
            <span class="words">${sheetWords.parts[part]}</span>
          </button>`,
        )}
      </div>
      <div class="grow"></div>
      <div class="foot">
        <button class="main" ?disabled=${this.parts.length === 0} @click=${this.print}>${sheetScreenWords.print}</button>
      </div>
    </section>`;
  }

  /** The sheets' own page, its body in the paper and its style beside it. */
  private readonly print = (): void => {
    const page = fieldSheets(sheetWords, this.parts);
    const [, body = ""] = /<main>([\s\S]*)<\/main>/.exec(page) ?? [];
    printOnly(html`<main>${unsafeHTML(body)}</main>`, paperStyle);
  };
}

const paperStyle = `${fieldSheetStyle.replace(/(^|\n)body/, "$1:host")}
:host { display: block } @media screen { :host { display: none } }`;

customElements.define("gwb-walk-sheets", SheetsScreen);
