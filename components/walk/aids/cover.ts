import { html } from "lit";
import { coverAidWords, tallyWords } from "../../../src/words/en/walk-aids.ts";
import { mulchDrawing } from "../drawings/mulch.ts";
import { withTexts } from "../entry.ts";
import type { Aid, AidProps } from "./aid.ts";
import { valueNamed, valuesOf } from "./values.ts";
import "./cover-chart.ts";
import "./photo.ts";
import "./tally.ts";

/** The drawn chart: press the picture that is nearest, at several spots. */
export const chartAid: Aid = {
  fills: "all",
  show: ({ entry, term, tell }) => {
    const chosen = (entry.terms[term]?.texts[0] ?? []).filter((text) => text !== "");
    return html`<gwb-cover-chart
      .chosen=${chosen}
      .stands=${entry.terms[term]!.way === "mulch-chart" ? coverAidWords.ofMulch : coverAidWords.ofLeaves}
      @choose=${(event: CustomEvent<{ chosen: string[] }>) =>
        tell(withTexts(entry, term, 0, event.detail.chosen.length > 0 ? event.detail.chosen : [""]))}
    ></gwb-cover-chart>`;
  },
};

/** Points of a string grid: one key for a hit and one for a miss. */
export const pointsAid: Aid = {
  show: ({ walk, entry, term, tell }) => {
    const hits = valueNamed(entry, term, "hits", walk.typed) ?? 0;
    const all = valueNamed(entry, term, "points", walk.typed) ?? 0;
    const way = entry.terms[term]!.way;
    return html`<gwb-walk-tally
        .names=${[tallyWords.hits[way]!, tallyWords.misses]}
        .counts=${[hits, Math.max(0, all - hits)]}
        .says=${all > 0 ? tallyWords.counted(hits, all) : ""}
        @count=${(event: CustomEvent<{ counts: number[] }>) => {
          const [hit = 0, miss = 0] = event.detail.counts;
          tell(withTexts(withTexts(entry, term, 0, [String(hit)]), term, 1, [String(hit + miss)]));
        }}
      ></gwb-walk-tally>
      <p class="note">${tallyWords.orType}</p>`;
  },
};

export const photoAid: Aid = {
  fills: "all",
  show: ({ entry, term, tell }) =>
    html`<gwb-walk-photo
      @green=${(event: CustomEvent<{ green: number; pixels: number }>) => {
        const { green, pixels } = event.detail;
        tell(withTexts(withTexts(entry, term, 0, [String(green)]), term, 1, [String(pixels)]));
      }}
    ></gwb-walk-photo>`,
};

export const mulchAid: Aid = {
  show: ({ walk, entry, term }) => {
    const [depth] = valuesOf(entry, term, walk.typed);
    return html`<figure>
      ${mulchDrawing(typeof depth === "number" ? depth : null, typeof depth === "number" ? walk.show(depth, "mm") : "")}
    </figure>`;
  },
};

/** Which planting stands at each point of the tape. */
export const transectAid: Aid = {
  fills: ["points-on-planting"],
  show: ({ walk, stop, entry, term, tell }: AidProps) => {
    const bed = walk.survey.beds[stop.index]!;
    const texts = entry.terms[term]?.texts[0] ?? [];
    const counts = bed.plantings.map((_, k) => Number(texts[k] ?? 0) || 0);
    return html`<gwb-walk-tally
      .names=${bed.plantings.map((planting, k) => coverAidWords.planting(k + 1, planting.kind, planting.thirst))}
      .counts=${counts}
      .says=${tallyWords.points(counts.reduce((sum, count) => sum + count, 0))}
      @count=${(event: CustomEvent<{ counts: number[] }>) =>
        tell(withTexts(entry, term, 0, event.detail.counts.map(String)))}
    ></gwb-walk-tally>`;
  },
};

/** The plantings' numbers, for what is written by stretches. */
export const stretchAid: Aid = {
  show: ({ walk, stop }) =>
    html`<ol class="note">
      ${walk.survey.beds[stop.index]!.plantings.map(
        ({ kind, thirst }) => html`<li>${coverAidWords.plantingAs(kind, thirst)}</li>`,
      )}
    </ol>`,
};
