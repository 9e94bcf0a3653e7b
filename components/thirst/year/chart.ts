import type { BedYear } from "../../../src/report/bed-year.ts";
import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { type Chart, readingsOf } from "../../charts/chart.ts";
import { drawBedYear } from "./draw.ts";
import { dayReading, driestDay, prepareYear, yearFinding, yearTable } from "./prepare.ts";

export function bedYearChart(of: BedYear, bed: ThirstBed, say: Formatter): Chart {
  const picture = prepareYear(of, bed);
  return {
    id: `day-by-day-${bed.id}-${of.year}-${of.as}`,
    finding: yearFinding(picture, say),
    about: thirst.year.about(picture.name, String(of.year)),
    readings: readingsOf(of.rain_mm.length, (i) => dayReading(picture, i, say)),
    start: driestDay(picture),
    table: yearTable(picture, say),
    draw: (svg, width) => drawBedYear(svg, picture, width, say),
  };
}
