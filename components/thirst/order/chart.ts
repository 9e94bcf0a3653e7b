import type { ThirstView } from "../../../src/report/thirst-view.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../../charts/chart.ts";
import { drawOrder } from "./draw.ts";
import { type OrderBy, orderFinding, orderTable, prepareOrder } from "./prepare.ts";

export function orderChart(view: ThirstView, by: OrderBy, most: number, say: Formatter): Chart {
  const order = prepareOrder(view, by, most);
  return {
    id: `beds-by-thirst-${by}`,
    finding: orderFinding(order),
    about: thirst.orderPlate.about,
    readings: [],
    start: 0,
    table: orderTable(view, by, say),
    draw: (svg, width) => drawOrder(svg, order, width, say),
  };
}
