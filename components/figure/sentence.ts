import { html, type TemplateResult } from "lit";
import { isAddress } from "../../src/explain/address.ts";
import type { Working } from "../../src/explain/working.ts";
import type { Sentence } from "../../src/words/en/page.ts";
import "./figure.ts";
import type { Explain } from "./figure.ts";
import { keptTogether } from "./kept.ts";

/** Where the workings of a page's figures come from: its own sums at hand, the engine's by address. */
export interface Openings {
  workings: ReadonlyMap<string, Working>;
  explain: Explain | undefined;
}

/** A sentence with its figures, each of which opens where there is something to open. */
export function sentence(parts: Sentence, { workings, explain }: Openings): (string | TemplateResult)[] {
  return keptTogether(
    parts,
    ({ text, at }) => html`<gwb-figure
      .text=${text}
      .working=${workings.get(at)}
      .at=${isAddress(at) ? at : undefined}
      .explain=${explain}
    ></gwb-figure>`,
  );
}

/** Sentences in a row; empty ones are left out. */
export function sentences(list: readonly Sentence[], openings: Openings): TemplateResult[] {
  return list.filter((each) => each.length > 0).map((each) => html`${sentence(each, openings)} `);
}
