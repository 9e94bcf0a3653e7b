/** What is said of a fault beside its field, where the sentence for files would speak of files. */

import { labelOf } from "./editor-labels.ts";
import { faultWords } from "./faults.ts";
import { figure } from "./wanted.ts";

interface Fault {
  path: string;
  code: string;
  facts: Readonly<Record<string, unknown>>;
}

/** A bound or figure in the unit that the field shows. */
export interface ShownAs {
  unit: string;
  shown(value: number): string;
}

const forms: Readonly<Record<string, string>> = {
  date: "a day with its year, such as 31 March 2026",
  "date-or-month-day": "a day, such as 31 March for every year or 31 March 2026 for once",
  "date-or-weekday": "a day of the week, or a date such as 31 March 2026",
  "date-or-time": "a day, such as 31 March 2026, or a day and time, such as 31 March 2026, 7:30",
  "clock-time": "a time, such as 7:30",
  currency: "three letters, such as EUR",
  id: "letters, digits, - and _, beginning with a letter or digit, up to 64 long",
  text: "words on one line",
};

const own: Readonly<Record<string, (facts: Fault["facts"]) => string>> = {
  "soil-none": () => "The soil still wants its figures.",
  "soil-many": () => "The soil is said in two ways: choose one of them above.",
  "shares-sum": ({ sum }) =>
    `The shares of a bed’s plants must add to 100%. They add to ${figure(Number((100 * Number(sum)).toPrecision(4)))}%.`,
  "tank-wanted": () => "Water from a tank needs its tank: choose which.",
  "none-is-none": () => "What is not watered has no water supply but “none”.",
  "change-none": () => "A measure changes one thing: choose which.",
  "change-many": () => "A measure changes one thing only: make a measure of each.",
  "watering-unchanged": () => "Nothing of the watering is changed yet.",
  "group-twice": ({ group }) => `Only one measure of “${group}” can be part of the plan.`,
  "measures-clash": () =>
    "Another measure of the plan sets the same thing. Give both one name under which they exclude each other, or leave one out of the plan.",
  "price-none": () => "The price still wants a figure.",
  "price-many": () => "There is one price, and steps too: choose one of them above.",
  "normals-short": () => "Rain alone is not enough: temperatures or evapotranspiration are wanted too.",
  "reading-none": () => "The reading still wants its figures.",
  "reading-many": () => "This is a register, a bill and a dip mixed up: choose one of them.",
  "flow-at-no-tank": () => "Flow by level is for a tap of a tank.",
  "id-twice": ({ id }) => `“${id}” is taken. Each id must be there once.`,
  "id-bed-and-tank": ({ id }) => `“${id}” is taken. A bed and a tank must not have one id.`,
};

/** The sentence of a fault beside its field. `as` says how the field shows its figures, `typed` what stands there. */
export function editorFault(fault: Fault, as: ShownAs | null, typed: string | undefined): string {
  const { code, path, facts } = fault;
  const said = own[code];
  if (said) return said(facts);
  const entered = typed === undefined || typed === "" ? "" : ` You entered “${typed}”.`;
  if (code === "form")
    return `${labelOf(path)} must be ${forms[String(facts.wanted)] ?? "written otherwise"}.${entered}`;
  if ((code === "out-of-range" || code === "not-number") && as && typeof facts.min === "number") {
    const range = `between ${as.shown(facts.min)} and ${as.shown(Number(facts.max))}${as.unit ? ` ${as.unit}` : ""}`;
    const sort = code === "not-number" ? (facts.wanted === "whole" ? "a whole number " : "a number ") : "";
    return `${labelOf(path)} must be ${sort}${range}.${entered}`;
  }
  return faultWords({ path, code, facts } as Parameters<typeof faultWords>[0]);
}

/** A number in a unit that the field does not know. */
export function unknownUnit(path: string, unit: string, known: readonly string[]): string {
  const list = new Intl.ListFormat("en", { type: "disjunction" }).format(known);
  return `${labelOf(path)} can be given in ${list}. “${unit}” is no unit for it.`;
}
