import { html } from "lit";
import { conflictWords } from "../../src/words/en/frame.ts";
import type { ConflictAnswer } from "../kept/answers.ts";

export type Settle = "mine" | "theirs" | "both";

/** What differs between what was saved elsewhere and what was typed here, and the three ways on. */
export function conflictPart({ changes }: ConflictAnswer, settle: (way: Settle) => void) {
  const way = (name: Settle, words: string, about: string) => html`<p>
    <button type="button" class="press" aria-describedby="about-${name}" @click=${() => settle(name)}>${words}</button>
    <span class="hint" id="about-${name}">${about}</span>
  </p>`;
  return html`<section class="in-the-way conflict" role="alert" aria-labelledby="conflict-name">
    <h2 id="conflict-name">${conflictWords.title}</h2>
    <p>${conflictWords.lead}</p>
    <p class="hint">${changes.length > 0 ? conflictWords.differs : conflictWords.nothing}</p>
    <ol>
      ${changes.slice(0, 12).map(({ sentence }) => html`<li><bdi>${sentence}</bdi></li>`)}
    </ol>
    ${way("mine", conflictWords.mine, conflictWords.mineAbout)}
    ${way("theirs", conflictWords.theirs, conflictWords.theirsAbout)}
    ${way("both", conflictWords.both, conflictWords.bothAbout)}
  </section>`;
}
