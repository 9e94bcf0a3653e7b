import Papa from "papaparse";

/** A file of separated values as cells: one array of trimmed texts for each line, blank lines included. */
export interface Delimited {
  rows: string[][];
  delimiter: Delimiter;
  /** Row, from 1, in which a quotation mark opens and never closes; null where all close. */
  openQuoteRow: number | null;
  /** Whether there were more rows than were asked for. */
  cut: boolean;
  /** The first line, from 1, that is longer than any row of weather, so that no cells were made; null for none. */
  longLine: number | null;
}

/** Tried in this order: a file that a tab parts evenly may well have commas in its numbers or its notes. */
export const delimiters = ["\t", ";", "|", ","] as const;
export type Delimiter = (typeof delimiters)[number];

/** Lines looked at to tell the delimiter: enough to get past the notes above a header. */
const sample_rows = 200;

/** Characters in a line: hundreds of columns. More would only be memory taken. */
const longestLine = 20_000;

export interface DelimitedOptions {
  /** Told from the text where left out. */
  delimiter?: Delimiter;
  /** Rows read at most. */
  maxRows?: number;
}

/** Splits comma, tab, semicolon or pipe separated text into cells; a byte-order mark falls away. */
export function parseDelimited(given: string, options: DelimitedOptions = {}): Delimited {
  // Files pasted together may end their lines in more than one way, which the parser does not expect.
  const text = given.includes("\r") ? given.replace(/\r\n?/g, "\n") : given;
  const longLine = firstLongLine(text);
  if (longLine !== null) return { rows: [], delimiter: ",", openQuoteRow: null, cut: false, longLine };
  const delimiter = options.delimiter ?? tellDelimiter(text);
  const maxRows = options.maxRows ?? Number.POSITIVE_INFINITY;
  const { data, errors } = split(text, delimiter, maxRows + 1);
  for (const row of data) for (let at = 0; at < row.length; at++) row[at] = row[at]!.trim();
  const open = errors.find((error) => error.code === "MissingQuotes");
  const cut = data.length > maxRows;
  if (cut) data.length = maxRows;
  return { rows: data, delimiter, openQuoteRow: open ? (open.row ?? 0) + 1 : null, cut, longLine };
}

/** The first delimiter that parts most of the lines into the same number of cells, two or more. */
export function tellDelimiter(text: string): Delimiter {
  let best: Delimiter = ",";
  let bestShare = 0;
  for (const delimiter of delimiters) {
    const share = evenShare(split(text, delimiter, sample_rows).data);
    if (share > bestShare + 0.1) {
      best = delimiter;
      bestShare = share;
    }
  }
  return best;
}

function evenShare(rows: string[][]): number {
  const counts = new Map<number, number>();
  let filled = 0;
  for (const row of rows) {
    if (row.length === 1 && row[0]!.trim() === "") continue;
    filled += 1;
    if (row.length > 1) counts.set(row.length, (counts.get(row.length) ?? 0) + 1);
  }
  return filled === 0 ? 0 : Math.max(0, ...counts.values()) / filled;
}

function firstLongLine(text: string): number | null {
  let line = 1;
  for (let start = 0; start < text.length; line++) {
    const next = text.indexOf("\n", start);
    const end = next < 0 ? text.length : next;
    if (end - start > longestLine) return line;
    start = end + 1;
  }
  return null;
}

function split(text: string, delimiter: Delimiter, preview_rows: number): Papa.ParseResult<string[]> {
  const preview = Number.isFinite(preview_rows) ? preview_rows : 0;
  return Papa.parse<string[]>(text, { delimiter, preview, newline: "\n" });
}
