import { html } from "lit";
import { textureSaid } from "../../../src/words/en/walk-answers.ts";
import { withTexts } from "../entry.ts";
import type { Aid } from "./aid.ts";
import "./key.ts";

/** Soil by feel: the key fills the answers. */
export const feelAid: Aid = {
  fills: "all",
  show: ({ entry, term, tell }) =>
    html`<gwb-walk-key
      .way=${"soil-feel"}
      .answers=${(entry.terms[term]?.texts[0] ?? []).filter((text) => text !== "").map(Number)}
      .says=${textureSaid}
      @answer=${(event: CustomEvent<{ answers: number[] }>) =>
        tell(withTexts(entry, term, 0, event.detail.answers.map(String)))}
    ></gwb-walk-key>`,
};
