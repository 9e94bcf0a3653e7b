import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import type { Without } from "../../../src/report/without.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../../charts/chart.ts";
import { drawChanges } from "./draw.ts";
import { changesFinding, changesTable, prepareChanges } from "./prepare.ts";

export function changesChart(bed: ThirstBed, without: readonly Without[], say: Formatter): Chart {
  const changes = prepareChanges(bed, without);
  return {
    id: `what-changes-${bed.id}`,
    finding: changesFinding(changes, say),
    about: thirst.changes.about(changes.name),
    readings: [],
    start: 0,
    table: changesTable(changes, say),
    draw: (svg, width) => drawChanges(svg, changes, width, say),
  };
}
