import { formatIso, parseIso } from "../engine/weather/dates.ts";
import type { WeatherColumn } from "../engine/weather/record.ts";
import type { SurveyFinding } from "../survey/survey.ts";
import { originWords } from "../words/en/explain.ts";
import { fieldName } from "../words/en/fields.ts";
import type { Book, RunBook } from "./book.ts";
import type { Say } from "./say.ts";
import type { Input, Origin } from "./sheet.ts";

/** The value at a path of the survey, such as `beds[2].watering.flow_L_min`. */
export function valueAt(document: unknown, path: string): unknown {
  return path
    .split(/[.[\]]+/)
    .filter((step) => step !== "")
    .reduce<unknown>(
      (value, step) =>
        value !== null && typeof value === "object" ? (value as Record<string, unknown>)[step] : undefined,
      document,
    );
}

/** A survey with its blanks filled, and which run of it this is. */
export type Surveyed = Pick<RunBook, "name" | "survey" | "resolved">;

/**
 * Where a figure of the survey came from: assumed in its place and from which table; else measured by whom, when
 * and how; else as it stands in the survey; else from a table that always answers.
 * @param table source of the figure where the survey has no such field
 */
export function originOf(book: Book, run: Surveyed, say: Say, path: string, table?: string): Origin {
  const notes = book.worked.notes?.assumed ?? [];
  const assumed = [...run.resolved.assumed, ...notes].find(({ where }) => where === path);
  if (assumed) return { provenance: "assumed", source: assumed.source };
  const value = valueAt(run.survey, path);
  if (value === undefined) return { provenance: "assumed", source: table ?? originWords.default };
  if (run.name === "plan" && !same(value, valueAt(book.worked.survey, path)))
    return { provenance: "worked-out", source: originWords.measure(path) };
  const finding = (run.survey.found ?? []).findLast(({ at, used }) => at === path && used !== false);
  if (finding) return { provenance: "measured", source: found(finding, run, say) };
  return { provenance: "measured", source: originWords.survey(path) };
}

function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function found({ how, readings, group, when }: SurveyFinding, run: Surveyed, say: Say): string {
  const nickname = (run.survey.groups ?? []).find(({ id }) => id === group)?.nickname ?? null;
  const day = parseIso(when.slice(0, 10));
  return originWords.found(
    how,
    readings.map((reading) => say.number(reading)),
    nickname,
    day === null ? when : say.date(day),
  );
}

/** A figure of the survey as a formula takes it, named as its field is. */
export function surveyed(
  book: Book,
  run: Surveyed,
  say: Say,
  path: string,
  value: number,
  table?: string,
): Input {
  return { value, origin: originOf(book, run, say, path, table), name: fieldName(path) };
}

/** A figure of the weather record on day i. */
export function recorded(book: Book, column: WeatherColumn, i: number): Input {
  const { filled, notes } = book.worked;
  const value = filled.columns[column]![i]!;
  const date = formatIso(filled.firstDay + i);
  if (notes) {
    const { seed, source } = notes.generated;
    return { value, origin: { provenance: "assumed", source: originWords.generated(source, seed) } };
  }
  if (filled.flags[i])
    return { value, origin: { provenance: "assumed", source: originWords.filled(column, date) } };
  return { value, origin: { provenance: "measured", source: originWords.record(column, date) } };
}
