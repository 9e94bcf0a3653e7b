import type { TankView } from "../../../src/report/view.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { type Chart, readingsOf } from "../chart.ts";
import { drawTankYear } from "./draw.ts";
import { prepareTankYear, tankFinding, tankReading, tankTable, telling } from "./prepare.ts";

/** @param tried what it was before a change, drawn beside, and what the change comes to */
export function tankYearChart(
  tank: TankView,
  year: number | null,
  say: Formatter,
  tried: { before_L: readonly number[]; finding: string } | null = null,
): Chart {
  const t = prepareTankYear(tank, year, tried?.before_L ?? null);
  return {
    id: `tank-${tank.id}-${year ?? "record"}`,
    finding: tried?.finding ?? tankFinding(t, say),
    about: plate.tank.about(t.name, String(year ?? plate.tank.theRecord)),
    readings: readingsOf(t.level_L.length, (i) => tankReading(t, i, say)),
    start: telling(t),
    get table() {
      return tankTable(t, say);
    },
    draw: (svg, width) => drawTankYear(svg, t, width, say),
  };
}
