import type { AnswerView } from "../../../src/report/view.ts";
import { fractionWords } from "../../../src/words/en/page.ts";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";

/** One bar: a year's mains water, and what tanks give beside it where that is known. kL. */
export interface Bar {
  name: string;
  mains_kL: number;
  tanks_kL: number;
}

/** A year's water, bar under bar by one measure: today, watered to need, as planned. */
export interface AnswerBar {
  /** null where it is not known for any bed. */
  today: Bar | null;
  /** Need first, then the plan where measures are chosen. */
  bars: readonly Bar[];
  /** The last bar in a wet and in a dry year; null without whole years. */
  wet_kL: number | null;
  dry_kL: number | null;
  /** Longest bar. */
  most_kL: number;
}

export function prepareAnswerBar(view: AnswerView): AnswerBar {
  const { mains, measures } = view;
  const words = plate.bar;
  const today =
    view.standing === "need-only" ? null : { name: words.today, mains_kL: mains.today_kL, tanks_kL: 0 };
  const bars: Bar[] = [{ name: words.need, mains_kL: mains.need_kL, tanks_kL: mains.tanks_kL }];
  if (measures.length > 0)
    bars.push({ name: words.plan, mains_kL: mains.plan_kL, tanks_kL: mains.tanksPlan_kL });
  const wet_kL = mains.wet?.plan_kL ?? null;
  const dry_kL = mains.dry?.plan_kL ?? null;
  const lengths = [...(today ? [today] : []), ...bars].map((b) => b.mains_kL + b.tanks_kL);
  return { today, bars, wet_kL, dry_kL, most_kL: Math.max(...lengths, wet_kL ?? 0, dry_kL ?? 0) };
}

/** What the bars show, in a sentence. */
export function answerFinding({ today, bars }: AnswerBar, say: Formatter): string {
  const words = plate.bar;
  const need = bars[0]!;
  const needs = say.yearly(need.mains_kL);
  if (!today)
    return words.needAlone(needs) + (need.tanks_kL > 0 ? words.withTanks(say.yearly(need.tanks_kL)) : "");
  const takes = say.yearly(today.mains_kL);
  if (today.mains_kL < need.mains_kL) return words.less(takes, needs);
  const more = need.mains_kL > 0 ? fractionWords(today.mains_kL / need.mains_kL - 1) : null;
  const plan = bars[1];
  return plan && !more ? words.planned(takes, say.yearly(plan.mains_kL)) : words.more(more, takes, needs);
}

/** Each whole year and the mean one. */
export function answerTable(view: AnswerView, say: Formatter): ChartTable {
  const show = (x: number) => say.number(x, 0);
  const withUnit = (name: string) => `${name}, ${say.volumeSymbol}`;
  const [year, today, need, plan, giveUp] = plate.bar.columns;
  const known = view.standing !== "need-only";
  const planned = view.measures.length > 0;
  const names = [...(known ? [today] : []), need, ...(planned ? [plan] : []), ...(known ? [giveUp] : [])];
  const row = (name: string, y: { today_kL: number; need_kL: number; plan_kL: number }) => [
    name,
    ...[
      ...(known ? [y.today_kL] : []),
      y.need_kL,
      ...(planned ? [y.plan_kL] : []),
      ...(known ? [y.today_kL - y.plan_kL] : []),
    ].map((kL) => say.volume(kL * 1000)),
  ];
  return {
    columns: [{ name: year }, ...names.map((name) => ({ name: withUnit(name), show }))],
    rows: [...view.mains.byYear.map((y) => row(String(y.year), y)), row(plate.bar.mean, view.mains)],
  };
}
