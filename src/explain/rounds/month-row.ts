import type { BedMonth, BedNeed, BedTable, TableFrom } from "../../engine/rounds/table.ts";
import { roundTitles } from "../../words/en/explain-rounds.ts";
import type { MonthFigure } from "../../words/round-at.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Input, Sheet } from "../sheet.ts";
import type { Working } from "../working.ts";
import { nameOf, needOf, opens, pageOf, type RoundBook } from "./book.ts";

/** A bed's row of the month table with all that it was made from. */
export interface MonthRow {
  bed: BedNeed;
  id: string;
  month: number;
  isDry: boolean;
  row: BedMonth;
  from: TableFrom;
  /** Places of the years that it was made for. */
  group: readonly number[];
  years: readonly { year: number }[];
  sheet: Sheet;
  at: string;
}

/** The row of a bed and month; null where the table has none, or nothing is watered. */
export function monthRow(
  book: RoundBook,
  id: string,
  month: number,
  isDry: boolean,
  what: MonthFigure,
): MonthRow | null {
  const { table } = book.worked;
  const bed = needOf(book, id);
  const of: BedTable | undefined = table.beds.find((one) => one.id === id);
  const row = isDry ? of?.dry?.[month] : of?.middle[month];
  const from = isDry ? of?.from.dry : of?.from.middle;
  const group = isDry ? table.groups.dry : table.groups.middle;
  if (!bed || !row || !from || !group) return null;
  const { sheet, at } = pageOf(book, roundAt.month(id, month, what, isDry));
  return { bed, id, month, isDry, row, from, group, years: table.years, sheet, at };
}

/** Another figure of the same row. */
export function sameRow({ id, month, isDry }: MonthRow, what: MonthFigure, value: number): Input {
  return opens(value, roundAt.month(id, month, what, isDry));
}

export function rowDone(
  book: RoundBook,
  { sheet, at, id, month, isDry }: MonthRow,
  what: MonthFigure,
): Working {
  return sheet.done(at, roundTitles.month(what, nameOf(book, id), month, isDry));
}
