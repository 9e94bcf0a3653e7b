import type { Claim, TankStory } from "../../../src/report/tanks-view.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Chart, ChartTable } from "../../charts/chart.ts";
import { drawClaims } from "./draw.ts";

const words = tanks.claims;

export function claimsChart({ id, claims }: TankStory, say: Formatter): Chart {
  return {
    id: `who-asks-${id}`,
    finding: claimsFinding(claims, say),
    about: words.about,
    readings: [],
    start: 0,
    table: claimsTable(claims, say),
    draw: (svg, width) => drawClaims(svg, claims, width, say),
  };
}

export function claimsFinding(claims: readonly Claim[], say: Formatter): string {
  const most = [...claims].sort((a, b) => b.got_L_year - a.got_L_year)[0];
  return most ? words.finding(most.name, say.litres(most.got_L_year)) : words.findingNone;
}

export function claimsTable(claims: readonly Claim[], say: Formatter): ChartTable {
  const [who, asked, given, share] = words.columns;
  const show = (x: number) => say.number(x, 0);
  return {
    columns: [
      { name: who! },
      { name: `${asked}, ${say.volumeSymbol}`, show },
      { name: `${given}, ${say.volumeSymbol}`, show },
      { name: share!, show: say.share },
    ],
    rows: claims.map(({ name, asks_L_year, got_L_year }) => [
      name,
      say.volume(asks_L_year),
      say.volume(got_L_year),
      asks_L_year > 0 ? Math.min(1, got_L_year / asks_L_year) : 1,
    ]),
  };
}
