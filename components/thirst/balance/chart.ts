import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart } from "../../charts/chart.ts";
import { drawBalance } from "./draw.ts";
import { balanceFinding, balanceReadings, balanceTable, prepareBalance } from "./prepare.ts";

/** @returns null where there is nothing to hold against the need */
export function balanceChart(bed: ThirstBed, say: Formatter): Chart | null {
  const balance = prepareBalance(bed);
  if (!balance) return null;
  return {
    id: `today-against-need-${bed.id}`,
    finding: balanceFinding(balance, say),
    about: thirst.balance.about(balance.name),
    readings: balanceReadings(balance, say),
    start: balance.need_L_week.indexOf(Math.max(...balance.need_L_week)),
    table: balanceTable(balance, say),
    draw: (svg, width) => drawBalance(svg, balance, width, say),
  };
}
