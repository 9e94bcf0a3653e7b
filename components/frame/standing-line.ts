import { html, type TemplateResult } from "lit";
import { standingWords } from "../../src/words/en/frame.ts";
import type { Standing } from "../kept/standing.ts";

const times = new Intl.DateTimeFormat(undefined, { timeStyle: "short" });

function timeOf(moment: string): string {
  return times.format(new Date(moment));
}

/** How it stands with what was typed, in words. */
export function standingSentence(standing: Standing): string {
  switch (standing.is) {
    case "saved":
      return standingWords.saved(timeOf(standing.at));
    case "saving":
      return standingWords.saving;
    case "draft":
      return standingWords.draft(timeOf(standing.at));
    case "conflict":
      return standingWords.conflict;
    case "refused":
      return standingWords.refused(standing.reason);
    case "waiting":
      if (!standing.isInBrowser) return standingWords.waitingMemory;
      return standing.reason === null ? standingWords.waiting : standingWords.waitingReason(standing.reason);
  }
}

/** The same as a line of the head, with a press to try again where that may help. */
export function standingLine(standing: Standing, tryNow: () => void): TemplateResult {
  const words = standingSentence(standing);
  return standing.is === "waiting"
    ? html`${words} <button type="button" class="plain" @click=${tryNow}>${standingWords.tryNow}</button>`
    : html`${words}`;
}
