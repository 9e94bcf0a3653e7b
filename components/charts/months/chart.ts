import type { AnswerView } from "../../../src/report/view.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../chart.ts";
import { drawMonths } from "./draw.ts";
import { type Months, monthReadings, monthsFinding, monthsTable, prepareMonths } from "./prepare.ts";

export function monthsChart(view: AnswerView, bedId: string | null, say: Formatter): Chart {
  return monthsChartOf(prepareMonths(view, bedId), bedId ?? "all", say);
}

/** @param of whose months they are, for the name of the file */
export function monthsChartOf(months: Months, of: string, say: Formatter): Chart {
  const kind = months.years ? plate.months.aboutYears : plate.months.about;
  return {
    id: `watering-by-month-${of}`,
    finding: monthsFinding(months, say),
    about: kind(months.name),
    readings: monthReadings(months, say),
    start: months.need_L_week.indexOf(Math.max(...months.need_L_week)),
    table: monthsTable(months, say),
    draw: (svg, width) => drawMonths(svg, months, width, say),
  };
}
