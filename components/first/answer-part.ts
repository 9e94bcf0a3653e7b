import { html, nothing } from "lit";
import type { FirstOutcome } from "../../src/report/first-answer.ts";
import { firstWords } from "../../src/words/en/first.ts";
import { speakFirst } from "../../src/words/first-spoken.ts";
import type { Formatter } from "../../src/words/format.ts";

/** The answer as a sentence, what comes before it, and what follows. */
export function answerPart(outcome: FirstOutcome, say: Formatter) {
  const { first, headline, after } = speakFirst(outcome, say);
  return html`${first ? html`<p class="first">${first}</p>` : nothing}
    <p class="headline">
      ${headline.map((part) => (typeof part === "string" ? part : html`<span class="figure">${part.figure}</span>`))}
    </p>
    <p class="lead">${after.map((sentence) => `${sentence} `)}</p>`;
}

export function waitingPart(isWorking: boolean) {
  return html`<p class="headline ${isWorking ? "quiet" : ""}">${isWorking ? firstWords.working : firstWords.begin}</p>
    <p class="lead">${firstWords.lead}</p>`;
}

/** What is said first, and the sentence itself, as one line. */
export function headlineText(outcome: FirstOutcome, say: Formatter): string {
  const { first, headline } = speakFirst(outcome, say);
  const words = headline.map((part) => (typeof part === "string" ? part : part.figure)).join("");
  return first ? `${first} ${words}` : words;
}
