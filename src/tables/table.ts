/**
 * A published factor: its range, and where it comes from.
 * `memory` marks a source quoted from memory, not read again.
 */
export interface Value {
  low: number;
  middle: number;
  high: number;
  /** The citation in full. */
  source: string;
  memory?: boolean;
  note?: string;
}

/** A stand-in that is not a number. */
export interface Choice {
  is: string | boolean;
  source: string;
  memory?: boolean;
  note?: string;
}

export interface About {
  title: string;
  source: string;
  licence?: string;
  checkedBy?: string;
  on?: string;
}

export interface Column {
  unit: string;
  meaning: string;
}

/** A file of data/ as it is written: a value's `source` is a key of `sources`. */
export interface Table<Row> {
  about: About;
  columns: Readonly<Record<string, Column>>;
  sources: Readonly<Record<string, string>>;
  rows: readonly Row[];
}

/** The rows of a table with every key of a source written out as its citation. */
export function citedRows<Row>(table: Table<Row>): readonly Row[] {
  return table.rows.map((row) => cited(row, table.sources));
}

function cited<T>(cell: T, sources: Readonly<Record<string, string>>): T {
  if (Array.isArray(cell)) return cell.map((part) => cited(part, sources)) as T;
  if (cell === null || typeof cell !== "object") return cell;
  const entries = Object.entries(cell).map(([name, part]) =>
    name === "source" && typeof part === "string"
      ? [name, citation(part, sources)]
      : [name, cited(part, sources)],
  );
  return Object.fromEntries(entries) as T;
}

function citation(key: string, sources: Readonly<Record<string, string>>): string {
  const text = sources[key];
  if (text === undefined) throw new UnknownRow("source", key);
  return text;
}

/** Asked for a word that a table has no row for: a fault of the program, since surveys are checked first. */
export class UnknownRow extends Error {
  override readonly name = "UnknownRow";
  constructor(column: string, word: string) {
    super(`No row of the table has ${column} "${word}".`);
  }
}

/** The row whose column holds the word. */
export function rowOf<Row>(rows: readonly Row[], column: keyof Row & string, word: string): Row {
  const found = rows.find((row) => row[column] === word);
  if (found === undefined) throw new UnknownRow(column, word);
  return found;
}
