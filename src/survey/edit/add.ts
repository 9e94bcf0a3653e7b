import type { Change } from "../words.ts";
import { type Draft, rowsOf, valueIn } from "./document.ts";
import { idFrom, type NamedList, takenIds } from "./ids.ts";

/**
 * What a new entry of each list begins with. A size, a flow or a reading is never made up: such a field stays out,
 * and the entry counts for nothing until it is there.
 */
const blanks: Readonly<Record<NamedList, (document: Draft) => Draft>> = {
  beds: () => ({
    plantings: [{ kind: "perennials", thirst: "moderate", share: 1 }],
    watering: { method: "hose", supply: "mains-only" },
  }),
  roofs: () => ({ material: "metal" }),
  tanks: () => ({}),
  taps: () => ({ source: "mains" }),
  draws: (document) => onlyOne(document, "tanks", "tank"),
  leaks: () => ({}),
  restrictions: () => ({}),
  measures: () => ({}),
  meters: () => ({ unit: "kL" }),
  groups: () => ({}),
  found: () => ({ readings: [] }),
};

/** What a change of a measure begins with. */
export const changeBlanks: Readonly<Record<Change, Draft>> = {
  mulch: { beds: [] },
  replant: { beds: [], plantings: [{ kind: "perennials", thirst: "low", share: 1 }] },
  changeWatering: { beds: [] },
  addTank: {},
  resizeTank: {},
  useTank: { beds: [] },
  connectRoof: {},
  firstFlush: { roofs: [] },
  addDraw: {},
  mendLeak: { leaks: [] },
};

/** A new entry at the end of a list, its id made from its name. */
export function withNew(
  document: Draft,
  list: NamedList,
  name: string,
  more: Draft = {},
): { document: Draft; id: string } {
  const id = idFrom(name, list, takenIds(document, list));
  const row = { ...named(list, id, name), ...blanks[list](document), ...more };
  return { document: appended(document, list, row), id };
}

/** A copy of an entry, at the end of its list under another name and id, without the findings and measures about it. */
export function withCopy(
  document: Draft,
  list: NamedList,
  id: string,
  name: string,
): { document: Draft; id: string } {
  const copied = valueIn(document, [list, { id }]) as Draft | undefined;
  if (copied === undefined) return { document, id };
  const newId = idFrom(name, list, takenIds(document, list));
  return { document: appended(document, list, { ...copied, ...named(list, newId, name) }), id: newId };
}

/** Groups have nicknames; a finding is known by what it is about. */
function named(list: NamedList, id: string, name: string): Draft {
  if (list === "found") return { id };
  return list === "groups" ? { id, nickname: name } : { id, name };
}

function appended(document: Draft, list: string, row: Draft): Draft {
  const rows = document[list];
  return { ...document, [list]: [...(Array.isArray(rows) ? rows : []), row] };
}

/** Where there is only one that may be meant, it is. */
function onlyOne(document: Draft, list: NamedList, field: string): Draft {
  const [row, ...others] = rowsOf(document, list);
  return row && others.length === 0 ? { [field]: row.id } : {};
}
