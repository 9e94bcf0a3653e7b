import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import { shortName } from "../../../src/words/en/page.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import type { ChartTable } from "../../charts/chart.ts";

const words = thirst.balance;
/** Within this share of the need, or this many litres a week, a month counts as about right. */
const NEAR = 0.12;
const LITTLE_L = 5;

/** Today's watering against the need, by month of a mean year; above 0 is too much. */
export interface Balance {
  name: string;
  need_L_week: readonly number[];
  today_L_week: readonly number[];
  more_L_week: readonly number[];
  /** Minutes of the same; null where no flow is known. */
  more_min_week: readonly number[] | null;
  flow_L_min: number;
  supply: ThirstBed["supply"];
}

/** @returns null where today's watering is not known, or the bed is never watered */
export function prepareBalance(bed: ThirstBed): Balance | null {
  const { today_L_week, need_L_week, supply, flow_L_min } = bed;
  if (today_L_week === null || supply === "none") return null;
  const more_L_week = need_L_week.map((need, m) => today_L_week[m]! - need);
  return {
    name: shortName(bed.name),
    need_L_week,
    today_L_week,
    more_L_week,
    more_min_week: flow_L_min > 0 ? more_L_week.map((litres) => litres / flow_L_min) : null,
    flow_L_min,
    supply,
  };
}

/** 1 too much, −1 too little, 0 about right. */
export function leaning({ need_L_week, more_L_week }: Balance, m: number): -1 | 0 | 1 {
  const more = more_L_week[m]!;
  if (Math.abs(more) <= Math.max(LITTLE_L, NEAR * need_L_week[m]!)) return 0;
  return more > 0 ? 1 : -1;
}

/** Calendar months as runs, past New Year too: "June to August", "May". */
export function monthRuns(isIn: (m: number) => boolean, say: Formatter): string {
  const months = Array.from({ length: 12 }, (_, m) => isIn(m));
  if (months.every(Boolean)) return words.allYear;
  const starts = months.flatMap((is, m) => (is && !months[(m + 11) % 12] ? [m] : []));
  const runs = starts.map((from) => {
    let to = from;
    while (months[(to + 1) % 12]) to = (to + 1) % 12;
    if (to === from) return say.month(from);
    return (from + 1) % 12 === to
      ? say.list([say.month(from), say.month(to)])
      : words.run(say.month(from), say.month(to));
  });
  return say.list(runs);
}

export function minutesText(minutes: number, say: Formatter): string {
  const shown = Math.abs(minutes);
  return `${say.number(shown, shown < 10 ? 1 : 0)}${NBSP}${words.minutes}`;
}

export function balanceFinding(balance: Balance, say: Formatter): string {
  const { name, more_L_week, more_min_week } = balance;
  const extreme = (sign: 1 | -1) => {
    const at = more_L_week.reduce((best, more, m) => (sign * more > sign * more_L_week[best]! ? m : best), 0);
    return leaning(balance, at) === sign ? at : null;
  };
  const [over, under] = [extreme(1), extreme(-1)];
  const said = (m: number) =>
    [say.litres(Math.abs(more_L_week[m]!)), more_min_week && minutesText(more_min_week[m]!, say)] as const;
  const underMonths = monthRuns((m) => leaning(balance, m) < 0, say);
  if (over !== null) {
    const head = words.over(name, say.month(over), ...said(over));
    return under === null ? head : words.both(head, underMonths);
  }
  return under === null ? words.even(name) : words.under(name, say.month(under), ...said(under));
}

export function balanceReadings(balance: Balance, say: Formatter): string[] {
  return balance.more_L_week.map((more, m) => {
    const litres = `${say.litresBare(Math.abs(more))}${NBSP}${say.volumeUnit}`;
    const minutes = balance.more_min_week && minutesText(balance.more_min_week[m]!, say);
    const lean = leaning(balance, m);
    const said =
      lean === 0 ? words.right : lean > 0 ? words.more(litres, minutes) : words.less(litres, minutes);
    return words.reading(say.month(m), said);
  });
}

export function balanceTable(
  { need_L_week, today_L_week, more_L_week, more_min_week }: Balance,
  say: Formatter,
): ChartTable {
  const [month, need, today, more, minutes] = words.columns;
  const show = (x: number) => say.number(x, 0);
  const volume = (name: string) => ({ name: `${name}, ${say.volumeSymbol}`, show });
  return {
    columns: [
      { name: month! },
      volume(need!),
      volume(today!),
      volume(more!),
      ...(more_min_week ? [{ name: minutes!, show: (x: number) => say.number(x, 1) }] : []),
    ],
    rows: need_L_week.map((litres, m) => [
      say.month(m),
      say.volume(litres),
      say.volume(today_L_week[m]!),
      say.volume(more_L_week[m]!),
      ...(more_min_week ? [more_min_week[m]!] : []),
    ]),
  };
}
