import { html, nothing } from "lit";
import type { AnswerView } from "../../src/report/view.ts";
import type { UnitSystem } from "../../src/units.ts";
import { page } from "../../src/words/en/page.ts";
import { NBSP } from "../../src/words/format.ts";

export interface HeaderParts {
  view: AnswerView | null;
  /** Whether the first answer is still to come: the head keeps its place for it. */
  isComing: boolean;
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
export function header({ view, isComing, demo, units, setUnits, go, skip }: HeaderParts) {
  const isThere = view ? view.standing !== "no-beds" : isComing;
  const places = isThere ? (["answer", "thirst", "tanks", "own"] as const) : ([] as const);
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
          view || isComing
            ? html`<p class="quiet">
                ${view ? page.wordsForHeader(view.weather.from.slice(0, 4), view.weather.to.slice(0, 4)) : NBSP}
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
          view || isComing
            ? html`<fieldset class="units">
                <legend class="unseen">${page.units}</legend>
                ${choice("metric", page.metric)} ${choice("us", page.us)}
              </fieldset>`
            : nothing
        }
      </div>
    </div>
    ${
      demo && (view || isComing)
        ? html`<p class="invented">${page.invented} <a href="#own" @click=${go}>${page.putInOwn}</a></p>`
        : nothing
    }
  </header>`;
}
