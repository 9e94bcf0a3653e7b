import { html, nothing } from "lit";
import type { AnswerView } from "../../src/report/view.ts";
import type { UnitSystem } from "../../src/units.ts";
import { page } from "../../src/words/en/page.ts";

export interface HeaderParts {
  view: AnswerView | null;
  /** Whether the demo is shown. */
  demo: boolean;
  units: UnitSystem;
  setUnits(units: UnitSystem): void;
  /** Goes again to the part that a link names already. */
  go(event: Event): void;
  /** Goes past the head to the answer. */
  skip(): void;
}

/** The running head: whose grounds, what there is on the page, and the units. */
export function header({ view, demo, units, setUnits, go, skip }: HeaderParts) {
  const places =
    view && view.standing !== "no-beds" ? (["answer", "thirst", "tanks", "own"] as const) : ([] as const);
  const choice = (system: UnitSystem, words: string) => html`<label>
    <input type="radio" name="units" .checked=${units === system} @change=${() => setUnits(system)} />
    <span>${words}</span>
  </label>`;
  return html`<header>
    <button class="skip" @click=${skip}>${page.skip}</button>
    <div class="head">
      <div class="name">
        <h1 tabindex="-1" dir="auto">${view?.site ?? page.title}</h1>
        ${
          view
            ? html`<p class="quiet">
                ${page.wordsForHeader(view.weather.from.slice(0, 4), view.weather.to.slice(0, 4))}
              </p>`
            : nothing
        }
      </div>
      <div class="ways">
        ${
          places.length > 0
            ? html`<nav aria-label=${page.navigation}>
                ${places.map((p) => html`<a href="#${p}" @click=${go}>${page.places[p]}</a>`)}
              </nav>`
            : nothing
        }
        ${
          view
            ? html`<fieldset>
                <legend class="unseen">${page.units}</legend>
                ${choice("metric", page.metric)} ${choice("us", page.us)}
              </fieldset>`
            : nothing
        }
      </div>
    </div>
    ${
      demo && view
        ? html`<p class="invented">${page.invented} <a href="#own" @click=${go}>${page.putInOwn}</a></p>`
        : nothing
    }
  </header>`;
}
