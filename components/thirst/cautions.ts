import { html, nothing } from "lit";
import type { ThirstView } from "../../src/report/thirst-view.ts";
import { aside } from "../../src/words/en/page.ts";
import { note } from "../answer/parts.ts";

/** Cautions that stand with the beds; those of tanks stand by the tanks. */
const aboutBeds: ReadonlySet<string> = new Set(["local-rules-first", "survey-safety", "no-cross-connection"]);

/** What to mind beside the beds. */
export function cautions(view: ThirstView) {
  const said = view.cautions.filter(({ code }) => aboutBeds.has(code));
  return said.length > 0
    ? note(aside.cautions, html`${said.map(({ sentence }) => html`<span class="said">${sentence}</span> `)}`)
    : nothing;
}
