/** What a field wants and what it was given, in words. */
import { oneOf } from "./lists.ts";

export type FaultFacts = Readonly<Record<string, unknown>>;

const numbers = new Intl.NumberFormat("en", { maximumFractionDigits: 10 });

export function figure(value: unknown): string {
  return typeof value === "number" ? numbers.format(value) : String(value);
}

/** Sorts of text by name, as they end "must be …". */
const forms: Readonly<Record<string, string>> = {
  id: "an id of letters, digits, - and _, starting with a letter or digit, up to 64 long",
  text: "words on one line, not blank",
  date: "a day of the calendar, written year-month-day as 2026-03-31",
  "date-or-month-day":
    "a day of the calendar: month-day for every year, as 03-31, or one date, as 2026-03-31",
  "date-or-weekday": "a date, as 2026-03-31, or a day of the week: mon, tue, wed, thu, fri, sat or sun",
  "date-or-time": "a date, as 2026-03-31, or a date and time, as 2026-03-31T07:30",
  moment: "a date and time in UTC, as 2026-03-31T07:30:00Z",
  "clock-time": "a time on the 24-hour clock, as 07:30",
  currency: "three capital letters, as EUR",
};

/** Ends "must be …": a number between two bounds, one of some words, a list. */
export function wantedWords(facts: FaultFacts): string {
  const { wanted, min, max, words } = facts;
  const unit = facts.unit ? ` ${facts.unit}` : "";
  const bounds = min === undefined ? "" : ` between ${figure(min)} and ${figure(max)}${unit}`;
  switch (wanted) {
    case "number":
      return `a number${bounds}`;
    case "whole":
      return `a whole number${bounds}`;
    case "word":
      return Array.isArray(words) ? oneOf(words.map(String)) : "a known word";
    case "yes-no":
      return "true or false";
    case "list":
      return "a list, in square brackets";
    case "fields":
      return "a group of fields, in curly brackets";
    case "number-or-text":
      return "a number, or words on one line";
    default:
      return forms[String(wanted)] ?? "text in quotation marks";
  }
}

/** A sentence on what stands there. */
export function foundWords(facts: FaultFacts): string {
  const { found, foundSort } = facts;
  switch (foundSort) {
    case "endless":
      return "The number there is larger than can be held.";
    case "list":
      return "A list stands there.";
    case "fields":
      return "A group of fields stands there.";
    case "nothing":
      return "It is not there.";
  }
  if (found === null) return "It is null.";
  if (found === "") return "It is blank.";
  if (typeof found === "string") return `You entered the text "${found}".`;
  return `You entered ${String(found)}.`;
}
