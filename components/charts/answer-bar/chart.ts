import type { AnswerView } from "../../../src/report/view.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../chart.ts";
import { drawAnswerBar } from "./draw.ts";
import { answerFinding, answerTable, prepareAnswerBar } from "./prepare.ts";

export function answerBarChart(view: AnswerView, say: Formatter): Chart {
  const bar = prepareAnswerBar(view);
  return {
    id: "mains-water-by-year",
    finding: answerFinding(bar, say),
    about: plate.bar.about,
    readings: [],
    start: 0,
    table: answerTable(view, say),
    draw: (svg, width) => drawAnswerBar(svg, bar, width, say),
  };
}
