import { html, nothing, type TemplateResult } from "lit";
import type { UnitSystem } from "../../src/units.ts";
import { frameWords } from "../../src/words/en/frame.ts";

export interface HeadParts {
  /** The page's first heading. */
  title: string;
  /** What stands below it. */
  below?: TemplateResult | typeof nothing;
  /** Links to places. */
  places?: TemplateResult | typeof nothing;
  units: UnitSystem;
  setUnits(units: UnitSystem): void;
  /** Goes past the head. */
  skip(): void;
}

/** The running head of every screen. */
export function head({ title, below = nothing, places = nothing, units, setUnits, skip }: HeadParts) {
  const choice = (system: UnitSystem, words: string) => html`<label>
    <input
      type="radio"
      name="units"
      .checked=${units === system}
      @change=${(event: Event) => {
        event.stopPropagation();
        setUnits(system);
      }}
    />
    <span>${words}</span>
  </label>`;
  return html`<header>
    <button type="button" class="skip" @click=${skip}>${frameWords.skip}</button>
    <div class="head">
      <div class="name"><h1 dir="auto">${title}</h1>${below}</div>
      <div class="ways">
        ${places}
        <fieldset class="units">
          <legend class="unseen">${frameWords.units}</legend>
          ${choice("metric", frameWords.metric)} ${choice("us", frameWords.us)}
        </fieldset>
      </div>
    </div>
  </header>`;
}

/** Goes to the sheet of a screen. */
export function toSheet(root: ParentNode): void {
  const main = root.querySelector<HTMLElement>("main");
  main?.focus({ preventScroll: true });
  main?.scrollIntoView({ block: "start" });
}
