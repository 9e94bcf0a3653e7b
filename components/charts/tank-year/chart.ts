import type { TankView } from "../../../src/report/view.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../chart.ts";
import { drawTankYear } from "./draw.ts";
import { prepareTankYear, tankFinding, tankReadings, tankTable, telling } from "./prepare.ts";

export function tankYearChart(tank: TankView, year: number | null, say: Formatter): Chart {
  const t = prepareTankYear(tank, year);
  return {
    id: `tank-${tank.id}-${year ?? "record"}`,
    finding: tankFinding(t, say),
    about: plate.tank.about(t.name, String(year ?? plate.tank.theRecord)),
    readings: tankReadings(t, say),
    start: telling(t),
    table: tankTable(t, say),
    draw: (svg, width) => drawTankYear(svg, t, width, say),
  };
}
