import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../chart.ts";
import { drawSizes } from "./draw.ts";
import { type SizeCurve, sizeReadings, sizesFinding, sizesTable } from "./prepare.ts";

export function sizeChart(curve: SizeCurve, say: Formatter): Chart {
  return {
    id: `sizes-of-${curve.tank}`,
    finding: sizesFinding(curve, say),
    about: choicesPlates.sizes.about(curve.name),
    readings: sizeReadings(curve, say),
    start: Math.max(
      0,
      curve.rows.findIndex(({ mark }) => mark === "today"),
    ),
    table: sizesTable(curve, say),
    draw: (svg, width) => drawSizes(svg, curve, width, say),
  };
}
