import { formatIso } from "../../engine/weather/dates.ts";
import { quoted } from "./date-guess.ts";
import { headerWords, placeWords } from "./header-words.ts";
import type { Layout } from "./layout.ts";
import type { Answer, Cells, DateMapping, Question } from "./mapping.ts";
import { rowDay } from "./source-dates.ts";

/** Values that one column of places may have, and those that a question lists. */
const most = { places: 500, listed: 20 } as const;

/**
 * Asks which place is wanted where a file holds several: days come more than once, and some column parts the
 * rows so that within each of its values they do not.
 */
export function askPlace(rows: Cells, layout: Layout, dates: DateMapping): Question[] {
  const days = layout.body.map((row) => rowDay(rows[row]!, dates));
  const distinct = new Set(days).size;
  const used = dates.kind === "column" ? [dates.at] : Object.values(dates);
  const repeats = days.length - distinct;
  for (const [at, header] of layout.headers.entries()) {
    if (used.includes(at)) continue;
    const named = placeWords.test(headerWords(header));
    if (repeats === 0 && !named) continue;
    const parted = part(rows, layout, days, at);
    if (parted && parted.size > 1 && (repeats > 0 || isText([...parted.keys()])))
      return [placeQuestion(header, parted)];
  }
  const perDay = days.length / Math.max(1, distinct);
  return perDay < 1.5
    ? []
    : [{ code: "import-not-daily", facts: { perDay: Math.round(perDay) }, answers: [] }];
}

/** Days by the values of a column; null where a value has a day twice, or there are too many values. */
function part(rows: Cells, layout: Layout, days: readonly (number | null)[], at: number) {
  const byValue = new Map<string, Set<number>>();
  for (const [index, row] of layout.body.entries()) {
    const value = rows[row]![at] ?? "";
    const day = days[index];
    if (value === "" || day === null || day === undefined) continue;
    const seen = byValue.get(value) ?? new Set();
    if (seen.has(day) || (seen.size === 0 && byValue.size >= most.places)) return null;
    byValue.set(value, seen.add(day));
  }
  return byValue;
}

function placeQuestion(header: string, byValue: Map<string, Set<number>>): Question {
  const answers = [...byValue].slice(0, most.listed).map(([value, days]): Answer => {
    const from = formatIso([...days].reduce((a, b) => Math.min(a, b)));
    const to = formatIso([...days].reduce((a, b) => Math.max(a, b)));
    const facts = { value, days: days.size, from, to };
    return { given: { where: { header, value } }, flag: `--where ${quoted(`${header}=${value}`)}`, facts };
  });
  return { code: "import-place", facts: { header, places: byValue.size }, answers };
}

function isText(values: readonly string[]): boolean {
  return values.every((value) => /[a-z]/i.test(value));
}
