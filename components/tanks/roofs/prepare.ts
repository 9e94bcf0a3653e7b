import type { RoofBrings } from "../../../src/report/roofs-bring.ts";
import { fromSI } from "../../../src/units.ts";
import { fractionWords } from "../../../src/words/en/page.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { areaUnit } from "../../../src/words/thirst-spoken.ts";
import type { ChartTable } from "../../charts/chart.ts";

const words = tanks.roofPlate;

/** Those that send most first, those that could after them. */
export function roofsInOrder(roofs: readonly RoofBrings[]): RoofBrings[] {
  const last = ({ tank }: RoofBrings) => (tank === null ? 1 : 0);
  return [...roofs].sort((a, b) => last(a) - last(b) || b.sends_L_year - a.sends_L_year);
}

/** Whether what a roof sends comes to a tank that takes it. */
export function isTaken({ tank, idle }: RoofBrings): boolean {
  return tank !== null && !idle;
}

export function roofsFinding(roofs: readonly RoofBrings[], say: Formatter): string {
  if (roofs.length === 0) return words.findingNoRoof;
  const sending = roofsInOrder(roofs).filter(isTaken);
  const [first] = sending;
  if (!first) return words.findingNone;
  if (sending.length === 1) return words.findingOne(first.name, say.litres(first.sends_L_year));
  const all = sending.reduce((sum, { sends_L_year }) => sum + sends_L_year, 0);
  const share = first.sends_L_year / Math.max(1e-9, all);
  return words.finding(first.name, fractionWords(share) ?? say.share(share));
}

export function roofsTable(roofs: readonly RoofBrings[], say: Formatter): ChartTable {
  const [roof, area, tank, falls, sends, flush, elsewhere, stays] = words.columns;
  const show = (x: number) => say.number(x, 0);
  const volume = (name: string) => ({ name: `${name}, ${say.volumeSymbol}`, show });
  return {
    columns: [
      { name: roof! },
      { name: `${area}, ${areaUnit(say)}`, show },
      { name: tank! },
      ...[falls!, sends!, flush!, elsewhere!, stays!].map(volume),
    ],
    rows: roofsInOrder(roofs).map((row) => [
      row.name,
      say.system === "us" ? fromSI(row.area_m2, "m²", "ft²")! : row.area_m2,
      row.tank ?? words.none,
      say.volume(row.falls_L_year),
      say.volume(isTaken(row) ? row.sends_L_year : 0),
      say.volume(row.firstFlush_L_year),
      say.volume(row.elsewhere_L_year + (isTaken(row) ? 0 : row.sends_L_year)),
      say.volume(row.staysBehind_L_year),
    ]),
  };
}
