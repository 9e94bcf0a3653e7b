import type { Draft } from "./document.ts";
import { withFindingsFollowing } from "./findings.ts";

/** The document with the entry at one place of a list put at another; findings follow the entries they are about. */
export function withMoved(document: Draft, list: string, from: number, to: number): Draft {
  const rows = document[list];
  if (!Array.isArray(rows) || !(from in rows) || !(to in rows) || from === to) return document;
  const order = rows.map((_, at) => at);
  order.splice(to, 0, ...order.splice(from, 1));
  const moved = { ...document, [list]: order.map((at) => rows[at]) };
  return withFindingsFollowing(moved, list, (at) => order.indexOf(at));
}
