import type { Fault } from "../faults.ts";
import { readSurvey } from "../read.ts";
import type { Survey } from "../survey.ts";
import { type Address, addressOfText, type Draft, isFields, pathOf, valueIn, withValue } from "./document.ts";

/** More passes than parts that could be put back one after another. */
const mostPasses = 40;

/**
 * The survey that counts while a draft has faults: the draft, but what is at fault as it last was right. What a
 * fault is about goes back alone where that mends it, else with what stands around it.
 * @param right a survey in order, from which parts are taken back
 */
export function healed(draft: Draft, right: Survey): Survey {
  let document: Draft = draft;
  for (let pass = 0; pass < mostPasses; pass++) {
    const outcome = readSurvey(document);
    if ("survey" in outcome) return same(document, right) ? right : outcome.survey;
    const before = document;
    // addresses first: taking entries out moves those behind them
    const at = outcome.faults.map((fault) => ({ fault, address: addressOfText(before, fault.path) }));
    document = at.reverse().reduce((next, { address, fault }) => back(next, address, fault, right), document);
    if (document === before) return right;
  }
  return right;
}

/** Puts back the smallest part around an address that differs from what was right. */
function back(document: Draft, address: Address, fault: Fault, right: Survey): Draft {
  if (address.length === 0) return fault.code === "more-faults" ? document : (right as Draft);
  for (let length = address.length; length > 0; length--) {
    const part = address.slice(0, length);
    const next = partBack(document, part, right as Draft);
    if (next !== null && next !== document) return next;
  }
  return document;
}

/** The document with one part as it was right; null where that part alone cannot be put back. */
function partBack(document: Draft, part: Address, right: Draft): Draft | null {
  const last = part[part.length - 1]!;
  const around = part.slice(0, -1);
  if (pathOf(document, part) === null) return null;
  if (typeof last === "object") {
    const was = valueIn(right, part);
    return same(was, valueIn(document, part)) ? null : withValue(document, part, was);
  }
  if (typeof last === "number") return rowBack(document, part, around, last, right);
  if (!isAligned(document, around, right) || !isFields(valueIn(right, around))) return null;
  const was = valueIn(right, part);
  return same(was, valueIn(document, part)) ? null : withValue(document, part, was);
}

/** Whether an address is about the same thing in both: rows without ids only where none came or went. */
function isAligned(document: Draft, address: Address, right: Draft): boolean {
  if (pathOf(right, address) === null) return false;
  return address.every((step, at) => {
    const lengthIn = (whole: Draft) => {
      const list = valueIn(whole, address.slice(0, at));
      return Array.isArray(list) ? list.length : -1;
    };
    return typeof step !== "number" || lengthIn(document) === lengthIn(right);
  });
}

/** A row without an id: the one at the same place where none came or went, else taken out if it is new. */
function rowBack(document: Draft, part: Address, list: Address, place: number, right: Draft): Draft | null {
  const rows = valueIn(document, list);
  const were = valueIn(right, list);
  if (!Array.isArray(rows) || !Array.isArray(were)) return null;
  if (rows.length === were.length)
    return same(rows[place], were[place]) ? null : withValue(document, part, were[place]);
  const isNew = !were.some((row) => same(row, rows[place]));
  return rows.length > were.length && isNew ? withValue(document, part, undefined) : null;
}

export function same(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
