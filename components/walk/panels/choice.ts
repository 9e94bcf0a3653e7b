import { html } from "lit";
import { mulchMaterials, roofMaterials } from "../../../src/survey/words.ts";
import { mulchWords, roofWords } from "../../../src/words/en/walk-answers.ts";
import { choiceWords } from "../../../src/words/en/walk-panels.ts";
import { Panel, type TakenAtStop } from "./panel.ts";

interface Choice {
  words: string;
  taken: Omit<TakenAtStop, "how" | "readings">;
}

/** What is seen and chosen, not measured: mulch, roof, where water goes. */
export class ChoicePanel extends Panel {
  private get choices(): Choice[] {
    const { stop, walk } = this;
    const from = `${stop.list}[${stop.index}]`;
    switch (stop.kind) {
      case "mulch":
        return [
          ...mulchMaterials.map((word) => ({ words: capital(mulchWords[word]!), taken: { word } })),
          {
            words: choiceWords.bare,
            taken: {
              word: "none",
              used: false,
              set: [[`${from}.mulch`, { material: "leaf-litter", cover: 0, depth_mm: 0 }]],
            },
          },
        ];
      case "roof-material":
        return roofMaterials.map((word) => ({ words: capital(roofWords[word]!), taken: { word } }));
      case "downpipe":
        return [
          ...walk.survey.tanks.map(({ id, name }) => ({ words: name, taken: { word: id } })),
          { words: choiceWords.noTank, taken: { word: "none", used: false, set: [[stop.at, undefined]] } },
        ];
      default:
        return choiceWords.shares.map(({ value, words }) => ({ words, taken: { word: value } }));
    }
  }

  protected override render() {
    return html`${this.stop.kind === "roof-share" ? html`<p class="lead">${choiceWords.shareHint}</p>` : ""}
      <div class="answers">
        ${this.choices.map(
          ({ words, taken }) => html`<button
            class="answer"
            @click=${() => this.take({ how: "seen", readings: [], also: [], ...taken })}
          ><span class="words"><strong><bdi>${words}</bdi></strong></span></button>`,
        )}
      </div>
      ${this.cautionLine()}
      <div class="grow"></div>
      <div class="foot">${this.pass()}</div>`;
  }
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

customElements.define("gwb-walk-choice", ChoicePanel);
