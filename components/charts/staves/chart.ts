import type { AnswerView } from "../../../src/report/view.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../chart.ts";
import { drawStaves } from "./draw.ts";
import { prepareStaves, staveReadings, stavesFinding, stavesTable } from "./prepare.ts";

export function stavesChart(view: AnswerView, say: Formatter): Chart {
  const staves = prepareStaves(view);
  const total = staves.rain_mm_week.map((_, m) =>
    staves.staves.reduce((sum, s) => sum + s.need_L_week[m]!, 0),
  );
  return {
    id: "litres-a-week-by-bed-and-month",
    finding: stavesFinding(staves),
    about: plate.staves.about,
    readings: staveReadings(staves, say),
    shown: staves.rain_mm_week.map((mm, m) => plate.staves.rainReading(say.month(m), say.depth(mm))),
    start: total.indexOf(Math.max(...total)),
    table: stavesTable(view, say),
    draw: (svg, width) => drawStaves(svg, staves, width, say),
  };
}
