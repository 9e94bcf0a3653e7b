import { html, nothing, type TemplateResult } from "lit";
import type { FirstOutcome } from "../../src/report/first-answer.ts";
import { openGarden_m2 } from "../../src/survey/first/drawn.ts";
import {
  type FirstEntries,
  type FirstEntry,
  madeEntries,
  sixEntries,
} from "../../src/survey/first/entries.ts";
import type { FirstLead, FirstMeasure } from "../../src/survey/first/lead.ts";
import { entryWords, firstWords } from "../../src/words/en/first.ts";
import type { Formatter } from "../../src/words/format.ts";
import type { StandIn } from "./stand-in-place.ts";
import { type TapeRow, tape } from "./tape.ts";

export interface AsideParts {
  entries: FirstEntries;
  outcome: FirstOutcome | null;
  rows: readonly TapeRow[];
  standIn: StandIn | null;
  say: Formatter;
  toEntry(entry: FirstEntry): void;
  measure(what: FirstMeasure): void;
}

/** Shares below this are not worth a number. */
const worthSaying = 0.05;

/** What stands in the margin: what would narrow the answer most, how it narrowed, how sure it is, what to mind. */
export function asides(parts: AsideParts) {
  const { entries, outcome, rows, standIn, say } = parts;
  const made = madeEntries(entries);
  const open = sixEntries.filter((entry) => !made.includes(entry));
  return html`
    ${outcome?.lead ? narrow(outcome.lead, parts) : nothing}
    ${rows.length > 1 ? tape(rows, outcome?.area_m2 ?? openGarden_m2, say) : nothing}
    ${
      outcome
        ? note(firstWords.howSure, firstWords.howSureWords(say.number(outcome.draws), String(outcome.years)))
        : nothing
    }
    ${standIn && outcome ? note(firstWords.standIn, standIn.words) : nothing}
    ${
      outcome && open.length > 0
        ? note(
            firstWords.openHead,
            firstWords.open(say.list(open.map((entry) => firstWords.openNames[entry]))),
          )
        : nothing
    }
    ${note(entryWords.cautions, html`${entryWords.measureCaution} ${entries.tank ? entryWords.tankCaution : nothing}`)}
  `;
}

function narrow(lead: FirstLead, { say, toEntry, measure }: AsideParts) {
  const share =
    lead.share !== null && lead.share >= worthSaying ? firstWords.ofWidth(say.share(lead.share)) : "";
  if (lead.is === "years") return note(firstWords.narrow, `${firstWords.narrowYears} ${share}`);
  const words =
    lead.is === "entry" ? firstWords.narrowEntry[lead.entry] : firstWords.narrowMeasure[lead.what];
  const go =
    lead.is === "entry"
      ? html`<button type="button" class="plain" @click=${() => toEntry(lead.entry)}>${firstWords.toEntry}</button>`
      : html`<button type="button" class="plain" @click=${() => measure(lead.what)}>${firstWords.toMeasure}</button>`;
  return note(firstWords.narrow, html`${words}${share ? html`, ${share}` : "."} ${go}`);
}

function note(head: string, words: string | TemplateResult): TemplateResult {
  return html`<div class="note" role="note"><strong>${head}</strong> ${words}</div>`;
}
