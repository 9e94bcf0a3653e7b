import type { RoofBrings } from "../../../src/report/roofs-bring.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../../charts/chart.ts";
import { drawRoofs } from "./draw.ts";
import { roofsFinding, roofsTable } from "./prepare.ts";

export function roofsChart(roofs: readonly RoofBrings[], say: Formatter): Chart {
  return {
    id: "what-roofs-send",
    finding: roofsFinding(roofs, say),
    about: tanks.roofPlate.about,
    readings: [],
    start: 0,
    table: roofsTable(roofs, say),
    draw: (svg, width) => drawRoofs(svg, roofs, width, say),
  };
}
