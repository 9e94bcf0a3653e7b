import type { WeatherColumn } from "../../engine/weather/record.ts";
import type { Fact } from "../faults.ts";

/** The cells of a file, line by line. */
export type Cells = readonly (readonly string[])[];

/** In which order a date's parts stand in one column. */
export type DateOrder = "dmy" | "mdy" | "ymd";
export const dateOrders: readonly DateOrder[] = ["dmy", "mdy", "ymd"];

/** What somebody says about a file; it always wins over a guess. */
export interface Given {
  columns?: Partial<Record<WeatherColumn | DatePart, string>>;
  units?: Partial<Record<WeatherColumn, string>>;
  dates?: DateOrder;
  /** Only rows that hold this text in this column. */
  where?: { header: string; value: string };
}

/** What a column may be named as, besides the record's own columns. */
export const dateParts = ["date", "year", "month", "day", "dayOfYear"] as const;
export type DatePart = (typeof dateParts)[number];

/** A column of the file that feeds one column of the record. */
export interface FieldMapping {
  header: string;
  /** Place of the column in a row, from 0. */
  at: number;
  /** Id of a unit in source-units.ts. */
  unit: string;
  /** 0–1, how sure the column is; 1 where it was given. */
  certainty: number;
  /** 0–1, how sure the unit is; 1 where it was given or the header says it. */
  unitCertainty: number;
}

export type DateMapping =
  | { kind: "column"; header: string; at: number; order: DateOrder; certainty: number }
  | { kind: "parts"; year: number; month: number; day: number; certainty: number }
  | { kind: "day-of-year"; year: number; day: number; certainty: number };

/** A reading that only a person can decide, with the flags that say each answer. */
export interface Question {
  code: string;
  facts: Readonly<Record<string, Fact>>;
  answers: readonly Answer[];
}

export interface Answer {
  /** What the answer gives. */
  given: Given;
  /** The same as a flag of the command line. */
  flag: string;
  facts: Readonly<Record<string, Fact>>;
}

export interface Mapping {
  fields: Partial<Record<WeatherColumn, FieldMapping>>;
  /** null where no dates were found: a question says so. */
  dates: DateMapping | null;
  where: { header: string; at: number; value: string } | null;
  decimalComma: boolean;
  /** Headers that nothing uses. */
  unused: readonly string[];
  questions: readonly Question[];
}

/** Something worth saying about what was done with the file. */
export interface Note {
  code: string;
  facts: Readonly<Record<string, Fact>>;
}
