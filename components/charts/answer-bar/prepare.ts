import type { AnswerView } from "../../../src/report/view.ts";
import { fractionWords, plate } from "../../../src/words/en/page.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";

/** A year's water side by side: what is taken today, and what it would take to need. All kL. */
export interface AnswerBar {
  /** null where it is not known for any bed. */
  today_kL: number | null;
  need_kL: number;
  tanks_kL: number;
  /** Need in a wet and in a dry year; null without whole years. */
  wet_kL: number | null;
  dry_kL: number | null;
  /** Longest bar. */
  most_kL: number;
}

export function prepareAnswerBar(view: AnswerView): AnswerBar {
  const { mains } = view;
  const today_kL = view.standing === "need-only" ? null : mains.today_kL;
  const wet_kL = mains.wet?.need_kL ?? null;
  const dry_kL = mains.dry?.need_kL ?? null;
  const most_kL = Math.max(today_kL ?? 0, mains.need_kL + mains.tanks_kL, dry_kL ?? 0, wet_kL ?? 0);
  return { today_kL, need_kL: mains.need_kL, tanks_kL: mains.tanks_kL, wet_kL, dry_kL, most_kL };
}

/** What the bars show, in a sentence. */
export function answerFinding(bar: AnswerBar, say: Formatter): string {
  const words = plate.bar;
  const need = say.yearly(bar.need_kL);
  const tanks = bar.tanks_kL > 0 ? words.withTanks(say.yearly(bar.tanks_kL)) : "";
  if (bar.today_kL === null) return words.only(need) + tanks;
  const today = say.yearly(bar.today_kL);
  if (bar.today_kL < bar.need_kL) return words.less(today, need);
  return words.more(bar.need_kL > 0 ? fractionWords(bar.today_kL / bar.need_kL - 1) : null, today, need);
}

/** Each whole year and the mean one. */
export function answerTable(view: AnswerView, say: Formatter): ChartTable {
  const show = (x: number) => say.litresBare(x * 1000);
  const withUnit = (name: string) => `${name}, ${say.volumeSymbol}`;
  const [year, today, need, giveUp] = plate.bar.columns;
  const known = view.standing !== "need-only";
  const row = (name: string, t: number, n: number) => [name, ...(known ? [t, n, t - n] : [n])];
  return {
    columns: [
      { name: year },
      ...(known ? [{ name: withUnit(today), show }] : []),
      { name: withUnit(need), show },
      ...(known ? [{ name: withUnit(giveUp), show }] : []),
    ],
    rows: [
      ...view.mains.byYear.map((y) => row(String(y.year), y.today_kL, y.plan_kL)),
      row(plate.bar.mean, view.mains.today_kL, view.mains.need_kL),
    ],
  };
}
