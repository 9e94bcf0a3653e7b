import type { Context } from "hono";
import { serverWords } from "../words/en/server.ts";
import { isDeeperThan } from "./depth.ts";
import { limits } from "./limits.ts";
import { Problem } from "./problem.ts";

const jsonType = /^application\/json\s*(;\s*charset\s*=\s*"?utf-?8"?\s*)?$/i;

/** The body as a JSON value, or a Problem that says why it is none. */
export async function readJson(c: Context): Promise<unknown> {
  if (!jsonType.test(c.req.header("Content-Type") ?? "")) throw new Problem(415, serverWords.notJsonType);
  const encoding = c.req.header("Content-Encoding")?.toLowerCase() ?? "identity";
  if (encoding !== "identity") throw new Problem(415, serverWords.encoded);
  const text = decode(await c.req.arrayBuffer());
  if (text.trim() === "") throw new Problem(400, serverWords.emptyBody);
  if (isDeeperThan(text, limits.depth)) throw new Problem(400, serverWords.tooDeep(limits.depth));
  try {
    return JSON.parse(text);
  } catch {
    throw new Problem(400, serverWords.notJson);
  }
}

/** Bytes as the UTF-8 text that they must be. */
export function decode(bytes: ArrayBuffer): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Problem(400, serverWords.notUtf8);
  }
}
