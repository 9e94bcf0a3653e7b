import { isFields, rowsOf } from "./document.ts";

/** The lists whose entries have ids. */
export const namedLists = [
  "beds",
  "roofs",
  "tanks",
  "taps",
  "draws",
  "leaks",
  "restrictions",
  "measures",
  "meters",
  "groups",
  "found",
] as const;

export type NamedList = (typeof namedLists)[number];

export function isNamedList(name: string): name is NamedList {
  return (namedLists as readonly string[]).includes(name);
}

const longest = 40;

/** Letters that do not come apart into a plain one and its mark. */
const plain: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  đ: "d",
  ð: "d",
  ł: "l",
  þ: "th",
  ı: "i",
};

/**
 * An id made from a name: "Rose walk" → rose-walk, and rose-walk-2 where that is taken. A name in a script that
 * ids cannot be written in gives the list's own word: bed-4.
 */
export function idFrom(name: string, list: NamedList, taken: ReadonlySet<string>): string {
  const letters = name
    .toLowerCase()
    .replace(/[ßæœøđðłþı]/g, (letter) => plain[letter]!)
    .normalize("NFKD")
    .replace(/\p{M}/gu, "");
  const hasOther = /[\p{L}\p{N}]/u.test(letters.replace(/[a-z0-9]/g, ""));
  const made = letters
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, longest)
    .replace(/^-+|-+$/g, "");
  const isSaid = made !== "" && !hasOther;
  const stem = isSaid ? made : list.replace(/s$/, "");
  if (isSaid && !taken.has(stem)) return stem;
  let number = isSaid ? 2 : 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}

/** Ids that a new entry of a list must not have; beds and tanks share the columns of one table. */
export function takenIds(document: unknown, list: NamedList): Set<string> {
  const lists: readonly string[] = list === "beds" || list === "tanks" ? ["beds", "tanks"] : [list];
  const rows = lists.flatMap((name) => rowsOf(document, name));
  const added = rowsOf(document, "measures").flatMap(({ addTank, addDraw }) => {
    const row = list === "draws" ? addDraw : lists.includes("tanks") ? addTank : undefined;
    return isFields(row) ? [row] : [];
  });
  // a tap's source is the mains, other water, or a tank
  const kept = lists.includes("tanks") ? ["mains", "other"] : [];
  return new Set([...kept, ...[...rows, ...added].flatMap(({ id }) => (typeof id === "string" ? [id] : []))]);
}
