import { css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import {
  type SprinklerFault,
  sprinklerFaults,
  sprinklerFindings,
} from "../../../src/survey/measuring/sprinkler-checks.ts";
import { headsWords } from "../../../src/words/en/walk-panels.ts";
import { measureWords } from "../../../src/words/en/walk-screens.ts";
import { sprinklerWords } from "../../../src/words/en/walk-sprinklers.ts";
import { readNumber } from "../../fields/writing/number.ts";
import { NotesPanel } from "./notes.ts";

/** Sprinklers looked at while they run: so many with each fault, what mends it, and whether cans are worth it yet. */
export class HeadsPanel extends NotesPanel {
  static override styles = [
    ...NotesPanel.styles,
    css`
      .fault {
        display: grid;
        grid-template-columns: minmax(0, 1fr) 52px 2.2rem 52px;
        align-items: center;
        gap: 0.2rem;
        padding: 0.25rem 0;
        border-bottom: 1px solid var(--hair);
      }
      .fault .hint {
        grid-column: 1 / -1;
      }
      .step {
        width: 52px;
        height: 52px;
        border: 1.5px solid var(--ink);
        border-radius: 2px;
        background: none;
        font-size: 1.4rem;
        line-height: 1;
      }
      .number {
        text-align: center;
        font-size: 1.2rem;
      }
      .label {
        margin-top: 1rem;
      }
      input[type="text"] {
        width: 5rem;
      }
    `,
  ];

  protected override render() {
    const sprinklers = readNumber(this.note("sprinklers"), this.walk.locale) ?? 0;
    const seen = Object.fromEntries(sprinklerFaults.map((fault) => [fault, Number(this.note(fault)) || 0]));
    const { faults, cansWorthwhile } = sprinklerFindings({ sprinklers: Math.max(1, sprinklers), seen });
    return html`<p class="lead">${headsWords.lead}</p>
      <label class="label" for="sprinklers">${headsWords.number}</label>
      <input id="sprinklers" type="text" inputmode="numeric" autocomplete="off" .value=${live(this.note("sprinklers"))} @input=${this.keepTyped("sprinklers")} />
      <div role="group">${sprinklerFaults.map((fault) => this.fault(fault, seen[fault]!))}</div>
      ${
        sprinklers > 0
          ? html`<p class="result" role="status">${cansWorthwhile ? headsWords.cansNow : headsWords.mendFirst}</p>`
          : nothing
      }
      ${this.cautionLine()}
      <div class="grow"></div>
      <div class="foot">
        <button
          class="main"
          ?disabled=${sprinklers < 1}
          @click=${() =>
            this.take({
              how: "sprinklers looked at",
              readings: [sprinklers, ...sprinklerFaults.map((fault) => seen[fault]!)],
              word: headsWords.summary(faults.length, sprinklers),
              used: false,
              also: [],
            })}
        >${measureWords.keepIt}</button>
        ${this.pass()}
      </div>`;
  }

  private fault(fault: SprinklerFault, number: number) {
    const { seen, mend } = sprinklerWords[fault]!;
    const step = (by: number) => () => this.keepNote(fault, String(Math.max(0, number + by)));
    return html`<div class="fault">
      <span>${headsWords.each(seen)}</span>
      <button class="step" aria-label=${headsWords.fewer(seen)} ?disabled=${number === 0} @click=${step(-1)}>−</button>
      <span class="number" role="status" aria-label=${`${number} ${seen}`}>${number}</span>
      <button class="step" aria-label=${headsWords.more(seen)} @click=${step(1)}>+</button>
      ${number > 0 ? html`<span class="hint">${mend}</span>` : nothing}
    </div>`;
  }
}

customElements.define("gwb-walk-heads", HeadsPanel);
