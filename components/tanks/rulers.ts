import { css, html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { RoofBrings } from "../../src/report/roofs-bring.ts";
import type { TankStory } from "../../src/report/tanks-view.ts";
import { tanks } from "../../src/words/en/tanks.ts";
import type { Formatter } from "../../src/words/format.ts";
import { type Range, roofRange, sizeRange } from "./range.ts";
import type { Setting } from "./trying.ts";

const words = tanks.trial;

/** Two rulers under the drawing: a hairline to slide along, its figure at its end. */
export const rulerStyles = css`
  .spread + .spread {
    margin-top: 3.4rem;
  }
  .try {
    margin: 1.2rem 0 0;
    padding: 0.9rem 0 0;
    border: 0;
    border-top: 1px solid var(--hair);
  }
  .try legend {
    float: left;
    width: 100%;
    padding: 0;
    font-weight: 600;
  }
  .line {
    display: grid;
    grid-template-columns: 7rem minmax(0, 1fr) 8.5rem;
    gap: 0 1rem;
    align-items: center;
    clear: both;
  }
  .line output {
    text-align: end;
    white-space: nowrap;
  }
  .line input {
    width: 100%;
    height: 2.4rem;
    margin: 0;
    background: transparent;
    appearance: none;
    -webkit-appearance: none;
    cursor: ew-resize;
  }
  .line input::-webkit-slider-runnable-track {
    height: 1.5px;
    background: var(--ink);
  }
  .line input::-moz-range-track {
    height: 1.5px;
    background: var(--ink);
  }
  .line input::-webkit-slider-thumb {
    width: 14px;
    height: 26px;
    margin-top: -12px;
    border: 2px solid var(--paper);
    border-radius: 2px;
    background: var(--tank);
    appearance: none;
    -webkit-appearance: none;
  }
  .line input::-moz-range-thumb {
    width: 12px;
    height: 24px;
    border: 2px solid var(--paper);
    border-radius: 2px;
    background: var(--tank);
  }
  .tried {
    min-height: 3em;
    max-width: 38rem;
    margin-top: 0.35rem;
  }
  .after {
    max-width: 38rem;
    margin-top: 0.6rem;
  }
  .trade {
    margin: -1.1rem 0 1.6rem;
    color: var(--grey);
    font-size: 0.92rem;
  }
  .trade p {
    max-width: 38rem;
    margin-top: 0.2rem;
  }
  @media (max-width: 40rem) {
    .line {
      grid-template-columns: 1fr auto;
    }
    .line input {
      grid-column: 1 / -1;
      grid-row: 2;
      height: 44px;
    }
    .tried {
      min-height: 4.6em;
    }
    .spread + .spread {
      margin-top: 2.6rem;
    }
  }
  @media print {
    .try,
    .trade {
      display: none;
    }
  }
`;

interface RulerActs {
  set: (setting: Setting) => void;
  /** Puts both back; null where they stand as it is. */
  back: (() => void) | null;
  said: string;
  name: string;
}

/** The rulers of a tank, and what it would do where they stand. */
export function rulers(
  tank: TankStory,
  roofs: readonly RoofBrings[],
  at: Setting,
  say: Formatter,
  { set, back, said, name }: RulerActs,
): TemplateResult {
  const line = (
    id: string,
    label: string,
    range: Range,
    value: number,
    text: string,
    change: (to: number) => void,
  ) =>
    html`<div class="line">
      <label for=${id}>${label}</label>
      <input id=${id} type="range" min="0" max=${range.most} step=${range.step} .value=${live(String(value))}
        aria-valuetext=${text} @input=${(event: Event) => change(Number((event.target as HTMLInputElement).value))} />
      <output for=${id}>${text}</output>
    </div>`;
  return html`<fieldset class="try">
    <legend>${name}</legend>
    ${line("size", words.size, sizeRange(tank), at.capacity_L, say.litres(at.capacity_L), (capacity_L) =>
      set({ ...at, capacity_L }),
    )}
    ${line("roof", words.roof, roofRange(tank, roofs), at.roof_m2, say.area(at.roof_m2), (roof_m2) =>
      set({ ...at, roof_m2 }),
    )}
    <p class="tried">${said} ${back ? html`<button class="plain" @click=${back}>${words.back}</button>` : nothing}</p>
  </fieldset>`;
}
