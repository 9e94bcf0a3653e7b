import { type WeatherColumn, weatherColumns } from "../../engine/weather/record.ts";
import { columnValues } from "./column-values.ts";
import { guessDates, quoted } from "./date-guess.ts";
import { askColumn, type Candidate, guessFields } from "./field-guess.ts";
import { type Layout, layOut } from "./layout.ts";
import type { Answer, Cells, DateMapping, Given, Mapping, Question } from "./mapping.ts";
import { columnNamed } from "./named-column.ts";
import { askPlace } from "./place-guess.ts";
import { rainLike, shareBelow, temperaturePairs } from "./shape-guess.ts";
import { hasDecimalCommas } from "./source-cells.ts";
import { unitNamed, unitsOf } from "./source-units.ts";
import { chooseUnits } from "./unit-choice.ts";

/** Below this certainty a column is asked for. */
const sureEnough = 0.5;
/** Columns offered as an answer at most, where nothing speaks for one of them. */
const mostOffered = 12;

/**
 * Guesses how a file's columns, units and dates map to a weather record, with how sure each is, and asks where
 * two readings are possible. What is given always wins.
 */
export function guessMapping(rows: Cells, given: Given = {}): Mapping {
  const layout = layOut(rows);
  if (!layout) return nothing([{ code: "import-no-table", facts: {}, answers: [] }]);
  const wrong = wrongFlags(rows, layout, given);
  if (wrong.length > 0) return nothing(wrong);
  const where = whereOf(layout, given);
  const kept = where
    ? { ...layout, body: layout.body.filter((row) => rows[row]![where.at] === where.value) }
    : layout;
  const { dates, questions } = guessDates(rows, kept, given);
  const places = dates ? askPlace(rows, kept, dates) : [];
  questions.push(...places);
  const decimalComma = hasDecimalCommas(numberCells(rows, kept));
  const reserved = new Set([...dateColumns(dates), ...(where ? [where.at] : [])]);
  const candidates = kept.headers.map((header, at): Candidate => {
    return { at, header, values: reserved.has(at) ? null : columnValues(rows, kept.body, at, decimalComma) };
  });
  const { fields, questions: columnQuestions } = guessFields(candidates, given);
  const { mapped, questions: unitQuestions } = chooseUnits(fields, candidates, kept.unitRow, given);
  // With several places in one, the values speak of none: what else is unclear is asked once the place is known.
  if (places.length === 0)
    questions.push(
      ...columnQuestions,
      ...lacking(candidates, mapped),
      ...unsure(candidates, mapped),
      ...unitQuestions,
      ...swapped(candidates, mapped, given),
    );
  const used = new Set([...reserved, ...Object.values(mapped).map((field) => field.at)]);
  const unused = kept.headers.filter((_, at) => !used.has(at));
  return { fields: mapped, dates, where, decimalComma, unused, questions };
}

function nothing(questions: Question[]): Mapping {
  return { fields: {}, dates: null, where: null, decimalComma: false, unused: [], questions };
}

/** What was given and is not in the file, or is no unit of its column. */
function wrongFlags(rows: Cells, layout: Layout, given: Given): Question[] {
  const { headers, body } = layout;
  const questions: Question[] = [];
  const names = [...Object.values(given.columns ?? {}), ...(given.where ? [given.where.header] : [])];
  for (const header of names)
    if (header !== "" && columnNamed(headers, header) < 0)
      questions.push({ code: "import-no-such-column", facts: { header, headers }, answers: [] });
  for (const [column, unit] of Object.entries(given.units ?? {}) as [WeatherColumn, string][])
    if (!unitNamed(column, unit)) {
      const known = unitsOf(column).map((each) => each.id);
      questions.push({ code: "import-no-such-unit", facts: { column, unit, known }, answers: [] });
    }
  const where = whereOf(layout, given);
  if (where && !body.some((row) => rows[row]![where.at] === where.value))
    questions.push({
      code: "import-no-such-place",
      facts: { header: where.header, value: where.value },
      answers: [],
    });
  return questions;
}

