import { html, nothing } from "lit";
import { own } from "../../src/words/en/page.ts";
import type { PutIn } from "./files.ts";
import type { ToldFault, Which } from "./messages.ts";

/** What stands in the way, in one document or before any could be read. */
export interface FaultList {
  title: string;
  faults: readonly ToldFault[];
}

export interface OwnParts {
  lists: readonly FaultList[];
  /** Files put in so far. */
  held: Partial<Record<Which, PutIn>>;
  /** Whether an answer is shown above. */
  answered: boolean;
  /** Goes back to the demo; null where it is shown. */
  again: (() => void) | null;
  take(files: readonly File[], of: Which): void;
}

/** Where a survey and a record are put in, and where what is wrong with them is listed. */
export function ownPart(parts: OwnParts) {
  return html`<section id="own" tabindex="-1" aria-labelledby="own-name">
    <h2 id="own-name">${own.heading}</h2>
    ${parts.lists.length > 0 ? faults(parts) : nothing}
    <div class="entry">
      <p class="lead">${own.lead}</p>
      ${chooser(parts, "survey", own.survey, own.surveyHint, ".json,application/json")}
      ${chooser(parts, "weather", own.weather, own.weatherHint, ".csv,text/csv,text/plain")}
      ${parts.again ? html`<p><button class="plain" @click=${parts.again}>${own.again}</button></p>` : nothing}
    </div>
  </section>`;
}

function faults({ lists, answered }: OwnParts) {
  const line = ({ path, sentence }: ToldFault) =>
    html`<li>${path ? html`<code>${path}</code> ` : nothing}${sentence}</li>`;
  return html`<div class="faults">
    ${lists.map(
      (list) => html`<h3>${list.title}</h3>
        ${list.faults.length > 0 ? html`<ol>${list.faults.map(line)}</ol>` : nothing}`,
    )}
    ${answered && lists.some((l) => l.faults.length > 0) ? html`<p>${own.faultsHelp}</p>` : nothing}
  </div>`;
}

function chooser({ held, take }: OwnParts, of: Which, name: string, hint: string, accept: string) {
  const file = held[of];
  const missing = !file && Object.keys(held).length > 0;
  const chosen = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const files = [...(input.files ?? [])];
    input.value = "";
    if (files.length > 0) take(files, of);
  };
  return html`<div class="file">
    <p><strong id="${of}-name">${name}</strong> <span class="quiet" id="${of}-hint">${hint}</span></p>
    <p class="put">
      <label class="press">
        <input type="file" accept=${accept} aria-labelledby="${of}-name" aria-describedby="${of}-hint"
          @change=${chosen} />
        <span>${own.choose}</span>
      </label>
      ${file ? html`<span>${own.have(file.name)}</span>` : nothing}
      ${missing ? html`<span>${of === "survey" ? own.stillSurvey : own.stillWeather}</span>` : nothing}
    </p>
  </div>`;
}
