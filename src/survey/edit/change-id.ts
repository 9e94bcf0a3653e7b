import { type Draft, isFields, rowsOf, valueIn, withValue } from "./document.ts";
import { type NamedList, takenIds } from "./ids.ts";
import { references } from "./references.ts";

/** Measures add tanks and draws that have ids of their own. */
const addedBy: Partial<Readonly<Record<NamedList, string>>> = { tanks: "addTank", draws: "addDraw" };

/**
 * The document with an entry's id changed, wherever it is named; unchanged where the new id is taken. Holds for a tank
 * or a draw that measures add, too.
 */
export function withId(document: Draft, list: NamedList, id: string, to: string): Draft {
  if (id === to || takenIds(document, list).has(to)) return document;
  const renamed = (row: unknown) => (isFields(row) && row.id === id ? { ...row, id: to } : row);
  const added = addedBy[list];
  let next = eachRow(document, list, renamed);
  if (added !== undefined)
    next = eachRow(next, "measures", (row) =>
      isFields(row) && isFields(row[added]) ? { ...row, [added]: renamed(row[added]) } : row,
    );
  return references
    .filter((reference) => reference.to.includes(list))
    .filter(({ to: lists }) =>
      lists.every((other) => other === list || rowsOf(document, other).every((row) => row.id !== id)),
    )
    .reduce((before, { at }) => renamedAt(before, at, id, to), next);
}

function renamedAt(document: Draft, at: string, id: string, to: string): Draft {
  const [list = "", inner = ""] = at.split("[].");
  const steps = inner.replace(/\[\]$/, "").split(".");
  return eachRow(document, list, (row) => {
    const value = isFields(row) ? valueIn(row, steps) : undefined;
    if (!isFields(row) || value === undefined) return row;
    if (value === id) return withValue(row, steps, to);
    if (!Array.isArray(value) || !value.includes(id)) return row;
    return withValue(
      row,
      steps,
      value.map((one) => (one === id ? to : one)),
    );
  });
}

function eachRow(document: Draft, list: string, change: (row: unknown) => unknown): Draft {
  const rows = document[list];
  return Array.isArray(rows) ? { ...document, [list]: rows.map(change) } : document;
}
