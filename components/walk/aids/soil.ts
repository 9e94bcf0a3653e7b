import { html } from "lit";
import { jarShares } from "../../../src/survey/measuring/jar.ts";
import { soilWaterWithError } from "../../../src/survey/measuring/soil-water-error.ts";
import { soilAidWords } from "../../../src/words/en/walk-aids.ts";
import { textureSaid } from "../../../src/words/en/walk-answers.ts";
import { jarDrawing, ringDrawing, slopeDrawing, triangleDrawing } from "../drawings/soil.ts";
import { withText } from "../entry.ts";
import { figureSaid } from "../said.ts";
import type { Aid, AidProps } from "./aid.ts";
import { labelOf } from "./tanks.ts";
import { valueNamed } from "./values.ts";
import "./clock.ts";

const layers = ["sand", "silt", "clay"] as const;

export const jarAid: Aid = {
  show: ({ walk, entry, term, outcome }) => {
    const mm = layers.map((name) => valueNamed(entry, term, name, walk.typed) ?? 0) as [
      number,
      number,
      number,
    ];
    const isWhole = outcome !== null && !("impossible" in outcome);
    const exactly = (figure: number) => ({ figure, standardError: 1 });
    const shares = isWhole ? jarShares(exactly(mm[0]), exactly(mm[1]), exactly(mm[2])) : null;
    const water = shares ? soilWaterWithError(shares.sand_pct, shares.clay_pct) : null;
    return html`<figure>
        ${jarDrawing(
          mm,
          layers.map((name, i) =>
            mm[i]! > 0 ? `${soilAidWords[name]}, ${walk.show(mm[i]!, "mm")}` : soilAidWords[name],
          ),
        )}
      </figure>
      <figure>
        ${triangleDrawing({
          soil: shares
            ? {
                sand: shares.sand_pct.figure,
                clay: shares.clay_pct.figure,
                error: Math.max(shares.sand_pct.standardError, shares.clay_pct.standardError),
              }
            : null,
          words: soilAidWords.corners,
          name: textureSaid,
        })}
        <figcaption>${shares ? soilAidWords.circle : soilAidWords.triangle}</figcaption>
      </figure>
      ${
        water
          ? html`<p class="note">${soilAidWords.holds(
              figureSaid(walk, percent(water.fieldCapacity), "%"),
              figureSaid(walk, percent(water.wiltingPoint), "%"),
            )}</p>`
          : ""
      }`;
  },
};

const percent = ({ figure, standardError }: { figure: number; standardError: number }) => ({
  figure: 100 * figure,
  standardError: 100 * standardError,
});

/** Fills a ring, times each with the stopwatch: minutes. */
export const ringAid: Aid = {
  show: (props) => {
    const { walk, stop, entry, term, tell } = props;
    return html`<figure>${ringDrawing(labelOf(props)("depth"))}</figure>
      <gwb-walk-clock
        .walk=${walk}
        .stop=${stop.key}
        .label=${soilAidWords.fill}
        @read=${(event: CustomEvent<{ text: string }>) => {
          const minutes = Math.round((Number(event.detail.text) / 60) * 100) / 100;
          tell(withText(entry, term, 1, firstBlank(props, 1), `${minutes}`));
        }}
      ></gwb-walk-clock>`;
  },
};

/** The first empty reading of a blank. */
export function firstBlank({ entry, term }: Pick<AidProps, "entry" | "term">, slot: number): number {
  const texts = entry.terms[term]?.texts[slot] ?? [];
  const at = texts.findIndex((text) => text.trim() === "");
  return at === -1 ? texts.length : at;
}

export const slopeAid: Aid = {
  show: (props) => {
    const { walk, entry, term } = props;
    const rise = valueNamed(entry, term, "rise", walk.typed);
    const run = valueNamed(entry, term, "run", walk.typed);
    const share = rise !== null && run ? rise / run : 0.12;
    const now = props.slot === 0 ? "rise" : props.slot === 1 ? "run" : null;
    return html`<figure>${slopeDrawing(labelOf(props), now, share)}</figure>`;
  },
};
