import { html } from "lit";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import type { ToldFault } from "../messages.ts";

type Part = keyof typeof choicesPage.parts;

/** The parts of the screen by name; each leads to its own. */
export function contents(root: ParentNode) {
  const to = (part: Part) => {
    const section = root.querySelector<HTMLElement>(`#${part}`);
    section?.scrollIntoView();
    section?.focus({ preventScroll: true });
  };
  return html`<nav class="contents screen-only" aria-label=${choicesPage.contents}>
    ${(Object.keys(choicesPage.parts) as Part[]).map(
      (part) => html`<button class="plain" @click=${() => to(part)}>${choicesPage.parts[part]}</button>`,
    )}
  </nav>`;
}

/** What stands in the way; a fault of the program itself has no path. */
export function refused(faults: readonly ToldFault[]) {
  const isCrash = faults.every(({ path }) => path === "");
  return html`<div role="alert">
    <p class="lead">${isCrash ? choicesPage.crashed : choicesPage.faults(faults.length)}</p>
    <ul>${faults.map(({ path, sentence }) => html`<li><code>${path}</code> ${sentence}</li>`)}</ul>
  </div>`;
}
