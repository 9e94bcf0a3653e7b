import { html, nothing, type TemplateResult } from "lit";
import { measuresPage } from "../../src/words/en/choices-measures.ts";
import { readAmount } from "./numbers.ts";
import type { Screen } from "./screen.ts";

export interface EntryOf {
  /** Unique on the screen. */
  field: string;
  label: string;
  /** Whether the label is for screen readers alone, a column's head saying it to others. */
  isLabelUnseen?: boolean;
  hint?: string;
  unit?: string;
  value: number | null;
  /** Whether blank stands for none. */
  isOptional?: boolean;
  low: number;
  high: number;
  fault: (typed: string) => string;
  /** @param isDone whether the field was left */
  take(value: number | null, isDone: boolean): void;
}

export const wantAmount = { low: 0, high: 1e9, fault: measuresPage.wantAmount };
export const wantYears = { low: 0.5, high: 200, fault: measuresPage.wantYears };

/** A figure on a line that is taken with every keystroke; what is no number stays as typed, with what is wanted. */
export function entry({ typed, acts }: Screen, of: EntryOf): TemplateResult {
  const text = typed.get(of.field) ?? (of.value === null ? "" : String(Number(of.value.toFixed(6))));
  const isRight = allowed(of, readAmount(text));
  const take = (event: Event, isDone: boolean) => {
    const now = (event.target as HTMLInputElement).value;
    const value = readAmount(now);
    const right = allowed(of, value);
    acts.typed(of.field, isDone && right ? null : now, right);
    if (right) of.take(value ?? null, isDone);
  };
  const about = [...(of.hint ? [`${of.field}-hint`] : []), ...(isRight ? [] : [`${of.field}-fault`])].join(
    " ",
  );
  return html`<div class="entry">
    <label class=${of.isLabelUnseen ? "unseen" : ""} for=${of.field}>${of.label}</label>
    <span class="on-line">
      <input id=${of.field} type="text" inputmode="decimal" autocomplete="off" .value=${text}
        aria-invalid=${isRight ? nothing : "true"} aria-describedby=${about || nothing}
        @input=${(event: Event) => take(event, false)} @change=${(event: Event) => take(event, true)} />
      ${of.unit ? html`<span class="quiet">${of.unit}</span>` : nothing}
    </span>
    ${of.hint ? html`<span class="hint" id="${of.field}-hint">${of.hint}</span>` : nothing}
    ${isRight ? nothing : html`<span class="fault" id="${of.field}-fault">${of.fault(text)}</span>`}
  </div>`;
}

function allowed({ isOptional, low, high }: EntryOf, value: number | null | undefined): boolean {
  if (value === undefined) return false;
  return value === null ? isOptional === true : value >= low && value <= high;
}
