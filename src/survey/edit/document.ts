import { pathSteps } from "../measuring/field-path.ts";
import type { Path } from "../path.ts";

/** A survey while it is typed: whatever JSON it is, a group of fields, faults and all. */
export type Draft = Readonly<Record<string, unknown>>;

/** A field's name, a place in a list, or a list's entry by its id, which stays the same when entries move. */
export type Step = string | number | { readonly id: string };
export type Address = readonly Step[];

/** Where an address stands in a document as it is now; null where an entry of it is not there. */
export function pathOf(document: unknown, address: Address): Path | null {
  const path: (string | number)[] = [];
  let part = document;
  for (const step of address) {
    const place = typeof step === "object" ? placeOfId(part, step.id) : step;
    if (place === -1) return null;
    path.push(place);
    part = within(part, place);
  }
  return path;
}

/** The address of a path: entries with an id by their id. */
export function addressOf(document: unknown, path: Path): Address {
  const address: Step[] = [];
  let part = document;
  for (const step of path) {
    const next = within(part, step);
    const id = typeof step === "number" && isFields(next) ? next.id : undefined;
    address.push(typeof id === "string" && placeOfId(part, id) === step ? { id } : step);
    part = next;
  }
  return address;
}

/** The address of a path written as text: `beds[2].area_m2`; the whole document where it is no path. */
export function addressOfText(document: unknown, text: string): Address {
  const steps = pathSteps(text);
  return steps === null || text === "survey" ? [] : addressOf(document, steps);
}

/** One text for an address, the same wherever its entries stand: `beds/oval/area_m2`. */
export function keyOf(address: Address): string {
  return address.map((step) => (typeof step === "object" ? step.id : String(step))).join("/");
}

/** The value at an address; undefined where there is none. */
export function valueIn(document: unknown, address: Address): unknown {
  const path = pathOf(document, address);
  return path === null ? undefined : path.reduce(within, document);
}

/**
 * The document with a value at an address, groups of fields on the way made; undefined takes a field, or an entry of
 * a list, out. Unchanged where an entry on the way is not there. Parts that are not on the way stay the same objects.
 */
export function withValue(document: Draft, address: Address, value: unknown): Draft {
  const path = pathOf(document, address);
  return path === null || path.length === 0 ? document : (put(document, path, value) as Draft);
}

/** As withValue; a soil of which nothing is said any more is not known. */
export function withField(document: Draft, address: Address, value: unknown): Draft {
  const next = withValue(document, address, value);
  const around = address.slice(0, -1);
  const soil = valueIn(next, around);
  const isEmptied = around[around.length - 1] === "soil" && isFields(soil) && Object.keys(soil).length === 0;
  return isEmptied ? withValue(next, around, undefined) : next;
}

function put(part: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (typeof step === "number") {
    const list = Array.isArray(part) ? part : [];
    if (step > list.length) return part;
    const next = rest.length === 0 ? value : put(list[step], rest, value);
    if (next === undefined) return list.filter((_, at) => at !== step);
    return step === list.length ? [...list, next] : list.with(step, next);
  }
  const { [step]: before, ...others } = isFields(part) ? part : ({} as Draft);
  const next = rest.length === 0 ? value : put(before, rest, value);
  if (next === undefined) return others;
  // a field that is there keeps its place among the others
  return isFields(part) && Object.hasOwn(part, step)
    ? { ...part, [step]: next }
    : { ...others, [step]: next };
}

/** The entries of a list that are groups of fields, wherever the list is not one none. */
export function rowsOf(document: unknown, list: string): readonly Draft[] {
  const rows = isFields(document) ? document[list] : undefined;
  return Array.isArray(rows) ? rows.filter(isFields) : [];
}

export function isFields(value: unknown): value is Draft {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function placeOfId(part: unknown, id: string): number {
  return Array.isArray(part) ? part.findIndex((row) => isFields(row) && row.id === id) : -1;
}

function within(part: unknown, step: string | number): unknown {
  if (typeof part !== "object" || part === null || !Object.hasOwn(part, step)) return undefined;
  return (part as Record<string | number, unknown>)[step];
}
