import { html, type TemplateResult } from "lit";
import type { Sentence, Slot } from "../../src/words/en/page.ts";

/** What closes a word, and never begins a line. */
const closing = /^[.,;:!?)”’]+/;

/** The parts of a sentence, each figure on one line with what closes it. */
export function keptTogether(
  parts: Sentence,
  figure: (slot: Slot) => TemplateResult,
): (string | TemplateResult)[] {
  return parts.map((part, k) => {
    if (typeof part !== "string") {
      const next = parts[k + 1];
      const mark = typeof next === "string" ? closing.exec(next)?.[0] : undefined;
      return mark ? html`<span class="with-mark">${figure(part)}${mark}</span>` : figure(part);
    }
    return k > 0 && typeof parts[k - 1] !== "string" ? part.replace(closing, "") : part;
  });
}
