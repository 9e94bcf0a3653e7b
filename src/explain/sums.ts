import { formatIso } from "../engine/weather/dates.ts";
import { perYear, sumOver } from "../engine/years.ts";
import { originWords, sumWords } from "../words/en/explain.ts";
import { terms } from "../words/en/explain-terms.ts";
import type { When } from "./address.ts";
import { calendarOf, elsewhere, type Figure, type Flow, sheetFor } from "./figure.ts";
import type { Part, Sheet } from "./sheet.ts";
import { titleOf, whenText } from "./titles.ts";
import type { Working } from "./working.ts";

interface Span {
  from: number;
  to: number;
  when: When;
}

/** The months of a record, in order; a year's, or one calendar month of every year. */
function monthsOf(figure: Figure, wanted: { year?: number; month?: number }): Span[] {
  const { year, month, days } = calendarOf(figure);
  const spans: Span[] = [];
  for (let from = 0, to = 0; from < days; from = to) {
    while (to < days && month[to] === month[from] && year[to] === year[from]) to++;
    const isWanted =
      (wanted.year === undefined || wanted.year === year[from]) &&
      (wanted.month === undefined || wanted.month === month[from]);
    if (isWanted) spans.push({ from, to, when: { kind: "month", year: year[from]!, month: month[from]! } });
  }
  return spans;
}

function yearsOf(figure: Figure): Span[] {
  const { year, days } = calendarOf(figure);
  const spans: Span[] = [];
  for (let from = 0, to = 0; from < days; from = to) {
    while (to < days && year[to] === year[from]) to++;
    spans.push({ from, to, when: { kind: "year", year: year[from]! } });
  }
  return spans;
}

function daysOf(figure: Figure, { from, to }: Span): Span[] {
  const { firstDay } = calendarOf(figure);
  return Array.from({ length: to - from }, (_, n) => {
    return { from: from + n, to: from + n + 1, when: { kind: "day", day: firstDay + from + n } };
  });
}

function join(spans: readonly Span[]): { from: number; to: number } | null {
  return spans.length === 0 ? null : { from: spans[0]!.from, to: spans.at(-1)!.to };
}

/** A flow over a month, a year, a calendar month or a mean year; null where the record has no such day. */
export function explainFlow(figure: Figure, flow: Flow): Working | null {
  const series = flow.series(figure);
  const { when } = figure.address;
  if (!series) return null;
  const sheet = sheetFor(figure);
  switch (when.kind) {
    case "year":
      return stretch(figure, flow, series, sheet, monthsOf(figure, { year: when.year }), sumWords.months);
    case "month": {
      const [month] = monthsOf(figure, { year: when.year }).filter((span) =>
        sameMonth(span.when, when.month),
      );
      return month ? stretch(figure, flow, series, sheet, daysOf(figure, month), sumWords.days) : null;
    }
    case "mean":
      return meanYear(figure, flow, series, sheet);
    case "calendar-month":
    case "week":
      return meanMonth(figure, flow, series, sheet, when);
    case "day":
      return null;
  }
}

function sameMonth(when: When, month: number): boolean {
  return when.kind === "month" && when.month === month;
}

/** Sums of shorter stretches; and the same by what it is made of, where it is made of several things. */
function stretch(
  figure: Figure,
  flow: Flow,
  series: Float64Array,
  sheet: Sheet,
  spans: Span[],
  words: string,
): Working | null {
  const whole = join(spans);
  if (!whole) return null;
  const { when } = figure.address;
  const inKL = flow.inKL && when.kind === "year";
  bySource(figure, flow, sheet, whole, when);
  flow.notes?.(figure, sheet);
  const total = sheet.sum(flow.term, words, partsOf(figure, flow, series, spans), sumOver(series, whole));
  if (inKL) sheet.step("mainsToKL", { mains: total }, total.value / 1000);
  return sheet.done(...titleOf(figure));
}

function partsOf(figure: Figure, flow: Flow, series: Float64Array, spans: readonly Span[]): Part[] {
  return spans.map(({ from, to, when }) => {
    const total = sumOver(series, { from, to });
    const value = flow.inKL && when.kind === "year" ? total / 1000 : total;
    return { ...elsewhere(value, { ...figure.address, when }), name: whenText(when, figure.say)! };
  });
}