function whereOf({ headers }: Layout, { where }: Given): Mapping["where"] {
  const at = where ? columnNamed(headers, where.header) : -1;
  return where && at >= 0 ? { header: headers[at]!, at, value: where.value } : null;
}

function dateColumns(dates: DateMapping | null): number[] {
  if (!dates) return [];
  if (dates.kind === "column") return [dates.at];
  return dates.kind === "parts" ? [dates.year, dates.month, dates.day] : [dates.year, dates.day];
}

function* numberCells(rows: Cells, { body }: Layout): Generator<string> {
  const step = Math.max(1, Math.floor(body.length / 400));
  for (let index = 0; index < body.length; index += step) yield* rows[body[index]!]!;
}

/** Asks for rain, and for what evaporation is worked out from, where no header names them. */
function lacking(candidates: readonly Candidate[], mapped: Mapping["fields"]): Question[] {
  const taken = new Set(Object.values(mapped).map((field) => field.at));
  const free = candidates.filter(({ at, values }) => values && values.numbers.length > 0 && !taken.has(at));
  const headers = candidates.map(({ header }) => header);
  const questions: Question[] = [];
  if (!mapped.rain_mm) {
    const like = rainLike(free).map(({ at }) => at);
    const offered = like.length > 0 ? like : free.map(({ at }) => at).slice(0, mostOffered);
    questions.push({ ...askColumn("rain_mm", offered, headers), code: "import-no-rain" });
  }
  if (mapped.et0_mm || (mapped.tmin_c && mapped.tmax_c)) return questions;
  const answers = temperaturePairs(
    candidates.filter(({ at }) => !taken.has(at) || isTemperature(at, mapped)),
  ).map(({ low, high }) => pairAnswer(headers[low]!, headers[high]!));
  questions.push({
    code: "import-no-evaporation",
    facts: { headers: free.map(({ header }) => header).slice(0, mostOffered) },
    answers,
  });
  return questions;
}

function isTemperature(at: number, { tmin_c, tmax_c }: Mapping["fields"]): boolean {
  return at === tmin_c?.at || at === tmax_c?.at;
}

function pairAnswer(low: string, high: string): Answer {
  const columns = { tmin_c: low, tmax_c: high };
  const flag = `--column ${quoted(`tmin_c=${low}`)} --column ${quoted(`tmax_c=${high}`)}`;
  return { given: { columns }, flag, facts: { low, high } };
}

/** Asks whether a column is what its header hardly says, or its values hardly fit. */
function unsure(candidates: readonly Candidate[], mapped: Mapping["fields"]): Question[] {
  const headers = candidates.map(({ header }) => header);
  return weatherColumns.flatMap((column) => {
    const field = mapped[column];
    return field && field.certainty < sureEnough ? [askColumn(column, [field.at], headers)] : [];
  });
}

/** Asks about a lowest temperature that lies above the highest on most days. */
function swapped(candidates: readonly Candidate[], mapped: Mapping["fields"], given: Given): Question[] {
  const { tmin_c, tmax_c } = mapped;
  if (!tmin_c || !tmax_c || (given.columns?.tmin_c && given.columns.tmax_c)) return [];
  const low = candidates[tmin_c.at]!.values;
  const high = candidates[tmax_c.at]!.values;
  if (!low || !high || low.numbers.length < 10 || tmin_c.unit !== tmax_c.unit) return [];
  const above = shareBelow(high.byRow, low.byRow);
  if (above < 0.5 || shareBelow(low.byRow, high.byRow) >= 0.5) return [];
  const facts = { low: tmin_c.header, high: tmax_c.header, share: above };
  return [{ code: "import-swapped", facts, answers: [pairAnswer(tmax_c.header, tmin_c.header)] }];
}
