import { count } from "./count.ts";
import { fieldName, subject } from "./fields.ts";
import { type FaultFacts, foundWords, wantedWords } from "./wanted.ts";

export type FaultWriter = (facts: FaultFacts, path: string) => string;

const number = (value: unknown) => count(Number(value));

/** Faults of a document's text, and of its fields one by one. */
export const shapeFaultWords: Readonly<Record<string, FaultWriter>> = {
  empty: () => "The file is empty. A survey in JSON is wanted.",
  "too-large": ({ characters, most }) =>
    `A survey must be at most ${number(most)} characters long. This one has ${number(characters)}.`,
  "too-deep": ({ most }) => `A survey must not nest deeper than ${number(most)} levels. This one does.`,
  "too-many-values": ({ most }) => `A survey must hold at most ${number(most)} values. This one holds more.`,
  "json-cut": ({ line, column }) =>
    `The file ends in the middle, at line ${number(line)}, column ${number(column)}: brackets or quotation marks are still open. It may have been cut short; copy it again.`,
  "json-broken": ({ line, column, found }) =>
    `The file must be JSON. At line ${number(line)}, column ${number(column)} stands "${found}", which cannot stand there: look there, and just before, for a missing comma, quotation mark or bracket.`,
  "not-an-object": (facts) =>
    `The file must be a survey: a group of fields in curly brackets. ${foundWords(facts)}`,
  "not-a-survey": (facts) => `The format must be "${facts.wanted}". ${foundWords(facts)}`,
  "version-unclear": (facts) =>
    `The version must be the number ${facts.wanted}, without quotation marks. ${foundWords(facts)}`,
  "version-newer": ({ found, known }) =>
    `This survey is of version ${found}; this program reads up to version ${known}. Update the program, or save the survey as version ${known} where it was made.`,
  "version-older": ({ found, known }) =>
    `This survey is of version ${found}, which no program can bring to version ${known}: the first version is ${known}. Check the number.`,
  "more-faults": ({ count: more }) =>
    Number(more) === 1
      ? "1 more fault is not listed here."
      : `${number(more)} more faults are not listed here.`,

  missing: (facts, path) => `${subject(path)} is missing. It must be ${wantedWords(facts)}.`,
  "out-of-range": (facts, path) => {
    const range = wantedWords(facts).replace("a number between", "between");
    return `${subject(path)} must be ${range}. ${foundWords(facts)}`;
  },
  "not-number": (facts, path) => {
    const hint =
      typeof facts.found === "string" && /\d/.test(facts.found)
        ? " Write the number alone, with a decimal point, without quotation marks or unit."
        : "";
    return `${subject(path)} must be ${wantedWords(facts)}. ${foundWords(facts)}${hint}`;
  },
  "not-whole": (facts, path) => `${subject(path)} must be ${wantedWords(facts)}. ${foundWords(facts)}`,
  "wrong-sort": (facts, path) => `${subject(path)} must be ${wantedWords(facts)}. ${foundWords(facts)}`,
  form: (facts, path) => `${subject(path)} must be ${wantedWords(facts)}. ${foundWords(facts)}`,
  "not-a-word": (facts, path) => {
    const hint = facts.near === undefined ? "" : ` Is "${facts.near}" meant?`;
    return `${subject(path)} must be ${wantedWords(facts)}. ${foundWords(facts)}${hint}`;
  },
  "text-too-long": ({ length, bound }, path) =>
    `${subject(path)} must be at most ${number(bound)} characters long. It has ${number(length)}.`,
  "too-many": ({ length, bound }, path) =>
    `${fieldName(path)}: the list must have at most ${number(bound)} entries. It has ${number(length)}.`,
  "too-few": ({ length, bound }, path) =>
    `${fieldName(path)}: the list must have at least ${number(bound)} ${Number(bound) === 1 ? "entry" : "entries"}. It has ${number(length)}.`,
  "wrong-count": ({ length, bound }, path) =>
    `${fieldName(path)}: the list must have exactly ${number(bound)} entries. It has ${number(length)}.`,
  "unknown-field": ({ field, near }) => {
    const hint = near === undefined ? "Take it out, or check its spelling." : `Is "${near}" meant?`;
    return `There is no field named "${field}" here. ${hint}`;
  },
};
