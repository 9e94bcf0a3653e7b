import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../chart.ts";
import { drawShares } from "./draw.ts";
import { type Parts, shareReadings, sharesFinding, sharesTable } from "./prepare.ts";

export function sharesChart(parts: Parts, say: Formatter): Chart {
  return {
    id: "what-each-measure-saves",
    finding: sharesFinding(parts, say),
    about: choicesPlates.shares.about,
    readings: shareReadings(parts, say),
    start: 0,
    table: sharesTable(parts, say),
    draw: (svg, width) => drawShares(svg, parts, width, say),
  };
}
