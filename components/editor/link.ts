import { html, type TemplateResult } from "lit";
import { ifDefined } from "lit/directives/if-defined.js";
import type { Editing } from "./editing.ts";

/** A link to a screen: opened here, or, as links are, elsewhere where somebody asks for that. */
export function link(
  editing: Editing,
  at: string,
  words: TemplateResult | string,
  { isHere = false, look = "" }: { isHere?: boolean; look?: string } = {},
): TemplateResult {
  const open = (event: MouseEvent) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey || event.button !== 0) return;
    event.preventDefault();
    editing.go(at);
  };
  return html`<a
    class=${look}
    href=${editing.href(at)}
    aria-current=${ifDefined(isHere ? "page" : undefined)}
    @click=${open}
    >${words}</a
  >`;
}
