import { css, html, LitElement, nothing } from "lit";
import { type Key, walkKey } from "../../../src/survey/measuring/key.ts";
import { soilFeelKey, thirstKey } from "../../../src/tables/keys.ts";
import { keyWords } from "../../../src/words/en/walk-aids.ts";
import { reasonWords, soilQuestions, thirstQuestions } from "../../../src/words/en/walk-keys.ts";
import { plantDrawing } from "../drawings/key-plants.ts";
import { soilDrawing } from "../drawings/key-soil.ts";
import { inkStyles } from "../drawings/styles.ts";
import { walkStyles } from "../styles.ts";

const keys: Readonly<
  Record<string, { key: Key; questions: typeof thirstQuestions; drawing: typeof plantDrawing }>
> = {
  "thirst-key": { key: thirstKey, questions: thirstQuestions, drawing: plantDrawing },
  "soil-feel": { key: soilFeelKey, questions: soilQuestions, drawing: soilDrawing },
};

/**
 * A decision key, a question at a time, its answers drawn.
 *
 * @property way which key
 * @property answers places of the answers so far
 * @property says names the word that it ends at
 * @fires answer `{ answers }`
 */
export class WalkKey extends LitElement {
  static override properties = {
    way: { attribute: false },
    answers: { attribute: false },
    says: { attribute: false },
  };

  declare way: string;
  declare answers: readonly number[];
  declare says: (word: string) => string;

  static override styles = [
    ...walkStyles,
    inkStyles,
    css`
      .answer {
        min-height: 76px;
      }
      .path {
        margin-top: 0.8rem;
        padding: 0;
        list-style: none;
        color: var(--grey);
      }
      .path button {
        color: inherit;
        text-align: start;
      }
    `,
  ];

  constructor() {
    super();
    this.way = "";
    this.answers = [];
    this.says = (word) => word;
  }

  protected override render() {
    const { key, questions, drawing } = keys[this.way]!;
    const walk = walkKey(key, this.answers) ?? walkKey(key, [])!;
    return html`${
      walk.path.length > 0
        ? html`<ol class="path">
            ${walk.path.map(
              ({ question, answer }, i) => html`<li>
                <button class="plain" aria-label=${keyWords.change(questions[question]!.question)} @click=${() => this.tell(this.answers.slice(0, i))}>
                  ${questions[question]!.answers[answer]}
                </button>
              </li>`,
            )}
          </ol>`
        : nothing
    }
    ${
      walk.next
        ? html`<h3 id="question">${questions[walk.next.question]!.question}</h3>
            <div class="answers" role="group" aria-labelledby="question">
              ${walk.next.answers.map(
                (
                  { answer },
                  place,
                ) => html`<button class="answer" @click=${() => this.tell([...this.answers, place])}>
                  ${drawing(answer) ?? nothing}
                  <span class="words">${questions[walk.next!.question]!.answers[answer]}</span>
                </button>`,
              )}
            </div>`
        : nothing
    }
    ${
      walk.end
        ? html`<p class="result" role="status"><strong>${this.says(walk.end.is)}</strong></p>
            <p class="note">${reasonWords[walk.end.reason]} ${keyWords.sure(walk.end.certainty)}</p>`
        : nothing
    }`;
  }

  private async tell(answers: number[]): Promise<void> {
    this.dispatchEvent(new CustomEvent("answer", { detail: { answers } }));
    await new Promise((done) => setTimeout(done, 50));
    this.renderRoot
      .querySelector<HTMLElement>(".answers button, .path li:last-child button")
      ?.focus({ preventScroll: true });
  }
}

customElements.define("gwb-walk-key", WalkKey);
