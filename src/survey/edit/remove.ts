import { type Draft, isFields, rowsOf, valueIn, withValue } from "./document.ts";
import { withFindingsFollowing } from "./findings.ts";
import type { NamedList } from "./ids.ts";
import { listsThatMustNotEmpty, type Reference, references } from "./references.ts";

/** Something else that a removal changed, for words: an entry that went too, or one that names the gone one no more. */
export interface Cleaned {
  sort: "gone" | "field" | "mains-only" | "unwatered" | "source";
  list: string;
  /** Name of the entry; null where its list has none: readings, findings. */
  name: string | null;
}

export interface Removal {
  document: Draft;
  cleaned: readonly Cleaned[];
}

/** Takes an entry out of its list, and every mention of it elsewhere. */
export function withoutEntry(document: Draft, list: NamedList, id: string): Removal {
  const rows = document[list];
  const place = Array.isArray(rows) ? rows.findIndex((row) => isFields(row) && row.id === id) : -1;
  if (!Array.isArray(rows) || place === -1) return { document, cleaned: [] };
  const gone = rows[place] as Draft;
  const cleaned: Cleaned[] = findingsAbout(document, list, place).map(() => {
    return { sort: "gone", list: "found", name: null };
  });
  let next: Draft = { ...document, [list]: rows.filter((_, at) => at !== place) };
  next = withFindingsFollowing(next, list, (at) => (at === place ? null : at > place ? at - 1 : at));
  if (list === "measures" && isFields(gone.addTank)) {
    const added = String(gone.addTank.id);
    if (!isNamed(next, ["tanks"], added)) next = unmentioned(next, "tanks", added, cleaned);
  }
  return { document: unmentioned(next, list, id, cleaned), cleaned };
}

function findingsAbout(document: Draft, list: string, place: number): readonly Draft[] {
  const start = `${list}[${place}]`;
  return rowsOf(document, "found").filter(({ at }) => typeof at === "string" && at.startsWith(start));
}

/** Whether an entry of one of the lists, or one that a measure adds, has the id. */
function isNamed(document: Draft, lists: readonly string[], id: string): boolean {
  const added = lists.includes("tanks") ? rowsOf(document, "measures").map(({ addTank }) => addTank) : [];
  return [...lists.flatMap((list) => rowsOf(document, list)), ...added.filter(isFields)].some(
    (row) => row.id === id,
  );
}

function unmentioned(document: Draft, list: NamedList, id: string, cleaned: Cleaned[]): Draft {
  return references
    .filter(({ to }) => to.includes(list))
    .filter(({ to }) => to.length === 1 || !isNamed(document, to, id))
    .reduce((next, reference) => withoutMention(next, reference, list, id, cleaned), document);
}

function withoutMention(
  document: Draft,
  { at, gone }: Reference,
  to: NamedList,
  id: string,
  cleaned: Cleaned[],
): Draft {
  const [list = "", inner = ""] = at.split("[].");
  const steps = inner.replace(/\[\]$/, "").split(".");
  const isMany = inner.endsWith("[]");
  let next = document;
  const note = (sort: Cleaned["sort"], row: Draft) => cleaned.push({ sort, list, name: nameOf(row) });
  for (const row of rowsOf(document, list)) {
    const value = valueIn(row, steps);
    if (isMany ? !(Array.isArray(value) && value.includes(id)) : value !== id) continue;
    const left = isMany ? (value as unknown[]).filter((one) => one !== id) : undefined;
    const isEmptied = left?.length === 0 && listsThatMustNotEmpty.has(at.replace(/\[\]$/, ""));
    if (gone === "entry" || isEmptied) {
      next = withoutRow(next, list, row, cleaned);
      note("gone", row);
    } else if (gone === "supply") next = replaced(next, list, row, withoutTank(row, note));
    else if (gone === "source") {
      next = replaced(next, list, row, ofOtherSource(row));
      note("source", row);
    } else {
      next = replaced(next, list, row, withValue(row, steps, left));
      if (list !== to || !isMany) note("field", row);
    }
  }
  return next;
}

/** Takes out an entry that named the gone one; what names that entry goes the same way. */
function withoutRow(document: Draft, list: string, row: Draft, cleaned: Cleaned[]): Draft {
  if (typeof row.id === "string" && (list === "draws" || list === "measures")) {
    const removal = withoutEntry(document, list, row.id);
    cleaned.push(...removal.cleaned);
    return removal.document;
  }
  return { ...document, [list]: (document[list] as unknown[]).filter((one) => one !== row) };
}

function replaced(document: Draft, list: string, row: Draft, by: Draft): Draft {
  return { ...document, [list]: (document[list] as unknown[]).map((one) => (one === row ? by : one)) };
}

function withoutTank(bed: Draft, note: (sort: Cleaned["sort"], row: Draft) => void): Draft {
  const { tank: _, ...watering } = bed.watering as Draft;
  const supply =
    watering.supply === "tank-then-mains"
      ? "mains-only"
      : watering.supply === "tank-only"
        ? "none"
        : watering.supply;
  if (supply !== watering.supply) note(supply === "none" ? "unwatered" : "mains-only", bed);
  return { ...bed, watering: { ...watering, supply } };
}

function ofOtherSource(tap: Draft): Draft {
  const { flowAt: _, ...others } = tap;
  return { ...others, source: "other" };
}

function nameOf(row: Draft): string | null {
  const name = row.name ?? row.nickname;
  return typeof name === "string" ? name : null;
}
