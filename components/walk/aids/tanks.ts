import { html } from "lit";
import type { TankShape } from "../../../src/survey/measuring/tank-volume.ts";
import { wayOf } from "../../../src/survey/measuring/ways.ts";
import { drawnLabels, roofWordsDrawn, tankAidWords } from "../../../src/words/en/walk-aids.ts";
import { slotLabel } from "../../../src/words/en/walk-slots.ts";
import { cisternDrawing, divertDrawing } from "../drawings/pipes.ts";
import { roofDrawing } from "../drawings/roof.ts";
import { tankDrawing } from "../drawings/tank.ts";
import type { Aid, AidProps } from "./aid.ts";
import { valueNamed } from "./values.ts";
import "./dip-table.ts";

const wayAt = ({ entry, term }: AidProps) => entry.terms[term]!.way;

function nowOf(props: AidProps): string | null {
  return props.slot === null ? null : (wayOf(wayAt(props))?.slots[props.slot]?.name ?? null);
}

/** A blank's value as typed, else its name. */
export function labelOf(props: AidProps): (slot: string) => string {
  const { walk, entry, term } = props;
  const way = wayOf(wayAt(props));
  return (name) => {
    const slot = way?.slots.find((one) => one.name === name);
    const value = valueNamed(entry, term, name, walk.typed);
    if (!slot) return "";
    if (value === null) return drawnLabels[name] ?? slotLabel(wayAt(props), name);
    return slot.unit === "m" || slot.unit === "mm" || slot.unit === "°"
      ? walk.show(value, slot.unit)
      : String(value);
  };
}

/** The shape of a tank whose measures are all there; null until then. */
export function tankShape(way: string, size: (slot: string) => number | null): TankShape | null {
  const all = (...slots: string[]) => slots.map(size).every((value) => value !== null && value > 0);
  const s = (slot: string) => size(slot)!;
  if (way === "tank-upright" && all("across")) return { shape: "upright", across_m: s("across") };
  if (way === "tank-girth" && all("girth"))
    return { shape: "upright", across_m: s("girth") / Math.PI - 2 * (size("wall") ?? 0) };
  if (way === "tank-box" && all("length", "width"))
    return { shape: "box", length_m: s("length"), width_m: s("width") };
  if (way === "tank-lying" && all("across", "length"))
    return { shape: "lying", across_m: s("across"), length_m: s("length") };
  if (way === "tank-cone" && all("bottom", "top", "height"))
    return { shape: "cone", bottom_m: s("bottom"), top_m: s("top"), height_m: s("height") };
  return null;
}

const sizes = ["across", "girth", "wall", "length", "width", "bottom", "top", "height", "depth"];

export const tankAid: Aid = {
  show: (props) => {
    const { walk, entry, term, stop } = props;
    const size = (slot: string) => valueNamed(entry, term, slot, walk.typed);
    const shape = tankShape(wayAt(props), size);
    const depth = size("depth");
    return html`<figure>
      ${tankDrawing({
        way: wayAt(props),
        sizes: Object.fromEntries(sizes.map((slot) => [slot, size(slot)])),
        label: labelOf(props),
        now: nowOf(props),
      })}
      <figcaption>${tankAidWords[stop.kind] ?? tankAidWords.capacity}</figcaption>
    </figure>
    ${
      shape && depth
        ? html`<gwb-dip-table .walk=${walk} .shape=${shape} .to_m=${depth} .name=${stop.name}></gwb-dip-table>`
        : ""
    }`;
  },
};

export const roofAid: Aid = {
  show: (props) => {
    const { walk, entry, term } = props;
    const byRise = wayAt(props) === "roof-rise";
    const rise = valueNamed(entry, term, "rise", walk.typed);
    const slope = valueNamed(entry, term, "slope", walk.typed);
    const pitch_deg = byRise
      ? rise && slope && rise < slope
        ? (Math.asin(rise / slope) * 180) / Math.PI
        : 30
      : (valueNamed(entry, term, "pitch", walk.typed) ?? 30);
    return html`<figure>
      ${roofDrawing({ pitch_deg, label: labelOf(props), now: nowOf(props), byRise, words: roofWordsDrawn })}
      <figcaption>${roofWordsDrawn.why}</figcaption>
    </figure>`;
  },
};

export const cisternAid: Aid = {
  show: (props) => html`<figure>${cisternDrawing(labelOf(props), nowOf(props))}</figure>`,
};

export const divertAid: Aid = {
  show: (props) => html`<figure>${divertDrawing(labelOf(props), nowOf(props))}</figure>`,
};
