import type { BedYear } from "../../../src/report/bed-year.ts";
import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import { shortName } from "../../../src/words/en/page.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import type { ChartTable } from "../../charts/chart.ts";

const words = thirst.year;
const MS_PER_DAY = 86_400_000;

/** A bed through a year with what its heading and readings need. */
export interface YearPicture extends BedYear {
  name: string;
  waterings: number;
  stressDays: number;
  /** Let out over the year, litres. */
  let_L: number;
  drainedAll_mm: number;
}

export function prepareYear(of: BedYear, bed: ThirstBed): YearPicture {
  const sum = (values: ArrayLike<number>) => Array.from(values).reduce((all, each) => all + each, 0);
  return {
    ...of,
    name: shortName(bed.name),
    waterings: of.watered_mm.reduce((times, mm) => times + (mm > 0 ? 1 : 0), 0),
    stressDays: sum(of.stressed),
    let_L: sum(of.watered_mm) * of.letOut_L_mm,
    drainedAll_mm: sum(of.drained_mm),
  };
}

export function yearFinding(picture: YearPicture, say: Formatter): string {
  const { name, waterings, stressDays, let_L, as } = picture;
  const year = String(picture.year);
  const times = waterings === 1 ? words.once : words.times(say.number(waterings));
  const head =
    waterings === 0
      ? words.findingNever(name, year)
      : as === "today"
        ? words.findingToday(name, times, year)
        : words.finding(name, times, year, say.litres(let_L / waterings));
  const days = stressDays === 1 ? words.oneDay : words.days(say.number(stressDays));
  return head + (stressDays === 0 ? words.neverThirsty : words.thirsty(days));
}

export function dayReading(picture: YearPicture, i: number, say: Formatter): string {
  const watered = picture.watered_mm[i]!;
  const tank = picture.fromTank_mm[i]!;
  const parts = [words.within(say.depthBare(picture.stored_mm[i]!), say.depth(picture.available_mm))];
  if (picture.rain_mm[i]! > 0) parts.push(words.rained(say.depth(picture.rain_mm[i]!)));
  if (watered > 0) {
    const from = tank <= 0 ? "" : tank < watered * 0.999 ? words.fromBoth : words.fromTank;
    parts.push(
      words.watered(`${say.litresBare(watered * picture.letOut_L_mm)}${NBSP}${say.volumeSymbol}`, from),
    );
  }
  if (picture.drained_mm[i]! >= 0.05) parts.push(words.drainedReading(say.depth(picture.drained_mm[i]!)));
  if (picture.stressed[i]) parts.push(words.isThirsty);
  return words.reading(say.date(picture.firstDay + i), parts);
}

/** The day that the ruler stands at first: the driest. */
export function driestDay({ stored_mm }: YearPicture): number {
  return stored_mm.reduce((best, mm, i) => (mm < stored_mm[best]! ? i : best), 0);
}

export function yearTable(picture: YearPicture, say: Formatter): ChartTable {
  const [date, rain, watered, tank, used, drained, within, thirsty] = words.columns;
  const depth = (name: string) => ({
    name: `${name}, ${say.depthSymbol}`,
    show: (x: number) => say.number(x, say.system === "us" ? 2 : 1),
  });
  const litres = (name: string) => ({
    name: `${name}, ${say.volumeSymbol}`,
    show: (x: number) => say.number(x, 0),
  });
  const series = [picture.used_mm, picture.drained_mm, picture.stored_mm];
  return {
    columns: [
      { name: date! },
      depth(rain!),
      litres(watered!),
      litres(tank!),
      depth(used!),
      depth(drained!),
      depth(within!),
      { name: thirsty! },
    ],
    rows: Array.from(picture.rain_mm, (rain_mm, i) => [
      new Date((picture.firstDay + i) * MS_PER_DAY).toISOString().slice(0, 10),
      say.depthValue(rain_mm),
      say.volume(picture.watered_mm[i]! * picture.letOut_L_mm),
      say.volume(picture.fromTank_mm[i]! * picture.letOut_L_mm),
      ...series.map((values) => say.depthValue(values[i]!)),
      picture.stressed[i] ? words.thirstyMark : "",
    ]),
  };
}
