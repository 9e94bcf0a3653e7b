import { html } from "lit";
import type { Obstruction } from "../../../src/engine/grounds.ts";
import { skyLeft, sunByMonth } from "../../../src/survey/measuring/sun-hours.ts";
import { skylineWords } from "../../../src/words/en/walk-panels.ts";
import type { Walk } from "../context.ts";
import { skyDrawing, sunHoursDrawing } from "../drawings/skyline.ts";
import { readEntry, withTexts } from "../entry.ts";
import type { Aid, AidProps } from "./aid.ts";
import "./tilt.ts";

/** What is written of the skyline so far: rows that are whole, the rest left for later. */
function soFar({ entry, term, walk }: AidProps): Obstruction[] {
  const one = entry.terms[term]!;
  const size = one.way === "skyline-heights" ? 4 : 3;
  const list = one.texts.at(-1) ?? [];
  const rows = Array.from({ length: Math.floor(list.length / size) }, (_, i) =>
    list.slice(size * i, size * (i + 1)),
  );
  const whole = rows.filter((row) => row.every((text) => text.trim() !== "")).flat();
  if (whole.length === 0) return [];
  const texts = [...one.texts.slice(0, -1).map((row) => (row[0]?.trim() ? row : ["0"])), whole];
  const { outcome } = readEntry({ paced: null, terms: [{ ...one, texts }] }, walk.typed);
  return outcome && "values" in outcome ? ((outcome.values?.obstructions as Obstruction[]) ?? []) : [];
}

/** The sky with what stands before it, and the hours of sun that are left. */
export function skyFigures(walk: Walk, obstructions: readonly Obstruction[]) {
  const { latitude, longitude } = walk.survey.site;
  const months = sunByMonth(latitude, longitude, obstructions);
  const name = (month: number, form: "narrow" | "long") =>
    new Intl.DateTimeFormat(walk.locale, { month: form, timeZone: "UTC" }).format(
      Date.UTC(2021, month - 1, 15),
    );
  const sorted = [...months].sort((a, b) => a.sun_h - b.sun_h);
  const [least, most] = [sorted[0]!, sorted.at(-1)!];
  const hours = (h: number) => walk.show(Math.round(h * 2) / 2, "h");
  return html`<figure>
      ${skyDrawing({ latitude, longitude, obstructions, words: skylineWords })}
      <figcaption>${skylineWords.seen(obstructions.length, walk.show(1 - skyLeft(obstructions), "share"))}</figcaption>
    </figure>
    <figure>
      <h3>${skylineWords.hours}</h3>
      ${sunHoursDrawing(months.map((one) => ({ ...one, name: name(one.month, "narrow") })))}
      <figcaption>${skylineWords.hoursSentence(
        hours(least.sun_h),
        name(least.month, "long"),
        hours(most.sun_h),
        name(most.month, "long"),
      )}</figcaption>
    </figure>`;
}

export const skylineAid: Aid = {
  show: (props) => {
    const { walk, entry, term, tell } = props;
    const one = entry.terms[term]!;
    return html`<p class="note">${skylineWords.bearings}</p>
      ${one.way === "skyline-fists" ? html`<p class="note">${skylineWords.fist}</p>` : ""}
      ${
        one.way === "skyline-tilt"
          ? html`<gwb-walk-tilt
              @tilt=${(event: CustomEvent<{ text: string }>) => {
                const texts = [...(one.texts[1] ?? [])];
                const row = texts.findIndex((text, i) => i % 3 === 2 && text.trim() === "");
                const at = row === -1 ? Math.ceil((texts.length + 1) / 3) * 3 - 1 : row;
                while (texts.length < at) texts.push("");
                texts[at] = event.detail.text;
                tell(withTexts(entry, term, 1, texts));
              }}
            ></gwb-walk-tilt>`
          : ""
      }
      ${skyFigures(walk, soFar(props))}`;
  },
};
