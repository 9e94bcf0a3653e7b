import { html, nothing, type TemplateResult } from "lit";
import { figureWords as words } from "../../src/words/en/page.ts";
import { figuresIn } from "../../src/words/marked.ts";
import "../figure/figure.ts";
import { keptTogether } from "../figure/kept.ts";
import "../figure/opened.ts";
import type { Screen } from "./screen.ts";

type With = Pick<Screen, "explain">;

/** A sentence with the figures marked in it, each of which opens below its line. */
export function figures(text: string, { explain }: With): (string | TemplateResult)[] {
  return keptTogether(
    figuresIn(text),
    (part) => html`<gwb-figure .text=${part.text} .at=${part.at} .explain=${explain}></gwb-figure>`,
  );
}

/** Which figure of a table is open, by its row and address. */
export interface OpenCell {
  row: string;
  at: string;
}

/** A cell whose figure opens below its row. @param at null: there is nothing to open */
export function cell(
  screen: Screen,
  row: string,
  text: string | TemplateResult,
  at: string | null,
): TemplateResult {
  return html`<td>${cellFigure(screen, row, text, at)}</td>`;
}

export function cellFigure(
  { explain, open, acts }: Screen,
  row: string,
  text: string | TemplateResult,
  at: string | null,
): string | TemplateResult {
  if (at === null || !explain) return text;
  const isOpen = open?.row === row && open.at === at;
  return html`<button class="opens worked-out" aria-expanded=${isOpen} aria-description=${words.open} @click=${() => acts.open(isOpen ? null : { row, at })}>${text}</button>`;
}

/** The working below a row, where one of its figures is open. */
export function openedBelow({ choices, explain, open, acts }: Screen, row: string, columns: number) {
  if (open?.row !== row) return nothing;
  return html`<tr class="opened"><td colspan=${columns}>
    <gwb-opened .at=${open.at} .of=${choices} .explain=${explain} @gwb-close=${(event: Event) => closed(event, acts)}></gwb-opened>
  </td></tr>`;
}

/** Whoever closes a working is back at its figure. */
function closed(event: Event, acts: Screen["acts"]): void {
  const row = (event.currentTarget as Element).closest("tr")!.previousElementSibling;
  acts.open(null);
  row?.querySelector<HTMLElement>('.opens[aria-expanded="true"]')?.focus();
}