/** What a stretch is made of; litres, whatever the whole is told in. */
function bySource(
  figure: Figure,
  flow: Flow,
  sheet: Sheet,
  span: { from: number; to: number },
  when: When,
): void {
  const parts = (flow.parts?.(figure) ?? []).map(({ name, byDay_L, address }): Part => {
    return { ...elsewhere(sumOver(byDay_L, span), { ...address, when }), name };
  });
  const series = flow.series(figure)!;
  if (parts.length > 0) sheet.sum(flow.term, sumWords.parts, parts, sumOver(series, span), originWords.ours);
}

/** Total over the record ÷ its days × 365.25. */
function meanYear(figure: Figure, flow: Flow, series: Float64Array, sheet: Sheet): Working {
  const { days } = calendarOf(figure);
  const all = { from: 0, to: days };
  const term = flow.inKL ? "mainsKL" : flow.term;
  const sum = sumOver(series, all);
  const value = flow.inKL ? sum / 1000 : sum;
  if (flow.parts) meanBySource(figure, flow, sheet, days);
  flow.notes?.(figure, sheet);
  const total = sheet.sum(term, sumWords.years, partsOf(figure, flow, series, yearsOf(figure)), value);
  const { total: totalName, days: daysName } = sumWords.meanTemplate;
  countDays(figure, sheet, daysName, days);
  sheet.plain(
    term,
    `{${totalName}} ÷ {${daysName}} × 365.25`,
    sumWords.meanYear,
    {
      [totalName]: { value: total.value, unit: terms[term].unit },
      [daysName]: { value: days, unit: "days" },
    },
    perYear(value, days),
  );
  return sheet.done(...titleOf(figure));
}

/** What a mean year is made of. */
function meanBySource(figure: Figure, flow: Flow, sheet: Sheet, days: number): void {
  const all = { from: 0, to: days };
  const parts = flow.parts!(figure).map(({ name, byDay_L, address }): Part => {
    return {
      ...elsewhere(perYear(sumOver(byDay_L, all), days), { ...address, when: { kind: "mean" } }),
      name,
    };
  });
  const whole = perYear(sumOver(flow.series(figure)!, all), days);
  sheet.sum(flow.term, sumWords.parts, parts, whole, originWords.ours);
}

/** A calendar month of a mean year, or a week of it. */
function meanMonth(
  figure: Figure,
  flow: Flow,
  series: Float64Array,
  sheet: Sheet,
  when: { kind: "calendar-month" | "week"; month: number },
): Working | null {
  const spans = monthsOf(figure, { month: when.month });
  if (spans.length === 0) return null;
  const value = spans.reduce((sum, span) => sum + sumOver(series, span), 0);
  const words = sumWords.allYears(figure.say.month(when.month));
  const total = sheet.sum(flow.term, words, partsOf(figure, flow, series, spans), value);
  const isWeek = when.kind === "week";
  const count = isWeek ? spans.reduce((sum, { from, to }) => sum + to - from, 0) : series.length;
  const { total: totalName, days, monthDays } = sumWords.meanTemplate;
  const daysName = isWeek ? monthDays : days;
  countDays(figure, sheet, daysName, count);
  sheet.plain(
    flow.term,
    `{${totalName}} ÷ {${daysName}} × ${isWeek ? 7 : 365.25}`,
    isWeek ? sumWords.week : sumWords.meanYear,
    {
      [totalName]: { value: total.value, unit: terms[flow.term].unit },
      [daysName]: { value: count, unit: "days" },
    },
    isWeek ? (total.value / count) * 7 : perYear(total.value, count),
  );
  return sheet.done(...titleOf(figure));
}

function countDays(figure: Figure, sheet: Sheet, name: string, count: number): void {
  const { firstDay, days } = calendarOf(figure);
  const source = originWords.recordFrom(formatIso(firstDay), formatIso(firstDay + days - 1));
  sheet.note(name, figure.say.number(count), { provenance: "measured", source });
}
