import { html, nothing } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { withCopy } from "../../src/survey/edit/add.ts";
import { type Address, rowsOf, valueIn } from "../../src/survey/edit/document.ts";
import { withoutEntry } from "../../src/survey/edit/remove.ts";
import { cleanedWords, editorWords } from "../../src/words/en/editor.ts";
import { bedParts, parts } from "../../src/words/en/editor-parts.ts";
import { type Editing, isCounted, type Shown } from "./editing.ts";
import { entries } from "./entries.ts";
import type { Screen } from "./layout/address.ts";
import { type Part, partList } from "./layout/screens.ts";
import { faultLines } from "./lines.ts";
import { link } from "./link.ts";
import { overview } from "./overview.ts";
import { nameOfRow } from "./shown.ts";
import { entrySummary, findingName, sheetSummary } from "./summaries.ts";

type ListPart = Extract<Part, { list: string }>;

/** The screen at hand: its name, what it is for, its fields, and the way on. */
export function sheet(editing: Editing, { part, id, sheet: further }: Screen): Shown {
  if (part === null) return overview(editing);
  const words = parts[part.slug];
  if (!("list" in part)) {
    return html`${heading(words?.name ?? "", words?.lead ?? "")}
    ${keyed(part.slug, html`<div class="fields">${editing.show(part.nodes, part.in)}</div>`)}
    ${onwards(editing, part)}`;
  }
  if (id === null)
    return html`${heading(words?.name ?? "", words?.lead ?? "")} ${entries(editing, part)} ${onwards(editing, part)}`;
  const at: Address = [part.list, { id }];
  if (valueIn(editing.draft, at) === undefined)
    return html`${heading(words?.name ?? "", editorWords.gone)} ${entries(editing, part)}`;
  if (further === null) return entry(editing, part, id, at);
  const own = bedParts[further.slug];
  return html`${above(editing, part, { id, name: nameOfRow(valueIn(editing.draft, at)) })}
    ${heading(own?.name ?? "", own?.lead ?? "")}
    ${keyed(`${editing.identity(id)}/${further.slug}`, html`<div class="fields">${editing.show(further.nodes, at)}</div>`)}
    ${nextSheet(editing, part, id, further.slug)}`;
}

/** The way up: the list, and the entry where this is one of its further sheets. */
function above(editing: Editing, part: ListPart, entry?: { id: string; name: string }): Shown {
  const to = `${part.slug}/${encodeURIComponent(entry?.id ?? "")}`;
  return html`<p class="of">
    ${link(editing, part.slug, parts[part.slug]?.name ?? "")}
    ${entry ? html` · ${link(editing, to, html`<bdi>${entry.name}</bdi>`)}` : nothing}
  </p>`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function heading(name: string, lead: string): Shown {
  return html`<h3 class="title" tabindex="-1"><bdi>${name}</bdi></h3>
    ${lead ? html`<p class="lead">${lead}</p>` : nothing}`;
}

/** One entry: what it is in a line, its fields, its further sheets, and what can be done with it. */
function entry(editing: Editing, part: ListPart, id: string, at: Address): Shown {
  const row = valueIn(editing.draft, at);
  const name = part.list === "found" ? findingName(editing, at) : nameOfRow(row);
  const summary = entrySummary(editing, at);
  return html`${above(editing, part)} ${heading(name, capital(summary))} ${faultLines(editing, at)}
    ${keyed(editing.identity(id), html`<div class="fields">${editing.show(part.entry, at)}</div>`)}
    ${
      part.sheets.length > 0
        ? html`<ol class="entries">
            ${part.sheets.map(
              ({ slug }) =>
                html`<li>
                  ${link(
                    editing,
                    `${part.slug}/${encodeURIComponent(id)}/${slug}`,
                    html`<span class="entry-name">${bedParts[slug]?.name}</span>
                      <span class="quiet">${sheetSummary(editing, slug, at)}</span>`,
                    { look: "entry-line" },
                  )}
                </li>`,
            )}
          </ol>`
        : nothing
    }
    <p class="adding apart">
      <button type="button" class="press" @click=${() => copy(editing, part, id, name)}>${editorWords.copy}</button>
      <button type="button" class="plain" @click=${() => takeOut(editing, part, id, name)}>${editorWords.takeOut(name)}</button>
    </p>
    ${neighbours(editing, part, id)}`;
}

function copy(editing: Editing, { list, slug }: ListPart, id: string, name: string): void {
  const named = editorWords.copyName(name);
  const made = withCopy(editing.draft, list, id, named);
  editing.act(
    (draft) => withCopy(draft, list, id, named).document,
    editorWords.copied(named),
    `${slug}/${encodeURIComponent(made.id)}`,
  );
}

function takeOut(editing: Editing, { list, slug }: ListPart, id: string, name: string): void {
  const { cleaned } = withoutEntry(editing.draft, list, id);
  const said = isCounted(editing, [list, { id }]) ? cleanedWords(cleaned) : "";
  editing.act(
    (draft) => withoutEntry(draft, list, id).document,
    `${editorWords.takenOut(name)} ${said}`.trim(),
    slug,
  );
}

function neighbours(editing: Editing, { list, slug }: ListPart, id: string): Shown {
  const rows = rowsOf(editing.draft, list);
  const next = rows[rows.findIndex((row) => row.id === id) + 1];
  if (!next || typeof next.id !== "string") return nothing;
  const name = list === "found" ? findingName(editing, [list, { id: next.id }]) : nameOfRow(next);
  return html`<p class="onwards">
    ${link(editing, `${slug}/${encodeURIComponent(next.id)}`, html`${editorWords.next("")}<bdi>${name}</bdi>`)}
  </p>`;
}

function nextSheet(editing: Editing, part: ListPart, id: string, slug: string): Shown {
  const next = part.sheets[part.sheets.findIndex((one) => one.slug === slug) + 1];
  const to = `${part.slug}/${encodeURIComponent(id)}`;
  const name = nameOfRow(valueIn(editing.draft, [part.list, { id }]));
  return html`<p class="onwards">
    ${
      next
        ? link(editing, `${to}/${next.slug}`, editorWords.next(bedParts[next.slug]?.name ?? ""))
        : link(editing, to, html`${editorWords.back("")}<bdi>${name}</bdi>`)
    }
  </p>`;
}

function onwards(editing: Editing, part: Part): Shown {
  const next = partList[partList.indexOf(part) + 1];
  return next
    ? html`<p class="onwards">${link(editing, next.slug, editorWords.next(parts[next.slug]?.name ?? ""))}</p>`
    : nothing;
}
