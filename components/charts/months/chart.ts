import type { AnswerView } from "../../../src/report/view.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../chart.ts";
import { drawMonths } from "./draw.ts";
import { monthReadings, monthsFinding, monthsTable, prepareMonths } from "./prepare.ts";

export function monthsChart(view: AnswerView, bedId: string | null, say: Formatter): Chart {
  const months = prepareMonths(view, bedId);
  return {
    id: `watering-by-month-${bedId ?? "all"}`,
    finding: monthsFinding(months, say),
    about: plate.months.about(months.name),
    readings: monthReadings(months, say),
    start: months.need_L_week.indexOf(Math.max(...months.need_L_week)),
    table: monthsTable(months, say),
    draw: (svg, width) => drawMonths(svg, months, width, say),
  };
}
