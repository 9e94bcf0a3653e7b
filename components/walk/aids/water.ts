import { html } from "lit";
import { flowFromJug_L_min } from "../../../src/engine/watering.ts";
import { flowAtOneMetre_L_min, gravityFlow_L_min } from "../../../src/survey/measuring/gravity-hose.ts";
import { clockWords, tallyWords, waterAidWords } from "../../../src/words/en/walk-aids.ts";
import { cansDrawing } from "../drawings/cans.ts";
import { flowCurve, type TimedRun } from "../drawings/flow-curve.ts";
import { hoseDrawing } from "../drawings/pipes.ts";
import { withText, withTexts } from "../entry.ts";
import type { Aid, AidProps } from "./aid.ts";
import { firstBlank } from "./soil.ts";
import { valuesOf } from "./values.ts";
import "./clock.ts";
import "./tally.ts";

/** A stopwatch that writes its seconds into the next blank. */
function stopwatch(props: AidProps, slot: number) {
  const { walk, stop, entry, term, tell } = props;
  return html`<gwb-walk-clock
    .walk=${walk}
    .stop=${stop.key}
    @read=${(event: CustomEvent<{ text: string }>) =>
      tell(withText(entry, term, slot, firstBlank(props, slot), event.detail.text))}
  ></gwb-walk-clock>`;
}

export const jugAid: Aid = { show: (props) => stopwatch(props, 1) };

/** Five minutes at the meter. */
export const meterAid: Aid = {
  show: ({ walk, stop }) =>
    html`<p class="note">${waterAidWords.meter}</p>
      <gwb-walk-clock .walk=${walk} .stop=${stop.key} .for_s=${300} .label=${clockWords.fiveMinutes}></gwb-walk-clock>`,
};

/** A key for each drip, and a minute on the clock. */
export const dripAid: Aid = {
  show: (props) => {
    const { walk, stop, entry, term, tell } = props;
    const texts = entry.terms[term]?.texts[0] ?? [""];
    const place = texts.length - 1;
    const count = Number(texts[place]) || 0;
    return html`<gwb-walk-clock .walk=${walk} .stop=${stop.key} .for_s=${60} .label=${clockWords.minute}></gwb-walk-clock>
      <gwb-walk-tally
        .names=${[tallyWords.drip]}
        .counts=${[count]}
        .says=${tallyWords.drips(count)}
        @count=${(event: CustomEvent<{ counts: number[] }>) =>
          tell(withText(entry, term, 0, place, String(event.detail.counts[0])))}
      ></gwb-walk-tally>`;
  },
};

/** Runs of a hose that are whole. */
export function runsOf(flat: readonly number[]): TimedRun[] {
  return Array.from({ length: Math.floor(flat.length / 4) }, (_, i) => {
    const [level_L = 0, head_m = 0, litres = 0, seconds = 0] = flat.slice(4 * i, 4 * i + 4);
    return { level_L, head_m, flow_L_min: seconds > 0 ? flowFromJug_L_min(litres, seconds) : 0 };
  }).filter(({ head_m, flow_L_min }) => head_m > 0 && flow_L_min > 0);
}

export const hoseAid: Aid = {
  show: (props) => {
    const { walk, entry, term } = props;
    const [flat] = valuesOf(entry, term, walk.typed);
    const runs = runsOf(Array.isArray(flat) ? flat : []);
    const atOne = runs.length > 1 ? flowAtOneMetre_L_min(runs) : null;
    return html`<figure>
        ${
          runs.length > 0
            ? flowCurve(runs, atOne === null ? null : (head) => gravityFlow_L_min(atOne, head), walk.show)
            : hoseDrawing(waterAidWords.hose)
        }
        <figcaption>${runs.length > 1 ? waterAidWords.curve : waterAidWords.driven}</figcaption>
      </figure>
      <gwb-walk-clock
        .walk=${walk}
        .stop=${props.stop.key}
        @read=${(event: CustomEvent<{ text: string }>) => {
          const texts = [...(entry.terms[term]?.texts[0] ?? [])];
          const row = texts.findIndex((text, i) => i % 4 === 3 && text.trim() === "");
          const at = row === -1 ? Math.ceil(texts.length / 4) * 4 + (texts.length % 4 === 0 ? 3 : -1) : row;
          while (texts.length < at) texts.push("");
          texts[at] = event.detail.text;
          props.tell(withTexts(entry, term, 0, texts));
        }}
      ></gwb-walk-clock>`;
  },
};

export const cansAid: Aid = {
  show: ({ walk, entry, term }) => {
    const values = valuesOf(entry, term, walk.typed);
    const caught = Array.isArray(values[3]) ? values[3] : [];
    return html`<figure>
      ${cansDrawing(caught)}
      <figcaption>${caught.length > 0 ? waterAidWords.cans : waterAidWords.noCans}</figcaption>
    </figure>`;
  },
};
