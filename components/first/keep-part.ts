import { html, nothing } from "lit";
import type { FirstPlace } from "../../src/survey/first/entries.ts";
import { firstWords } from "../../src/words/en/first.ts";

export interface KeepParts {
  place: FirstPlace | null;
  /** As typed; null while the place's name stands in. */
  name: string | null;
  isKeeping: boolean;
  notKept: string;
  setName(name: string): void;
  keep(): void;
  again(): void;
}

/** Where a first answer becomes a site that is kept. */
export function keepPart({ place, name, isKeeping, notKept, setName, keep, again }: KeepParts) {
  return html`<section class="section keep" aria-labelledby="keep-name">
    <h3 id="keep-name">${firstWords.keep}</h3>
    <p class="lead">${place ? firstWords.keepLead : firstWords.keepPlace}</p>
    ${
      place
        ? html`<div class="row">
            <gwb-entry
              .label=${firstWords.keepName}
              .hint=${firstWords.keepNameHint}
              .text=${name ?? place.name}
              .width=${26}
              @change=${(event: CustomEvent<{ text: string }>) => {
                event.stopPropagation();
                setName(event.detail.text);
              }}
            ></gwb-entry>
            <button type="button" class="press primary" ?disabled=${isKeeping} @click=${keep}>
              ${isKeeping ? firstWords.keeping : firstWords.keepButton}
            </button>
          </div>`
        : nothing
    }
    ${notKept ? html`<p class="in-the-way" role="alert">${notKept}</p>` : nothing}
    <p><button type="button" class="plain" @click=${again}>${firstWords.again}</button></p>
  </section>`;
}
