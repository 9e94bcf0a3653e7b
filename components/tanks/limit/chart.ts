import type { TankLimit } from "../../../src/report/tank-limit.ts";
import type { TankStory } from "../../../src/report/tanks-view.ts";
import { shortName } from "../../../src/words/en/page.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import type { Chart } from "../../charts/chart.ts";
import { drawLimit } from "./draw.ts";

const words = tanks.limit;

export interface LimitRow {
  what: string;
  more_L_year: number;
  isLimit: boolean;
  text: string;
}

/** What a quarter more of each would bring, in the order in which a tank is looked at. */
export function limitRows(limit: TankLimit, say: Formatter): LimitRow[] {
  const rows = [
    { by: "tank", what: words.tank, more_L_year: limit.moreTank_L_year },
    { by: "roof", what: words.roof, more_L_year: limit.moreRoof_L_year },
    { by: "demand", what: words.demand, more_L_year: limit.moreDemand_L_year },
  ] as const;
  return rows.map(({ by, what, more_L_year }) => ({
    what,
    more_L_year,
    isLimit: by === limit.by,
    text:
      more_L_year < 0.5 ? words.none : words.more(`${say.litresBare(more_L_year)}${NBSP}${say.volumeSymbol}`),
  }));
}

/** The size that is enough, and how near the tank is to it. */
export function enoughSentence(limit: TankLimit, tank: TankStory, say: Formatter): string {
  if (limit.most_L_year < 1) return "";
  const share = say.share(Math.min(1, limit.gives_L_year / limit.most_L_year));
  const size = say.litres(limit.enough_L);
  return limit.enough_L <= tank.capacity_L
    ? words.enoughNow(size, share)
    : words.enough(size, share, say.litres(limit.gives_L_year));
}

export function limitChart(limit: TankLimit, tank: TankStory, say: Formatter): Chart {
  const name = shortName(tank.name);
  const rows = limitRows(limit, say);
  const [what, more] = words.columns;
  return {
    id: `what-holds-back-${tank.id}`,
    finding: words.finding[limit.by](name),
    about: words.about(name),
    readings: [],
    start: 0,
    table: {
      columns: [{ name: what! }, { name: `${more}, ${say.volumeSymbol}`, show: (x) => say.number(x, 0) }],
      rows: rows.map((row) => [row.what, say.volume(row.more_L_year)]),
    },
    draw: (svg, width) => drawLimit(svg, rows, width),
  };
}
