import { html, type TemplateResult } from "lit";
import type { Sentence } from "../../src/words/en/page.ts";
import type { Explain } from "../figure/figure.ts";
import "../figure/figure.ts";

/** A figure that opens its working, by an address of the rounds or of the engine. */
export function figure(at: string, text: string, explain: Explain | undefined): TemplateResult {
  return html`<gwb-figure .text=${text} .at=${at} .explain=${explain}></gwb-figure>`;
}

/** A sentence with its figures, each of which opens. */
export function spoken(sentence: Sentence, explain: Explain | undefined): (string | TemplateResult)[] {
  return sentence.map((part) => (typeof part === "string" ? part : figure(part.at, part.text, explain)));
}
