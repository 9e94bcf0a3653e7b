import { html } from "lit";
import { wayOf } from "../../../src/survey/measuring/ways.ts";
import { shapeWords } from "../../../src/words/en/walk-aids.ts";
import { slotLabel } from "../../../src/words/en/walk-slots.ts";
import { shapeDrawing } from "../drawings/shape.ts";
import { type ShapeFigure, shapeFigure, usualSizes } from "../drawings/shape-geometry.ts";
import type { Entry, TypedIn } from "../entry.ts";
import type { Aid, AidProps } from "./aid.ts";
import { valuesOf } from "./values.ts";

/** A shape of an entry to draw: to scale where every length is there. */
export function figureOf(
  entry: Entry,
  term: number,
  typed: TypedIn,
): { figure: ShapeFigure; toScale: boolean } | null {
  const way = entry.terms[term]?.way ?? "";
  const usual = usualSizes[way];
  if (!usual) return null;
  const values = valuesOf(entry, term, typed);
  const drawn = way === "offsets" ? values.slice(1) : values;
  const wanted = way === "offsets" || way === "offsets-uneven" ? 2 : 0;
  const isThere = drawn.every((value) =>
    Array.isArray(value) ? value.length >= Math.max(1, wanted) : value !== null && value > 0,
  );
  if (isThere) {
    const figure = shapeFigure(way, drawn.flat() as number[]);
    if (figure) return { figure, toScale: true };
  }
  // what is typed already keeps its place among the usual sizes
  const mixed = usual.map((size, i) =>
    typeof drawn[i] === "number" && drawn[i] > 0 && !hasList(way) ? drawn[i] : size,
  );
  const figure = shapeFigure(way, mixed) ?? shapeFigure(way, usual);
  return figure && { figure: figure.closes ? figure : shapeFigure(way, usual)!, toScale: false };
}

const hasList = (way: string) => wayOf(way)?.slots.some(({ list }) => list) ?? false;

function drawing({ walk, entry, term, slot }: AidProps) {
  const drawn = figureOf(entry, term, walk.typed);
  const one = entry.terms[term]!;
  if (!drawn) return html``;
  const values = valuesOf(entry, term, walk.typed);
  const unit = entry.paced ? "" : "m";
  const label = (s: number) => {
    const value = values[s];
    if (typeof value === "number" && value > 0)
      return unit ? walk.show(value, "m") : String(Math.round(value * 10) / 10);
    return drawn.toScale ? "" : slotLabel(one.way, wayOf(one.way)!.slots[s]!.name);
  };
  return html`<figure>
    ${shapeDrawing(drawn.figure, { width: 330, slot, label, cut: one.sign < 0, toScale: drawn.toScale })}
    <figcaption>${drawn.toScale ? (drawn.figure.closes ? shapeWords.toScale : shapeWords.gap) : shapeWords.sketch}</figcaption>
  </figure>`;
}

export const shapeAid: Aid = { show: drawing };
