import { html, nothing } from "lit";
import { valueIn } from "../../src/survey/edit/document.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { bedParts, partGroups, parts } from "../../src/words/en/editor-parts.ts";
import type { Editing, Shown } from "./editing.ts";
import type { Screen } from "./layout/address.ts";
import { type Part, partList } from "./layout/screens.ts";
import { link } from "./link.ts";
import { nameOfRow } from "./shown.ts";
import { findingName, partLine } from "./summaries.ts";

/** The contents of the notebook: every part by groups, with what there is of it; the sheets of the entry at hand. */
export function contents(editing: Editing, screen: Screen): Shown {
  return html`<nav class="contents" aria-label=${editorWords.contents}>
    ${Object.entries(partGroups).map(
      ([group, name]) => html`<section>
        <h3 class="group-name">${name}</h3>
        <ul>
          ${partList.filter((part) => part.group === group).map((part) => line(editing, part, screen))}
        </ul>
      </section>`,
    )}
  </nav>`;
}

function line(editing: Editing, part: Part, screen: Screen): Shown {
  const isHere = screen.part === part;
  const words = parts[part.slug];
  const said = partLine(editing, part.slug, "list" in part ? part.list : null);
  return html`<li>
    ${link(
      editing,
      part.slug,
      html`<span class="part-name">${words?.name}</span> <span class="quiet"><bdi>${said}</bdi></span>`,
      { isHere: isHere && screen.id === null, look: "part-line" },
    )}
    ${isHere && screen.id !== null ? sheets(editing, part, screen) : nothing}
  </li>`;
}

/** The entry at hand, and its further sheets. */
function sheets(editing: Editing, part: Part, { id, sheet }: Screen): Shown {
  if (!("list" in part) || id === null) return nothing;
  const at = [part.list, { id }];
  const name = part.list === "found" ? findingName(editing, at) : nameOfRow(valueIn(editing.draft, at));
  const to = `${part.slug}/${encodeURIComponent(id)}`;
  return html`<ul class="sheets">
    <li>${link(editing, to, html`<bdi>${name}</bdi>`, { isHere: sheet === null })}</li>
    ${part.sheets.map(
      ({ slug }) =>
        html`<li>${link(editing, `${to}/${slug}`, html`${bedParts[slug]?.name}`, { isHere: sheet?.slug === slug })}</li>`,
    )}
  </ul>`;
}
