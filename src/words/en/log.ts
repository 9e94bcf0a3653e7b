/** What is said of a log that is refused. */
import { count } from "./count.ts";
import { fieldName } from "./fields.ts";
import { allOf, oneOf } from "./lists.ts";
import type { FaultWriter } from "./shapeFaults.ts";
import { foundWords } from "./wanted.ts";

const list = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);

/** The sentence for each code of the log's faults. */
export const logFaultWords: Readonly<Record<string, FaultWriter>> = {
  "log-too-long": ({ rows, most }) =>
    `The log must have at most ${count(Number(most))} entries. It has ${count(Number(rows))}.`,
  "log-row-not-fields": (facts) =>
    `An entry of the log must be a group of fields, in curly brackets. ${foundWords(facts)}`,
  "log-no-column": ({ column }) => `The log must have a column named ${column}. Its first row has none.`,
  "log-unknown-column": ({ column, columns, near }) =>
    near === undefined
      ? `A column of the log must be ${oneOf(list(columns))}. This one is named "${column}".`
      : `There is no column named "${column}" in a log. Is "${near}" meant?`,
  "log-lacks": ({ kind }, path) =>
    `${fieldName(path)} is missing. An entry of the kind ${kind} must have it.`,
  "log-lacks-both": ({ kind, fields }) =>
    `An entry of the kind ${kind} must have ${oneOf(list(fields))}. Neither is there.`,
  "log-not-here": ({ kind, fields }) =>
    `An entry of the kind ${kind} must have nothing here: beside date and kind it may have ${allOf(list(fields))}.`,
};
