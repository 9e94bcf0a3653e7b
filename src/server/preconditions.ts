import type { Context } from "hono";
import { siteWords } from "../words/en/sites.ts";
import { Problem } from "./problem.ts";
import type { Expected } from "./store/surveys.ts";

/**
 * What the request's If-Match expects of a tag. Compression marks our tags as weak on their way out; they are
 * strong ones all the same.
 * @source RFC 9110, section 13.1.1
 * @throws Problem 428 where it must be there and is not
 */
export function expectedOf(c: Context, isNeeded: boolean): Expected {
  const header = c.req.header("If-Match")?.trim();
  if (header === undefined) {
    if (isNeeded) throw new Problem(428, siteWords.conditionNeeded);
    return "any";
  }
  if (header === "*") return "any";
  return [...header.matchAll(/(?:W\/)?"([^"]*)"/g)].map((match) => match[1]!);
}

/** The request's own key, so that sending it again does nothing twice; null for none. */
export function keyOf(c: Context): string | null {
  const key = c.req.header("Idempotency-Key")?.trim();
  if (key === undefined || key === "") return null;
  if (key.length > 200) throw new Problem(400, siteWords.keyTooLong);
  return key;
}

export function quoted(tag: string): string {
  return `"${tag}"`;
}
