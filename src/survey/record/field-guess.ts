import { type WeatherColumn, weatherColumns } from "../../engine/weather/record.ts";
import type { ColumnValues } from "./column-values.ts";
import { quoted } from "./date-guess.ts";
import { headerSays } from "./header-words.ts";
import type { Answer, Given, Question } from "./mapping.ts";
import { columnNamed } from "./named-column.ts";
import { unitsOf } from "./source-units.ts";
import { fit } from "./unit-guess.ts";

export interface FieldGuess {
  column: WeatherColumn;
  at: number;
  certainty: number;
}

/** Columns of the file with what they hold; those of dates and places have no values. */
export interface Candidate {
  at: number;
  header: string;
  values: ColumnValues | null;
}

/** What is left of a header's word where no value fits it: enough to ask about, not to go by. */
const misfit = 0.4;

/** Two columns of the file this near each other in certainty are a question. */
const tie = 0.04;

/** Gives each column of the record the column of the file that suits it best, and asks where two suit alike. */
export function guessFields(
  candidates: readonly Candidate[],
  given: Given,
): { fields: FieldGuess[]; questions: Question[] } {
  const headers = candidates.map((candidate) => candidate.header);
  const fields: FieldGuess[] = [];
  const questions: Question[] = [];
  const taken = new Set<number>();
  const told = new Set<WeatherColumn>();
  for (const column of weatherColumns) {
    const name = given.columns?.[column];
    if (name === undefined) continue;
    told.add(column);
    const at = columnNamed(headers, name);
    if (at < 0) continue;
    taken.add(at);
    fields.push({ column, at, certainty: 1 });
  }
  const suits = weatherColumns
    .filter((column) => !told.has(column))
    .flatMap((column) =>
      candidates.map((candidate) => ({ column, at: candidate.at, certainty: suit(column, candidate) })),
    )
    .filter(({ at, certainty }) => certainty > 0.3 && !taken.has(at))
    .sort((a, b) => b.certainty - a.certainty);
  for (const { column, at, certainty } of suits) {
    if (taken.has(at) || told.has(column)) continue;
    taken.add(at);
    told.add(column);
    fields.push({ column, at, certainty });
    const rivals = suits.filter((other) => {
      return (
        other.column === column &&
        other.at !== at &&
        !taken.has(other.at) &&
        certainty - other.certainty < tie
      );
    });
    if (rivals.length > 0)
      questions.push(askColumn(column, [at, ...rivals.map((rival) => rival.at)], headers));
  }
  return { fields, questions };
}

export function askColumn(
  column: WeatherColumn,
  ats: readonly number[],
  headers: readonly string[],
): Question {
  const answers = ats.map((at): Answer => {
    const header = headers[at]!;
    const flag = `--column ${quoted(`${column}=${header}`)}`;
    return { given: { columns: { [column]: header } }, flag, facts: { column, header } };
  });
  return { code: "import-column", facts: { column }, answers };
}

/** What the header says, times how well the values fit in the unit that fits them best. */
function suit(column: WeatherColumn, { header, values }: Candidate): number {
  const said = headerSays(column, header);
  if (said === 0 || !values || values.numbers.length === 0) return 0;
  const best = Math.max(...unitsOf(column).map((unit) => fit(column, values, unit)));
  return said * (misfit + (1 - misfit) * best);
}
