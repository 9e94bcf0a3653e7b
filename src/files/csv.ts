import Papa from "papaparse";

/** Writes a table as CSV, a line feed at each row's end. */
export function writeCsv(header: readonly string[], rows: readonly (readonly string[])[]): string {
  return `${Papa.unparse({ fields: [...header], data: rows as string[][] }, { newline: "\n" })}\n`;
}
