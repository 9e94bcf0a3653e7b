import type { AnswerView, BedView } from "../../../src/report/view.ts";
import { kindWords, shortName, thirstWords } from "../../../src/words/en/page.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";

/** One bed's line in the score of a year. */
export interface Stave {
  name: string;
  /** Plants and how they are watered by their thirst, in words. */
  about: string;
  need_L_week: readonly number[];
  today_L_week: readonly number[] | null;
  /** The month of most need; null where nothing is needed. */
  peak: number | null;
  /** What the bars are measured by: the larger of need and today. */
  most_L: number;
  /** Side of a square as large as the bed, as a share of the largest bed's. */
  side: number;
  watered: boolean;
}

export interface Staves {
  rain_mm_week: readonly number[];
  staves: readonly Stave[];
}

export function aboutBed(bed: BedView): string {
  const kinds = bed.kinds.map((k) => kindWords[k] ?? k).join(", ");
  const unknown = bed.supply !== "none" && bed.today_L_week === null ? `; ${plate.staves.todayUnknown}` : "";
  return `${kinds}, ${plate.staves.wateredWords(thirstWords[bed.thirst] ?? bed.thirst)}${unknown}`;
}

export function prepareStaves(view: AnswerView): Staves {
  const largest_m2 = Math.max(1e-9, ...view.beds.map((b) => b.area_m2));
  return {
    rain_mm_week: view.rain_mm_week,
    staves: view.beds.map((bed) => {
      const most_need = Math.max(...bed.need_L_week);
      return {
        name: bed.name,
        about: aboutBed(bed),
        need_L_week: bed.need_L_week,
        today_L_week: bed.today_L_week,
        peak: most_need > 0.5 ? bed.need_L_week.indexOf(most_need) : null,
        most_L: Math.max(most_need, ...(bed.today_L_week ?? [])),
        side: Math.sqrt(bed.area_m2 / largest_m2),
        watered: bed.supply !== "none",
      };
    }),
  };
}

export function stavesFinding({ staves }: Staves): string {
  if (staves.length === 0) return plate.staves.findingNone;
  if (staves.length === 1) return plate.staves.findingOne(shortName(staves[0]!.name));
  return plate.staves.finding(shortName(staves[0]!.name), shortName(staves.at(-1)!.name));
}

/** At most six beds are read out in one breath; the rest is in the table. */
export function staveReadings({ staves, rain_mm_week }: Staves, say: Formatter): string[] {
  return rain_mm_week.map((mm, m) => {
    const thirsty = [...staves].sort((a, b) => b.need_L_week[m]! - a.need_L_week[m]!).slice(0, 6);
    const beds = thirsty.map((s) => `${s.name} ${say.litresBare(s.need_L_week[m]!)}`).join(", ");
    return plate.staves.reading(say.month(m), say.depth(mm), `${beds} ${plate.staves.unit(say.volumeUnit)}`);
  });
}

/** Every bed by every month. */
export function stavesTable(view: AnswerView, say: Formatter): ChartTable {
  const words = plate.staves;
  const show = (x: number) => say.number(x, 0);
  return {
    columns: [
      { name: words.bed },
      ...Array.from({ length: 12 }, (_, m) => ({
        name: `${say.month(m, "short")}, ${say.volumeSymbol}`,
        show,
      })),
      { name: `${words.year}, ${say.volumeSymbol}`, show },
    ],
    rows: view.beds.map((bed) => [
      bed.name,
      ...bed.need_L_week.map((x) => say.volume(x)),
      say.volume(bed.gross_L_year),
    ]),
  };
}
