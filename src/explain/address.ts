import { formatIso, isRealDate, parseIso } from "../engine/weather/dates.ts";

/**
 * Addresses of figures: `bed/oval/ks/2015-07-14`, `mains/today/2015`, `plan/tank/yard/level/2015-07-14`.
 *
 * A run comes first where it is not the watering to need: `today`, `plan` (with the measures chosen), or
 * `with-water` (a bed that only its tank or only rain waters, had it all it asks for; `plan-with-water` likewise).
 * Then a subject, its id where it has one, a quantity, and when. No `when` is a mean year.
 */
export interface Address {
  run: Run;
  subject: Subject;
  /** Of a bed, tank, roof or draw; empty for others. */
  id: string;
  what: string;
  when: When;
}

export const runs = ["need", "today", "plan", "with-water", "plan-with-water"] as const;
export type Run = (typeof runs)[number];

export const subjects = ["mains", "bed", "tank", "roof", "draw", "leaks", "weather"] as const;
export type Subject = (typeof subjects)[number];

export type When =
  | { kind: "mean" }
  | { kind: "year"; year: number }
  | { kind: "month"; year: number; month: number }
  | { kind: "day"; day: number }
  /** That month in a mean year, and a week of it. */
  | { kind: "calendar-month"; month: number }
  | { kind: "week"; month: number };

export const mean: When = { kind: "mean" };

const withId: readonly string[] = ["bed", "tank", "roof", "draw"];
const plainId = /^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/;
const plainWhat = /^[a-z0-9][a-z0-9-]{0,40}$/;

/** Reads an address; null where it has not the form of one. */
export function parseAddress(text: string): Address | null {
  const parts = text.split("/");
  const run = runs.find((name) => name === parts[0] && name !== "need");
  if (run) parts.shift();
  const subject = subjects.find((name) => name === parts[0] && name !== "weather") ?? "weather";
  if (subject !== "weather") parts.shift();
  const id = withId.includes(subject) ? (parts.shift() ?? "") : "";
  if (withId.includes(subject) && !plainId.test(id)) return null;
  const what = subject === "leaks" ? "leaks" : (parts.shift() ?? "");
  const when = whenOf(parts);
  if (!plainWhat.test(what) || when === null) return null;
  return { run: run ?? "need", subject, id, what, when };
}

/** Whether a text has the form of an address; `explain` tells whether it leads anywhere. */
export function isAddress(text: string): boolean {
  return parseAddress(text) !== null;
}

function whenOf(parts: readonly string[]): When | null {
  const [first, second, ...more] = parts;
  if (first === undefined) return mean;
  if (first === "week") {
    const month = monthOf(second ?? "");
    return month === null || more.length > 0 ? null : { kind: "week", month };
  }
  if (second !== undefined) return null;
  if (/^\d{4}$/.test(first)) return { kind: "year", year: Number(first) };
  if (/^\d{4}-\d{2}$/.test(first)) {
    const year = Number(first.slice(0, 4));
    const month = Number(first.slice(5));
    return isRealDate(year, month, 1) ? { kind: "month", year, month: month - 1 } : null;
  }
  const month = monthOf(first);
  if (month !== null) return { kind: "calendar-month", month };
  const day = parseIso(first);
  return day === null ? null : { kind: "day", day };
}

function monthOf(text: string): number | null {
  return /^(0[1-9]|1[0-2])$/.test(text) ? Number(text) - 1 : null;
}

/** Writes an address; `parseAddress` reads it back. */
export function formatAddress({ run, subject, id, what, when }: Address): string {
  const parts = [
    ...(run === "need" ? [] : [run]),
    ...(subject === "weather" ? [] : [subject]),
    ...(id === "" ? [] : [id]),
    ...(subject === "leaks" ? [] : [what]),
    ...whenParts(when),
  ];
  return parts.join("/");
}

const two = (n: number) => String(n).padStart(2, "0");

function whenParts(when: When): string[] {
  switch (when.kind) {
    case "mean":
      return [];
    case "year":
      return [String(when.year).padStart(4, "0")];
    case "month":
      return [`${String(when.year).padStart(4, "0")}-${two(when.month + 1)}`];
    case "day":
      return [formatIso(when.day)];
    case "calendar-month":
      return [two(when.month + 1)];
    case "week":
      return ["week", two(when.month + 1)];
  }
}

/** The same figure at another time. */
export function atTime(address: Address, when: When): Address {
  return { ...address, when };
}
