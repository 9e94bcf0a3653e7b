import { css, html } from "lit";
import { live } from "lit/directives/live.js";
import { tankUseWords } from "../../../src/words/en/walk-panels.ts";
import { measureWords } from "../../../src/words/en/walk-screens.ts";
import { NotesPanel } from "./notes.ts";

const asked = ["valve", "pump", "who", "seen"] as const;

/** Whether a tank is used, and what was seen and said about it. */
export class TankUsePanel extends NotesPanel {
  static override styles = [
    ...NotesPanel.styles,
    css`
      .label {
        margin-top: 1.1rem;
      }
      input[type="text"] {
        width: 100%;
        font-size: 1.1rem;
      }
    `,
  ];

  protected override render() {
    const used = this.note("used");
    const press = (value: string, words: string) =>
      html`<button class="answer" aria-pressed=${used === value} @click=${() => this.keepNote("used", value)}>
        <span class="words"><strong>${words}</strong></span>
      </button>`;
    return html`<p class="lead">${tankUseWords.hint}</p>
      <div class="answers">${press("yes", tankUseWords.used)} ${press("no", tankUseWords.notUsed)}</div>
      ${asked.map(
        (name) => html`<label class="label" for=${name}>${tankUseWords.notes[name]}</label>
          <input
            id=${name}
            type="text"
            dir="auto"
            maxlength="300"
            autocomplete="off"
            .value=${live(this.note(name))}
            @input=${this.keepTyped(name)}
          />`,
      )}
      ${this.cautionLine()}
      <div class="grow"></div>
      <div class="foot">
        <button class="main" ?disabled=${used === ""} @click=${() => this.keepUse(used === "yes")}>
          ${measureWords.keepIt}
        </button>
        ${this.pass()}
      </div>`;
  }

  private keepUse(isUsed: boolean): void {
    const text = asked
      .filter((name) => this.note(name).trim() !== "")
      .map((name) => `${tankUseWords.notes[name]} ${this.note(name).trim()}`)
      .join(" ");
    const word = isUsed ? tankUseWords.used : tankUseWords.notUsed;
    this.take({ how: "seen", readings: [], word, used: false, text, set: [[this.stop.at, isUsed]] });
  }
}

customElements.define("gwb-walk-tank-use", TankUsePanel);
